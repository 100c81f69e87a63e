import { describe, expect, test } from 'vitest';
import { beamYaml, readFolder } from '../../support/folder.ts';

const remarksOn = (
  files: Readonly<Record<string, string | Uint8Array>>,
): readonly string[] =>
  readFolder(files)
    .diagnostics.filter((one) => one.severity === 'remark')
    .map((one) => `${one.code} ${one.message}`);
const project = `project: { title: Weir }
units: us
assumptions: [ { id: A1, text: Dry site. } ]
references: [ { id: R1, text: Survey. } ]
`;

describe('what nothing uses', () => {
  test('is told of where every member is sound', () => {
    expect(
      remarksOn({
        'project.yaml': project,
        'members/b1.yaml': beamYaml({ uses: '[ A1 ]' }),
      }),
    ).toEqual([
      'reference-unused no member says that it leans on reference R1',
      'point-unused nothing stands at point `B`',
    ]);
  });

  test('is not told of where a member is at fault, which may have used it', () => {
    const bad = beamYaml({ mark: 'B2', supports: '{ Z: fixed }' });
    expect(
      remarksOn({
        'project.yaml': project,
        'members/b1.yaml': beamYaml(),
        'members/b2.yaml': bad,
      }),
    ).toEqual(['point-unused nothing stands at point `B`']);
  });

  test('counts loads, carried reactions, hinges, stretches and bracing as use', () => {
    const used = [
      { loads: '[ { point: 1 kip, at: 6 ft } ]' },
      { loads: '[ { uniform: 1 klf, to: B } ]' },
      { loads: '[ { reaction: B2.A, at: B } ]' },
      { hinges: '[ B ]', supports: '{ A: fixed, C: roller }' },
      {
        sections:
          '[ { from: A, to: B, section: { I: 2 in^4 } }, { from: B, to: C, section: { I: 1 in^4 } } ]',
      },
      { bracing: '{ top: continuous, bottom: [ B ] }' },
    ];
    for (const rest of used)
      expect(
        remarksOn({
          'members/b1.yaml': beamYaml(rest),
          'members/b2.yaml': beamYaml({ mark: 'B2', points: '{ A: 0 m, C: 3 m }' }),
        }),
      ).toEqual([]);
  });

  test('counts a picture as used where a sheet or a template names it', () => {
    const files = {
      'members/b1.yaml': beamYaml({ points: '{ A: 0 m, C: 3 m }' }),
      'images/a.png': new Uint8Array([1]),
    };
    expect(remarksOn(files)).toEqual([
      'picture-unused nothing places the picture images/a.png',
    ]);
    expect(
      remarksOn({
        ...files,
        'report-templates/cover.hbs': '<img src="images/a.png"/>',
      }),
    ).toEqual([]);
    expect(
      remarksOn({ ...files, 'sheets/s1.yaml': 'blocks: [ { image: images/a.png } ]' }),
    ).toEqual([
      'not-worked-yet written sheets are not laid out yet, so sheets/ is left aside',
    ]);
  });
});
