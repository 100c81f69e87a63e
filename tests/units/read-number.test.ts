import { describe, expect, test } from 'vitest';
import { readNumber } from '../../src/units/read-number.ts';

describe('numbers at the head of a text', () => {
  test.each([
    ['8.4 kip', 8.4, '8.4', 3],
    ['.5', 0.5, '0.5', 2],
    ['5. m', 5, '5', 2],
    ['036', 36, '36', 3],
    ['1,250 lb', 1250, '1,250', 5],
    ['12\u202f500', 12500, '12\u202f500', 6],
    ['36.9e6', 36.9e6, '36.9e6', 6],
    ['36.9E+06', 36.9e6, '36.9e6', 8],
    ['36.9×10⁶', 36.9e6, '36.9e6', 8],
    ['12 × 10^-6', 12e-6, '12e-6', 10],
    ['6 1/2 in', 6.5, '6 1/2', 5],
    ['1/2', 0.5, '1/2', 3],
    ['20/2 ft', 10, '20/2', 4],
  ])('%s is read', (text, value, tidy, end) => {
    expect(readNumber(text)).toMatchObject({ value, text: tidy, end });
  });

  test.each(['', 'kip', '-5', ',5', '.', 'e6', '½'])('%s begins no number', (text) => {
    expect(readNumber(text)).toBeUndefined();
  });

  test('the last place is that of the digits written', () => {
    expect(readNumber('8.40')?.lastPlace).toBe(0.01);
    expect(readNumber('36.9e6')?.lastPlace).toBe(1e5);
    expect(readNumber('6 1/16')?.lastPlace).toBe(1 / 16);
  });

  test('a comma that separates no thousands ends the number', () => {
    expect(readNumber('1,25 kN')?.end).toBe(1);
    expect(readNumber('1,2500')?.end).toBe(1);
    expect(readNumber('0,500 kN')?.end).toBe(1);
  });

  test('a division by nought is no fraction', () => {
    expect(readNumber('1/0')).toMatchObject({ value: 1, end: 1 });
  });
});
