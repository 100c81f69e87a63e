import { describe, expect, test } from 'vitest';
import { memberInput } from '../../src/report/member-outcomes.ts';
import { collectResults } from '../../src/results/index.ts';
import { derivedBeam } from '../support/derived.ts';

const { project, work, derivation } = derivedBeam(
  {
    points: '{ A: 0 m, B: 6 m, C: 8 m }',
    supports: '{ A: pin, B: roller }',
    loads: '[ { point: 10 kN, at: 3 m } ]',
    material: '{ E: 200 GPa }',
    section: '{ I: 2e7 mm^4 }',
  },
  {
    'project.yaml':
      'project: { title: Weir crossing }\nunits: si\ncriteria: { deflection_limits: { all: L/480 } }\n',
  },
);
const results = collectResults({
  project: { title: 'Weir crossing', units: 'si' },
  members: [memberInput(project, { kind: 'derived', work, derivation }, undefined)],
  stations: 2,
});

describe('a member as data', () => {
  const [beam] = results.members;

  test('tells every limit judged, its span, and whether it is met', () => {
    // Middle: P L³/(48 E I) = 11.25 mm of 12.5 mm; the tip is lifted by the same, of 8.333 mm with twice its 2 m.
    const expected = [
      {
        span: 'A to B',
        ratio: 0.9,
        passes: true,
        clause: 'L/480, deflection limit of the project',
      },
      { span: 'B to C', ratio: 1.35, passes: false, at: { value: 8, unit: 'm' } },
    ];
    expect(beam).toMatchObject({
      checks: expected.map(({ ratio, ...rest }) => ({
        name: 'deflection',
        combination: 'all',
        ratio: expect.closeTo(ratio, 9) as number,
        ...rest,
      })),
    });
  });

  test('tells deflections with their extremes and slopes at stations', () => {
    expect(beam).toMatchObject({
      results: {
        all: {
          deflection: {
            min: {
              value: expect.closeTo(-11.25, 9) as number,
              unit: 'mm',
              at: { value: 3, unit: 'm' },
            },
            max: {
              value: expect.closeTo(11.25, 9) as number,
              at: { value: 8, unit: 'm' },
            },
          },
          stations: [
            {
              slope: { value: expect.closeTo(-0.005625, 12) as number, unit: 'rad' },
              deflection: { value: 0 },
            },
            {},
            {
              slope: { value: expect.closeTo(0.005625, 12) as number },
              deflection: { value: expect.closeTo(11.25, 9) as number },
            },
          ],
        },
      },
    });
  });
});
