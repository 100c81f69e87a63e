import { describe, expect, test } from 'vitest';
import { simpleMembers, simpleSheets } from './sheets/simple-beams.ts';
import { otherMembers, otherSheets } from './sheets/other-members.ts';
import { markSheets } from './sheets/mark-sheets.ts';
import { ratesOf } from './sheets/rates.ts';

const sheets = [...simpleSheets, ...otherSheets];
const marked = markSheets({ ...simpleMembers, ...otherMembers }, sheets);
const rates = ratesOf(marked);

describe('the worked sheets', () => {
  test('are at least 150', () => {
    expect(sheets.length).toBeGreaterThanOrEqual(150);
  });

  test('no right step is flagged', () => {
    expect(rates.flagged).toEqual([]);
  });

  test('no wrong step passes', () => {
    expect(rates.passed).toEqual([]);
  });

  test('at least 95 % of verdicts and 90 % of kinds are as expected', () => {
    console.log(rates.told);
    expect(rates.verdicts, rates.told).toBeGreaterThanOrEqual(0.95);
    expect(rates.kinds, rates.told).toBeGreaterThanOrEqual(0.9);
  });
});
