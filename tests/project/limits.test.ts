import { describe, expect, test } from 'vitest';
import { findingsOn, soundBeam, soundFolder, beamYaml } from '../support/folder.ts';

const loads = `cases:
  D: { kind: dead }
  L: { kind: live }
combinations: [ asce7-strength, { mark: often, factors: { L: 0.5 }, for: service } ]
`;
const files = { 'loads.yaml': loads };
const uses = '[ { point: { D: 1 kip, L: 1 kip }, at: B } ]';

describe('a deflection limit', () => {
  test.each([
    'L',
    'D+L',
    'D + L',
    '0.5D+L',
    '.5D + 1.2 L',
    '0.42*L',
    'often',
    '1.2D + 1.6L',
  ])('may be for %s', (entry) => {
    expect(
      soundBeam({ loads: uses, deflection_limits: `{ "${entry}": L/360 }` }, files)
        .deflectionLimits,
    ).toMatchObject([{ entry, text: 'L/360' }]);
  });

  test.each(['W', 'D+W', 'D-L', 'D+D', 'seldom', '2', '1.2', '+'])(
    'is not for %s',
    (entry) => {
      expect(
        findingsOn({ loads: uses, deflection_limits: `{ "${entry}": L/360 }` }, files),
      ).toEqual([expect.stringMatching(/^unknown-entry 6:22 /)]);
    },
  );

  test.each(['L/360', 'L / 240', 'L/187.5', '0.75 in', '20 mm'])(
    'may be %s',
    (text) => {
      expect(
        soundBeam({ loads: uses, deflection_limits: `{ L: ${text} }` }, files)
          .deflectionLimits,
      ).toMatchObject([{ text }]);
    },
  );

  test.each(['L/0', 'L/', '360', 'H/360', '-1 in', '0 in', '3 kip'])(
    'is not %s',
    (text) => {
      expect(
        findingsOn({ loads: uses, deflection_limits: `{ L: ${text} }` }, files),
      ).toEqual([expect.stringMatching(/^not-a-limit 6:25 /)]);
    },
  );

  test('takes cantilevers with twice their length unless it says plain', () => {
    expect(
      soundBeam({ loads: uses, deflection_limits: '{ L: L/360 }' }, files),
    ).not.toHaveProperty('cantilevers');
    expect(
      soundBeam(
        { loads: uses, deflection_limits: '{ L: L/360, cantilevers: plain }' },
        files,
      ),
    ).toMatchObject({
      cantilevers: 'plain',
      deflectionLimits: [{ entry: 'L' }],
    });
  });

  test('of the project may be for any case that the loads name, without loads.yaml', () => {
    const project = soundFolder({
      'project.yaml':
        'project: { title: Weir }\nunits: us\ncriteria: { deflection_limits: { S+D: L/240 } }\n',
      'members/b1.yaml': beamYaml({
        loads: '[ { case: S, point: 1 kip, at: B }, { case: D, point: 1 kip, at: B } ]',
      }),
    });
    expect(project.definition.deflectionLimits).toMatchObject([{ entry: 'S+D' }]);
  });
});
