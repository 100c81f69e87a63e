import { describe, expect, test } from 'vitest';
import { lineReader } from '../../../src/review/reading/line-reader.ts';
import { readLine } from '../../../src/review/reading/read-line.ts';

describe('a reader of lines', () => {
  test('reads as readLine does, and gives the same reading again', () => {
    const read = lineReader();
    const once = read('RC * 21 ft = P * 6 ft', ['RC', 'P']);
    expect(once).toEqual(readLine('RC * 21 ft = P * 6 ft', ['RC', 'P']));
    expect(read('RC * 21 ft = P * 6 ft', ['RC', 'P'])).toBe(once);
  });

  test('reads anew where other symbols are declared', () => {
    const read = lineReader();
    expect(read('2 * kip * m', ['m'])).toEqual(readLine('2 * kip * m', ['m']));
    expect(read('2 * kip * m', [])).toEqual(readLine('2 * kip * m', []));
    expect(read('2 * kip * m', [])).not.toBe(read('2 * kip * m', ['m']));
  });
});
