import { describe, expect, test } from 'vitest';
import {
  alignDecimals,
  columnDecimals,
  parseUnit,
  quantity,
} from '../../src/units/index.ts';

const kip = parseUnit('kip').unit!;
const column = (values: readonly number[], figures: number) =>
  alignDecimals(
    values.map((value) => quantity(value, kip)),
    kip,
    figures,
  ).map(({ text }) => text);

describe('a table column', () => {
  test('has one number of decimals, and a nought prints plain', () => {
    expect(column([2.4, 12.345, 0, -6], 4)).toEqual(['2.40', '12.35', '0', '−6.00']);
  });

  test('keeps two figures of a small value that matters', () => {
    expect(column([1234.5, 2.42], 4)).toEqual(['1234.5', '2.4']);
  });

  test('does not widen for a value that does not matter', () => {
    expect(column([1234.5, 0.0000012], 4)).toEqual(['1235', '0']);
  });

  test('of noughts alone prints noughts', () => {
    expect(column([0, -0], 4)).toEqual(['0', '0']);
    expect(column([], 4)).toEqual([]);
  });

  test('counts decimals in the unit that it prints in', () => {
    const inch = parseUnit('in').unit!;
    const foot = parseUnit('ft').unit!;
    expect(columnDecimals([quantity(6, inch)], inch, 3)).toBe(2);
    expect(columnDecimals([quantity(6, inch)], foot, 3)).toBe(3);
    expect(columnDecimals([], inch, 3)).toBe(0);
  });
});
