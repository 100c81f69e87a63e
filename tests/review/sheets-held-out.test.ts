import { describe, expect, test } from 'vitest';
import { loadMembers, loadSheets } from './sheets/held-out-loads.ts';
import { pieceMembers, pieceSheets } from './sheets/held-out-pieces.ts';
import { secondMembers, secondSheets } from './sheets/held-out-second.ts';
import { heldOutLoads, spanMembers, spanSheets } from './sheets/held-out-spans.ts';
import { markSheets } from './sheets/mark-sheets.ts';
import { ratesOf } from './sheets/rates.ts';

const rest = { 'loads.yaml': heldOutLoads };
const first = [...spanSheets, ...pieceSheets, ...loadSheets];

describe.each([
  ['first', { ...spanMembers, ...pieceMembers, ...loadMembers }, first],
  ['second', secondMembers, secondSheets],
])('the %s worked sheets whose marks were decided before', (_, members, sheets) => {
  const rates = ratesOf(markSheets(members, sheets, rest));

  test('no right step is flagged', () => {
    console.log(rates.told);
    expect(rates.flagged).toEqual([]);
  });

  test('at least 95 % of verdicts are as decided', () => {
    expect(rates.verdicts, rates.told).toBeGreaterThanOrEqual(0.95);
  });

  test('at least 90 % of the kinds of slip are as decided', () => {
    expect(rates.kinds, rates.told).toBeGreaterThanOrEqual(0.9);
  });
});
