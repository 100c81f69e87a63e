import { describe, expect, test } from 'vitest';
import { compareResults } from '../../../src/comparison/results/compare-results.ts';
import type { Results } from '../../../src/results/index.ts';
import { plainBeam, workedSide } from '../../support/worked-side.ts';

const project = (units: 'us' | 'si', rest: string = ''): string =>
  `project: { title: Weir }\nunits: ${units}\n${rest}`;

const beam = (load: string, rest: string = '', units: 'us' | 'si' = 'us'): Results =>
  workedSide({
    'project.yaml': project(units, 'criteria: { deflection_limits: { L: L/360 } }\n'),
    'members/b1.yaml': plainBeam('B1', load, rest),
  }).results;

const stiff = (inertia: number): string =>
  `section: { I: ${inertia} in^4 }\nmaterial: { E: 29000 ksi }`;

describe('compareResults', () => {
  test('tells nothing of equal results', () => {
    const results = beam('{ case: L, point: 8 kip, at: 3 ft }', stiff(50));
    expect(compareResults(results, results)).toEqual({
      outcomes: [],
      checks: [],
      results: [],
    });
  });

  test('tells governing values before and after, with entry, station and share', () => {
    // P at 3 ft of 12: M = P (3)(9)/12, R_A = 3 P/4, R_B = P/4.
    const { results } = compareResults(
      beam('{ case: L, point: 8 kip, at: 3 ft }'),
      beam('{ case: L, point: 10 kip, at: 3 ft }'),
    );
    expect(results.map(({ what }) => what)).toEqual([
      'greatest moment',
      'greatest shear',
      'least shear',
      'reaction y at A',
      'reaction y at B',
    ]);
    const [moment, , least] = results;
    expect(moment).toMatchObject({
      member: 'B1',
      before: { unit: 'kip ft', entry: 'L', at: { unit: 'ft' } },
      after: { unit: 'kip ft', entry: 'L' },
    });
    expect(moment?.before?.value).toBeCloseTo(18, 9);
    expect(moment?.after?.value).toBeCloseTo(22.5, 9);
    expect(moment?.before?.at?.value).toBeCloseTo(3, 9);
    expect(moment?.share).toBeCloseTo(0.25, 9);
    // −2 kip became −2.5 kip: by a quarter of its size downward.
    expect(least?.share).toBeCloseTo(0.25, 9);
  });

  test('judges figures of unlike units in one unit, and says both', () => {
    const same = compareResults(
      beam('{ case: L, point: 8 kip, at: 3 ft }'),
      beam('{ case: L, point: 8 kip, at: 3 ft }', '', 'si'),
    );
    expect(same.results).toEqual([]);
    const other = compareResults(
      beam('{ case: L, point: 8 kip, at: 3 ft }'),
      beam('{ case: L, point: 10 kip, at: 3 ft }', '', 'si'),
    );
    const [moment] = other.results;
    expect([moment?.before?.unit, moment?.after?.unit]).toEqual(['kip ft', 'kN m']);
    expect(moment?.share).toBeCloseTo(0.25, 9);
  });

  test('tells nothing that is smaller than a thousand-millionth of its kind', () => {
    const before = beam('{ case: L, point: 8 kip, at: 3 ft }');
    expect(
      compareResults(before, beam('{ case: L, point: 8.000000001 kip, at: 3 ft }'))
        .results,
    ).toEqual([]);
    expect(
      compareResults(before, beam('{ case: L, point: 8.0000001 kip, at: 3 ft }'))
        .results.length,
    ).toBeGreaterThan(0);
  });

  test('tells strength and service apart where there are combinations', () => {
    const side = (live: number): Results =>
      workedSide({
        'project.yaml': project('us'),
        'loads.yaml':
          'cases: { D: { kind: dead }, L: { kind: live } }\ncombinations:\n' +
          '  - { mark: U, factors: { D: 1.2, L: 1.6 } }\n  - { mark: E, factors: { D: 1, L: 1 }, for: service }\n',
        'members/b1.yaml': plainBeam(
          'B1',
          `{ case: D, point: 2 kip, at: 6 ft }, { case: L, point: ${live} kip, at: 6 ft }`,
        ),
      }).results;
    const { results } = compareResults(side(4), side(5));
    const moments = results.filter(({ what }) => what.startsWith('greatest moment'));
    // P (12)/4: (2.4 + 6.4) 3 = 26.4 and (2.4 + 8) 3 = 31.2; (2 + 4) 3 = 18 and (2 + 5) 3 = 21.
    expect(
      moments.map(({ what, before, after }) => [
        what,
        before?.entry,
        before?.value.toFixed(6),
        after?.value.toFixed(6),
      ]),
    ).toEqual([
      ['greatest moment, strength', 'U', '26.400000', '31.200000'],
      ['greatest moment, service', 'E', '18.000000', '21.000000'],
    ]);
  });

  test('compares cases with combinations where one side has no combinations', () => {
    const side = (rest: string): Results =>
      workedSide({
        'project.yaml': project('us'),
        'loads.yaml': `cases: { L: { kind: live } }\n${rest}`,
        'members/b1.yaml': plainBeam('B1', '{ case: L, point: 4 kip, at: 6 ft }'),
      }).results;
    const { results } = compareResults(
      side(''),
      side('combinations: [ { mark: U, factors: { L: 1.6 } } ]\n'),
    );
    const [moment] = results;
    expect(moment).toMatchObject({
      what: 'greatest moment',
      before: { entry: 'L' },
      after: { entry: 'U' },
    });
    expect(moment?.share).toBeCloseTo(0.6, 9);
  });

  test('tells newly failing checks first, of whatever member', () => {
    const side = (first: number, second: number): Results =>
      workedSide({
        'project.yaml': project(
          'us',
          'criteria: { deflection_limits: { L: L/360 } }\n',
        ),
        'members/b1.yaml': plainBeam(
          'B1',
          '{ case: L, point: 8 kip, at: 6 ft }',
          stiff(first),
        ),
        'members/b2.yaml': plainBeam(
          'B2',
          '{ case: L, point: 8 kip, at: 6 ft }',
          stiff(second),
        ),
      }).results;
    // P L³/(48 E I) against L/360 = 0.4 in: 8 (144)³/(48 (29000) I) = 17.16/I; fails under I = 42.9 in⁴.
    const { checks } = compareResults(side(60, 60), side(50, 40));
    expect(checks.map(({ kind, member, what }) => [kind, member, what])).toEqual([
      ['newly failing', 'B2', 'deflection L of span A to B'],
      ['changed', 'B1', 'deflection L of span A to B'],
    ]);
    expect(checks[0]?.after?.ratio).toBeCloseTo(17.1603 / 40 / 0.4, 3);
    expect(compareResults(side(50, 40), side(50, 50)).checks[0]?.kind).toBe('mended');
    expect(compareResults(side(50, 40), side(50, 30)).checks[0]?.kind).toBe(
      'still failing',
    );
  });

  test('tells a check that came and one that went', () => {
    const [without, withIt] = [
      beam('{ case: L, point: 1 kip, at: 6 ft }'),
      beam('{ case: L, point: 1 kip, at: 6 ft }', stiff(50)),
    ];
    expect(compareResults(without, withIt).checks).toMatchObject([
      { kind: 'added', member: 'B1', after: { passes: true } },
    ]);
    expect(compareResults(withIt, without).checks).toMatchObject([
      { kind: 'removed', member: 'B1', before: { passes: true } },
    ]);
  });

  test('tells members that came, went, or lost their results, with the reason', () => {
    const before = workedSide({
      'project.yaml': project('us'),
      'members/b1.yaml': plainBeam('B1', '{ case: L, point: 1 kip, at: 6 ft }'),
      'members/b2.yaml': plainBeam('B2', '{ case: L, point: 1 kip, at: 6 ft }'),
    }).results;
    const after = workedSide({
      'project.yaml': project('us'),
      'members/b1.yaml': plainBeam('B1', '{ case: L, point: 1 kip, at: 6 ft }').replace(
        'A: pin, ',
        '',
      ),
      'members/b3.yaml': plainBeam('B3', '{ case: L, point: 1 kip, at: 6 ft }'),
    }).results;
    const { outcomes } = compareResults(before, after);
    expect(outcomes.map(({ kind, member }) => [kind, member])).toEqual([
      ['removed', 'B2'],
      ['no longer solved', 'B1'],
      ['added', 'B3'],
    ]);
    expect(outcomes[1]?.why).toMatch(/\w/);
    expect(compareResults(after, before).outcomes).toContainEqual({
      kind: 'solved again',
      member: 'B1',
    });
  });
});
