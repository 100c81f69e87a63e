import { describe, expect, test } from 'vitest';
import { beamYaml, readFolder, soundFolder } from '../../support/folder.ts';

const beam = beamYaml({ loads: '[ { case: D, point: 1 kip, at: B } ]' });
const sound = (loads: string): ReturnType<typeof soundFolder> =>
  soundFolder({ 'loads.yaml': loads, 'members/b1.yaml': beam });
const errors = (
  loads: string,
  project: string = 'project: { title: Weir }\nunits: us\n',
): readonly string[] =>
  readFolder({ 'project.yaml': project, 'loads.yaml': loads, 'members/b1.yaml': beam })
    .diagnostics.filter((one) => one.severity === 'error')
    .map((one) => `${one.code} ${one.span?.start ?? ''} ${one.message}`);

describe('loads.yaml', () => {
  test('may be as short as a list of cases', () => {
    expect(sound('cases: { D: { } }\n').loads).toEqual({
      given: true,
      cases: [{ mark: 'D', pattern: false }],
      areas: {},
      combinations: [],
      alternatives: [],
    });
  });

  test('that lists no cases leaves them to the loads', () => {
    expect(
      sound('combinations: [ { mark: twice, factors: { D: 2 } } ]\n').loads.cases,
    ).toEqual([{ mark: 'D', pattern: false }]);
  });

  test('keeps what a set is asked with', () => {
    const loads = sound(
      'cases: { D: { kind: dead }, Q: { kind: live, category: B } }\ncombinations: [ en1990-sls, { set: en1990-uls, expression: 6.10ab, national: { gamma_Q: 1.6 } } ]\n',
    ).loads;
    expect(loads.combinations).toMatchObject([
      { kind: 'named-set', name: 'en1990-sls' },
      {
        kind: 'named-set',
        name: 'en1990-uls',
        expression: '6.10ab',
        national: { gamma_Q: 1.6 },
      },
    ]);
    expect(loads.combinations[0]).not.toHaveProperty('expression');
  });

  test('takes a custom combination for strength unless it says otherwise', () => {
    expect(
      sound(
        'cases: { D: { } }\ncombinations: [ { mark: 1.5D, factors: { D: 1.5 } } ]\n',
      ).loads.combinations,
    ).toMatchObject([
      { kind: 'custom', mark: '1.5D', factors: { D: 1.5 }, for: 'strength' },
    ]);
  });

  test('allows a combination marked like a case when it is that case', () => {
    expect(
      errors('cases: { D: { } }\ncombinations: [ { mark: D, factors: { D: 1 } } ]\n'),
    ).toEqual([]);
  });

  test('refuses an edition that is not known', () => {
    const project =
      'project: { title: Weir }\nunits: us\ncriteria: { standards: [ ASCE 7-93 ] }\n';
    expect(
      errors(
        'cases: { D: { kind: dead } }\ncombinations: [ asce7-strength ]\n',
        project,
      ),
    ).toEqual([expect.stringMatching(/^combination-set 45 /)]);
  });

  test('tells of a fault of its own only, not of what follows from it', () => {
    expect(
      errors(
        'cases: { D: { kind: deed } }\nareas: { deck: { D: 3 } }\ncombinations: [ asce7-strength ]\n',
      ),
    ).toEqual([
      expect.stringMatching(/^not-one-of 20 /),
      expect.stringMatching(/^unit-missing 49 /),
    ]);
  });
});
