import { describe, expect, test } from 'vitest';
import { readOutline } from '../../src/typeset/outline.ts';

describe('reading path data', () => {
  test('lines, absolute and relative', () => {
    expect(readOutline('M1 2L3 4l1,1H9h-2V0v5z')).toEqual([
      ['M', 1, 2],
      ['L', 3, 4],
      ['L', 4, 5],
      ['L', 9, 5],
      ['L', 7, 5],
      ['L', 7, 0],
      ['L', 7, 5],
      ['Z'],
    ]);
  });

  test('curves; the smooth one mirrors the control point before it', () => {
    expect(readOutline('M0 0c1 0 2 1 2 2s1 2 2 2')).toEqual([
      ['M', 0, 0],
      ['C', 1, 0, 2, 1, 2, 2],
      ['C', 2, 3, 3, 4, 4, 4],
    ]);
    expect(readOutline('M0 0S1 1 2 2')[1]).toEqual(['C', 0, 0, 1, 1, 2, 2]);
  });

  test('numbers repeat a command, and those after a moveto are lines', () => {
    expect(readOutline('M0 0 1 1-2.5.5')).toEqual([
      ['M', 0, 0],
      ['L', 1, 1],
      ['L', -2.5, 0.5],
    ]);
  });

  test('a closed path goes on from where it began', () => {
    expect(readOutline('M5 5h1zl1 1')[3]).toEqual(['L', 6, 6]);
  });

  test('malformed data end before the error, as in a browser', () => {
    expect(readOutline('M0 0H4\nMM319 602 V0')).toEqual([
      ['M', 0, 0],
      ['L', 4, 0],
    ]);
  });

  test('a command that is not known is refused', () => {
    expect(() => readOutline('M0 0A1 1 0 0 1 2 2')).toThrow(/"A"/);
  });
});
