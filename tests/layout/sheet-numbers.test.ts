import { describe, expect, test } from 'vitest';
import { openAnchors } from '../../src/layout/sheet-numbers.ts';

const titles = new Map([
  ['b1', 'B1 Stringer'],
  ['b2', 'B2 Ledger'],
]);

describe('openAnchors', () => {
  test('takes numbers to have two digits before the first count', () => {
    const anchors = openAnchors(undefined, titles);
    expect(anchors.sheetOf('b1')).toBe('00');
    expect(anchors.sheetCount()).toBe('00');
  });

  test('names the sheet and what stands there', () => {
    const counted = { sheets: new Map([['b1', 7]]), sheetCount: 12 };
    const anchors = openAnchors(counted, titles);
    expect(anchors.sheetOf('b1')).toBe('7');
    expect(anchors.says('b1')).toBe('Sheet 7: B1 Stringer');
    expect(anchors.sheetCount()).toBe('12');
  });

  test('answers a question mark for an anchor that is nowhere, and says nothing of it', () => {
    const counted = { sheets: new Map([['b1', 7]]), sheetCount: 12 };
    const anchors = openAnchors(counted, titles);
    expect(anchors.sheetOf('b2')).toBe('?');
    expect(anchors.sheetOf('nowhere')).toBe('?');
    expect(anchors.says('nowhere')).toBeUndefined();
  });
});
