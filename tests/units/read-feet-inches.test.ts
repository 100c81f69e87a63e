import { describe, expect, test } from 'vitest';
import { readFeetInches } from '../../src/units/read-feet-inches.ts';

describe('feet and inches', () => {
  test.each([
    ['12 ft 6 in', 12.5],
    ['12 ft 6 1/2 in', 12 + 6.5 / 12],
    ['12\'-6 1/2"', 12 + 6.5 / 12],
    ['12\' 6"', 12.5],
    ['12′-6″', 12.5],
    ['12’ 6”', 12.5],
    ['0 ft 1/2 in', 1 / 24],
    ['12 ft 6.5 in', 12 + 6.5 / 12],
  ])('%s is read', (text, feet) => {
    expect(readFeetInches(text)?.feet).toBeCloseTo(feet, 13);
  });

  test.each([
    '12.5 ft 6 in',
    '12 ft 12 in',
    '12 ft 6',
    '12 ft',
    '6 in',
    '12 ft 6 m',
    '12 ft 1/0 in',
  ])('%s is not', (text) => {
    expect(readFeetInches(text)).toBeUndefined();
  });

  test('it prints one way', () => {
    expect(readFeetInches('12\'-6 1/2"')?.text).toBe('12 ft 6 1/2 in');
  });
});
