import { describe, expect, test } from 'vitest';
import { toLinear } from '../../src/equation/index.ts';
import { reactionTable } from '../../src/report/reaction-table.ts';
import type { ReactionTable } from '../../src/report/index.ts';
import { derivedBeam, siProject } from '../support/derived.ts';

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
