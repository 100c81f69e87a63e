import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatNumber, parseQuantity } from '../../src/units/index.ts';

const figures = (count: number) => ({ kind: 'figures', count }) as const;
const decimals = (count: number) => ({ kind: 'decimals', count }) as const;

describe('numbers to so many decimals', () => {
  test.each([
    [2.675, 2, '2.68'],
    [1.005, 2, '1.01'],
    [1.005 * 1000, 0, '1005'],
    [0.285, 2, '0.29'],
    [-0.285, 2, '−0.29'],
    [8.345, 2, '8.35'],
    [2.5, 0, '3'],
    [-2.5, 0, '−3'],
    [0.5, 0, '1'],
    [1.4999999, 0, '1'],
    [2.4, 3, '2.400'],
    [0, 3, '0'],
    [-0, 3, '0'],
    [-0.0004, 3, '0.000'],
    [0.1 + 0.2, 17, '0.30000000000000000'],
  ])('%d to %d decimals prints %s', (value, count, text) => {
    expect(formatNumber(value, decimals(count)).text).toBe(text);
  });
});

describe('numbers to so many significant figures', () => {
  test.each([
    [2.4, 4, '2.400'],
    [50.4, 3, '50.4'],
    [9.9996, 4, '10.00'],
    [99.95, 3, '100'],
    [123456, 4, '123500'],
    [0.00012344, 4, '0.0001234'],
    [0.000099996, 4, '0.0001000'],
    [0.000012, 2, '12×10^−6'],
    [999999.4, 6, '999999'],
    [999999.5, 6, '1.00000×10⁶'],
    [36.9e6, 3, '36.9×10⁶'],
    [-36.9e6, 3, '−36.9×10⁶'],
    [123.45e9, 4, '123.5×10⁹'],
    [2.675, 3, '2.68'],
    [0, 4, '0'],
  ])('%d to %d figures prints %s', (value, count, text) => {
    expect(formatNumber(value, figures(count)).text).toBe(text);
  });

  test('the printed figure knows its value and the worth of its last place', () => {
    expect(formatNumber(123456, figures(4))).toMatchObject({
      value: 123500,
      lastPlace: 100,
    });
    expect(formatNumber(-36.94e6, figures(3))).toMatchObject({
      value: -36.9e6,
      lastPlace: 0.1e6,
      mantissa: '36.9',
      exponent: 6,
      negative: true,
    });
    expect(formatNumber(0, figures(3))).toMatchObject({ value: 0, lastPlace: 0 });
  });
});

describe('thousands', () => {
  test('are set apart from ten thousand on, as asked', () => {
    expect(formatNumber(9999, figures(4), 'comma').text).toBe('9999');
    expect(formatNumber(29000, figures(5), 'comma').text).toBe('29,000');
    expect(formatNumber(204000, figures(6), 'space').text).toBe('204\u202f000');
    expect(formatNumber(12345.678, decimals(3), 'comma').text).toBe('12,345.678');
    expect(formatNumber(29000, figures(5)).text).toBe('29000');
  });
});

describe('given numbers', () => {
  test('print as they were given', () => {
    const given = (text: string) =>
      formatNumber(0, { kind: 'given', text, compound: false });
    expect(given('1,250').text).toBe('1,250');
    expect(given('36.9e6').text).toBe('36.9×10⁶');
    expect(given('−8.40')).toMatchObject({
      text: '−8.40',
      value: -8.4,
      lastPlace: 0.01,
    });
  });
});

describe('any number', () => {
  const anyNumber = fc.double({ noNaN: true, min: -1e30, max: 1e30 });

  test('prints within half a unit of its last place', () => {
    fc.assert(
      fc.property(anyNumber, fc.integer({ min: 1, max: 11 }), (value, count) => {
        const { value: printed, lastPlace } = formatNumber(value, figures(count));
        // A double is read at 12 digits first, which may move a value by half a unit of the twelfth.
        const reading = 0.5 * 10 ** (count - 12);
        expect(Math.abs(printed - value)).toBeLessThanOrEqual(
          lastPlace * (0.5 + reading + 1e-6),
        );
      }),
    );
  });

  test('never prints a minus before noughts, NaN or an exponent of a program', () => {
    fc.assert(
      fc.property(anyNumber, fc.integer({ min: 0, max: 9 }), (value, count) => {
        for (const print of [figures(count), decimals(count)]) {
          const { text } = formatNumber(value, print);
          expect(text).toMatch(/^−?\d+(\.\d+)?(×10([⁰¹²³⁴⁵⁶⁷⁸⁹]+|\^−\d+))?$/);
          expect(text).not.toMatch(/^−[0.]+$/);
        }
      }),
    );
  });

  test('prints the same digits on either side of zero', () => {
    fc.assert(
      fc.property(anyNumber, fc.integer({ min: 1, max: 9 }), (value, count) => {
        const plus = formatNumber(Math.abs(value), figures(count)).text;
        const minus = formatNumber(-Math.abs(value), figures(count)).text;
        expect(minus.replace(/^−/, '')).toBe(plus);
      }),
    );
  });

  test('shows exactly the significant figures asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, min: 1e-3, max: 1e3 }),
        fc.integer({ min: 4, max: 9 }),
        (value, count) => {
          const { mantissa } = formatNumber(value, figures(count));
          const digits = mantissa.replace('.', '').replace(/^0+/, '');
          expect(digits).toHaveLength(count);
        },
      ),
    );
  });

  test('is read back as the number printed', () => {
    fc.assert(
      fc.property(
        anyNumber,
        fc.integer({ min: 1, max: 9 }),
        fc.constantFrom('none', 'comma', 'space'),
        (value, count, grouping) => {
          const printed = formatNumber(value, figures(count), grouping);
          const { quantity } = parseQuantity(printed.text);
          if (Math.abs(value) > 1e-50) expect(quantity?.si).toBe(printed.value);
        },
      ),
    );
  });
});
