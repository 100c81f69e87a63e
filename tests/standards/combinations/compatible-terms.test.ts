import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  compatibleTerms,
  excludesIn,
  type Excludes,
} from '../../../src/standards/combinations/compatible-terms.ts';

const terms = (marks: string): { case: string; factor: number }[] =>
  marks.split('').map((mark) => ({ case: mark, factor: 1 }));
const listed = (marks: string, excludes: Excludes): string[] =>
  [...compatibleTerms(terms(marks), excludes)].map((choice) =>
    choice.map((term) => term.case).join(''),
  );
const among =
  (...pairs: string[]): Excludes =>
  (a, b) =>
    pairs.some((pair) => pair === a + b || pair === b + a);

describe('compatibleTerms', () => {
  test('leaves terms together that nothing parts', () => {
    expect(listed('DLS', among())).toEqual(['DLS']);
  });

  test('spreads three that exclude one another over three choices', () => {
    expect(listed('DXYZ', among('XY', 'YZ', 'XZ'))).toEqual(['DX', 'DY', 'DZ']);
  });

  test('keeps both sides of a term that excludes two others', () => {
    expect(listed('ABC', among('AB', 'AC')).toSorted()).toEqual(['A', 'BC']);
  });

  test('gives the empty choice for no terms', () => {
    expect(listed('', among())).toEqual(['']);
  });

  test('lists every largest choice once and no other', () => {
    const marks = 'ABCDEF';
    const pairs = marks.split('').flatMap((a, i) =>
      marks
        .split('')
        .slice(i + 1)
        .map((b) => a + b),
    );
    fc.assert(
      fc.property(fc.subarray(pairs), (chosen) => {
        const excludes = among(...chosen);
        const found = listed(marks, excludes);
        expect(new Set(found).size).toBe(found.length);
        expect(new Set(found)).toEqual(new Set(largestByTrial(marks, excludes)));
      }),
    );
  });
});

// All 2^n choices tried one by one: slow, and plainly right.
function largestByTrial(marks: string, excludes: Excludes): string[] {
  const all = marks
    .split('')
    .reduce<string[]>(
      (sofar, mark) => [...sofar, ...sofar.map((choice) => choice + mark)],
      [''],
    );
  const fit = (choice: string): boolean =>
    choice.split('').every((a) => choice.split('').every((b) => !excludes(a, b)));
  const fitting = all.filter((choice) => fit(choice));
  const contains = (big: string, small: string): boolean =>
    big !== small && small.split('').every((mark) => big.includes(mark));
  return fitting.filter((choice) => !fitting.some((other) => contains(other, choice)));
}

describe('excludesIn', () => {
  const excludes = excludesIn({
    cases: [
      { mark: 'W1', kind: 'wind' },
      { mark: 'W2', kind: 'wind' },
      { mark: 'L1', kind: 'live' },
      { mark: 'L2', kind: 'live' },
      { mark: 'S', kind: 'snow' },
    ],
    alternatives: [['L1', 'S']],
    standards: [],
  });

  test('parts any two winds', () => {
    expect(excludes('W1', 'W2')).toBe(true);
  });

  test('parts alternatives of different kinds, and no others', () => {
    expect(excludes('S', 'L1')).toBe(true);
    expect(excludes('L1', 'L2')).toBe(false);
    expect(excludes('L2', 'S')).toBe(false);
  });
});
