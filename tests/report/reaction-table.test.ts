import { describe, expect, test } from 'vitest';
import { toLinear } from '../../src/equation/index.ts';
import { reactionTable } from '../../src/report/reaction-table.ts';
import type { ReactionTable } from '../../src/report/index.ts';
import { derivedBeam, derivedFolder, siProject } from '../support/derived.ts';

const cases =
  'cases:\n  D: { kind: dead }\n  L: { kind: live }\n  S: { kind: snow }\n  W: { kind: wind }\n';
const sum = (mark: string, factors: string): string =>
  `{ mark: "${mark}", factors: { ${factors} } }`;

function tableOf(loads: string, combinations: readonly string[] = []): ReactionTable {
  const { work } = derivedBeam(
    { points: '{ A: 0 m, B: 6 m }', supports: '{ A: pin, B: roller }', loads },
    {
      'project.yaml': siProject,
      'loads.yaml': `${cases}combinations: [ ${combinations.join(', ')} ]\n`,
    },
  );
  return reactionTable(work, { system: 'si', figures: 4 });
}

const inText = ({ rows }: ReactionTable): unknown =>
  rows.map(({ entries, isCombination, values }) => [
    isCombination ? 'sum' : 'case',
    entries.join('; '),
    ...values.map((value) => toLinear(value)),
  ]);

describe('the reactions of a member', () => {
  test('have one row for cases that do nothing, and one for sums that differ in such cases', () => {
    const table = tableOf(
      '[ { case: D, point: 6 kN, at: 2 m }, { case: L, point: 3 kN, at: 4 m } ]',
      [
        sum('D + L + S', 'D: 1, L: 1, S: 1'),
        sum('D + L + W', 'D: 1, L: 1, W: 1'),
        sum('D + S', 'D: 1, S: 1'),
        sum('S + W', 'S: 1, W: 1'),
      ],
    );
    expect(inText(table)).toEqual([
      ['case', 'D', '4.000', '2.000'],
      ['case', 'L', '1.000', '2.000'],
      ['case', 'S; W', '0', '0'],
      ['sum', 'D + L + S; D + L + W', '5.000', '4.000'],
      ['sum', 'D + S', '4.000', '2.000'],
      ['sum', 'S + W', '0', '0'],
    ]);
  });

  test('that are 0 in every entry have no column and are named', () => {
    const upright = tableOf('[ { case: D, point: 6 kN, at: 2 m } ]');
    expect(upright.columns.map(({ symbol }) => toLinear(symbol))).toEqual([
      'R_A',
      'R_B',
    ]);
    expect(upright.zeros.map((symbol) => toLinear(symbol))).toEqual(['H_A']);
    const slanted = tableOf(
      '[ { case: D, point: 6 kN, at: 2 m, direction: 300 deg } ]',
    );
    expect(slanted.columns.map(({ symbol }) => toLinear(symbol))).toEqual([
      'H_A',
      'R_A',
      'R_B',
    ]);
    expect(slanted.zeros).toEqual([]);
  });
});

describe('the reactions of an entry that has no single state', () => {
  const beam = (mark: string, rest: string): string =>
    `mark: ${mark}\nkind: beam\n${rest}\n`;
  const { works } = derivedFolder({
    'project.yaml': siProject,
    'loads.yaml': `cases: { D: { kind: dead }, L: { kind: live, pattern: true }, S: { kind: snow } }
combinations: [ ${sum('D + L', 'D: 1, L: 1')}, ${sum('D + S', 'D: 1, S: 1')} ]
`,
    'members/b1.yaml': beam(
      'B1',
      'points: { A: 0 m, B: 10 m, C: 14 m }\nsupports: { A: pin, B: roller }\nloads: [ { uniform: { D: 1 kN/m }, span: A-B }, { uniform: { L: 2 kN/m } } ]',
    ),
    // Nothing but the pull of an overhang reaches this one: at its greatest the reaction is 0.
    'members/b2.yaml': beam(
      'B2',
      'points: { A: 0 m, B: 10 m, C: 14 m, E: 15 m }\nsupports: { A: pin, B: roller }\nloads: [ { uniform: { L: 2 kN/m }, span: B-C }, { case: L, point: 1 kN, at: E } ]',
    ),
    'members/g1.yaml': beam(
      'G1',
      'points: { A: 0 m, M: 2 m, B: 4 m }\nsupports: { A: pin, B: roller }\nloads: [ { case: D, point: 8 kN, at: M }, { reaction: B2.A, at: M } ]',
    ),
  });
  const [patterned, , carrying] = works.map((work) =>
    reactionTable(work, { system: 'si', figures: 4 }),
  );
  const rowsOf = ({ rows }: ReactionTable): unknown =>
    rows.map(({ entries, values, least = [] }) => [
      entries.join('; '),
      ...[values, least].map((list) => list.map((value) => toLinear(value)).join(' ')),
    ]);

  test('are the greatest and the least of each, told not to act together', () => {
    // D: 5 and 5. L: the span gives 10 and 10, the overhang −1.6 and 9.6.
    expect(rowsOf(patterned!)).toEqual([
      ['D', '5.00 5.00', ''],
      ['L', '10.00 19.60', '−1.60 0'],
      ['S', '0 0', ''],
      ['D + L', '15.00 24.60', '3.40 5.00'],
      ['D + S', '5.00 5.00', ''],
    ]);
    expect(patterned!.hasRanges).toBe(true);
    expect(patterned!.envelope[0]).toMatchObject({
      max: '15.00',
      maxEntry: 'D + L',
      min: '3.40',
      minEntry: 'D + L',
    });
  });

  test('keep a row of their own where only their least is felt', () => {
    // −2·4·2/10 − 1·5/10 = −2.1 at B2.A, half of it at either end of G1.
    expect(rowsOf(carrying!)).toEqual([
      ['D', '4.000 4.000', ''],
      ['L', '0 0', '−1.050 −1.050'],
      ['S', '0 0', ''],
      ['D + L', '4.000 4.000', '2.950 2.950'],
      ['D + S', '4.000 4.000', ''],
    ]);
  });
});
