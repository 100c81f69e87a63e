import { describe, expect, test } from 'vitest';
import { beamYaml, soundFolder } from '../../support/folder.ts';

const casesOf = (
  ...beams: readonly Readonly<Record<string, string>>[]
): readonly string[] =>
  soundFolder(
    Object.fromEntries(
      beams.map((rest, at) => [
        `members/b${at + 1}.yaml`,
        beamYaml({ mark: `B${at + 1}`, ...rest }),
      ]),
    ),
  ).loads.cases.map((one) => one.mark);

describe('without loads.yaml the cases', () => {
  test('are those that loads, settlements and self-weights name, project-wide, in the order in which they come up', () => {
    expect(
      casesOf(
        {
          loads:
            '[ { case: L, point: 1 kip, at: B }, { uniform: { D: 1 klf, S: 1 klf } } ]',
        },
        {
          supports: '{ A: pin, C: { type: roller, settlement: 1 in, case: T } }',
          self_weight: 'G',
          section: '{ weight: 26 plf }',
          loads: '[ { case: D, couple: 1 kip ft, at: B, turn: clockwise } ]',
        },
      ),
    ).toEqual(['L', 'D', 'S', 'G', 'T']);
  });

  test('are one, marked all, where no load names any', () => {
    expect(casesOf({ loads: '[ { point: 1 kip, at: B } ]' })).toEqual(['all']);
    expect(casesOf({})).toEqual(['all']);
  });
});
