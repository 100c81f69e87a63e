import { describe, expect, test } from 'vitest';
import { loadMembers, loadSheets } from './sheets/held-out-loads.ts';
import { pieceMembers, pieceSheets } from './sheets/held-out-pieces.ts';
import { heldOutLoads, spanMembers, spanSheets } from './sheets/held-out-spans.ts';
import { markSheets } from './sheets/mark-sheets.ts';
import { ratesOf } from './sheets/rates.ts';

const sheets = [...spanSheets, ...pieceSheets, ...loadSheets];
const rates = ratesOf(
  markSheets({ ...spanMembers, ...pieceMembers, ...loadMembers }, sheets, {
    'loads.yaml': heldOutLoads,
  }),
);

describe('worked sheets whose marks were decided before the program saw them', () => {
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
