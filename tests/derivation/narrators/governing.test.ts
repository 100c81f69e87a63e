import { describe, expect, test } from 'vitest';
import {
  comesToTheSame,
  extremeOf,
  governingEntry,
  signedGreatest,
  sizeOf,
  type Entry,
} from '../../../src/derivation/narrators/governing.ts';
import { beam, down, pin, roller } from '../../support/beam.ts';
import { solved } from '../../support/solved.ts';

const entry = (force: number, mark: string): Entry => {
  const { result } = solved(
    beam({
      points: { A: 0, B: 10 },
      supports: { A: pin, B: roller() },
      loads: [down(force, 4)],
    }),
  );
  return { result: { ...result, mark } };
};

const entries = [
  entry(5, 'a'),
  entry(8, 'b'),
  entry(8 * (1 + 1e-12), 'c'),
  entry(-3, 'd'),
];

describe('governingEntry', () => {
  test('takes the first of those that come to the same', () => {
    expect(governingEntry(entries, 'moment-max')?.result.mark).toBe('b');
    expect(governingEntry([...entries].reverse(), 'moment-max')?.result.mark).toBe('c');
    expect(comesToTheSame(entries[2]!, entries[1]!, 'moment-max')).toBe(true);
    expect(comesToTheSame(entries[0]!, entries[1]!, 'moment-max')).toBe(false);
  });

  test('seeks hogging for the least moment', () => {
    expect(governingEntry(entries, 'moment-min')?.result.mark).toBe('d');
    expect(sizeOf(entries[0]!, 'moment-min')).toBe(0);
  });

  test('knows no governing entry among none', () => {
    expect(governingEntry([], 'shear')).toBeUndefined();
  });
});

describe('signedGreatest', () => {
  test('keeps the sign of the greater, and of two alike the first', () => {
    expect(signedGreatest(3, -4)).toBe(-4);
    expect(signedGreatest(4, -4 * (1 + 1e-12))).toBe(4);
    expect(extremeOf(entries[0]!, 'shear').value).toBeCloseTo(3);
  });
});
