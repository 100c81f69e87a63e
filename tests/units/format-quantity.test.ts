import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  formatQuantity,
  parseQuantity,
  parseUnit,
  quantity,
  quantityText,
  type Print,
} from '../../src/units/index.ts';

const unit = (text: string) => parseUnit(text).unit!;
const figures = (count: number): Print => ({ kind: 'figures', count });
const text = (count: number, of: string, print: Print): string =>
  quantityText(quantity(count, unit(of)), unit(of), print).replace('\u00a0', ' ');

describe('quantities as text', () => {
  test('a quantity never prints without its unit, a zero too', () => {
    expect(text(8.4, 'kip', figures(2))).toBe('8.4 kip');
    expect(text(0, 'kip', figures(2))).toBe('0 kip');
    expect(text(-50.4, 'kip ft', figures(3))).toBe('−50.4 kip·ft');
    expect(text(60, 'deg', figures(2))).toBe('60°');
    expect(text(12e-6, '1/K', figures(2))).toBe('12×10^−6/K');
    expect(text(0.5, '', figures(1))).toBe('0.5');
  });

  test('US units set thousands apart by commas, SI units and plain numbers by a narrow space', () => {
    expect(text(29000, 'ksi', figures(5))).toBe('29,000 ksi');
    expect(text(29000, 'kN', figures(5))).toBe('29\u202f000 kN');
    expect(text(29000, '', figures(5))).toBe('29\u202f000');
  });

  test('feet and inches print once, with no unit after them', () => {
    const { quantity: given } = parseQuantity('12 ft 6 1/2 in');
    const { text: written, unit: shown, compound } = given!;
    const print = { kind: 'given', text: written, compound } as const;
    expect(quantityText(given!, shown, print)).toBe('12 ft 6 1/2 in');
  });

  test('a slope in radians may come from an expression of plain numbers, a force may not print in feet', () => {
    const pure = quantity(0.002, unit(''));
    expect(formatQuantity(pure, unit('rad'), figures(3)).text).toBe('0.00200');
    expect(() =>
      formatQuantity(quantity(1, unit('kip')), unit('ft'), figures(2)),
    ).toThrow(RangeError);
  });

  test('what is printed is read back as the same quantity', () => {
    const units = [
      'kip',
      'lb',
      'kN',
      'ft',
      'mm',
      'kip ft',
      'kN m',
      'kip/ft',
      'psf',
      'MPa',
    ];
    const more = [
      'in^4',
      'mm^4',
      'kN/m^3',
      'kip ft/rad',
      'deg',
      'rad',
      '1/K',
      '1/°F',
      '°F',
    ];
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, min: -1e12, max: 1e12 }),
        fc.integer({ min: 1, max: 9 }),
        fc.constantFrom(...units, ...more),
        (count, digits, of) => {
          if (Math.abs(count) < 1e-12) return;
          const shown = unit(of);
          const printed = formatQuantity(
            quantity(count, shown),
            shown,
            figures(digits),
          );
          const written = quantityText(quantity(count, shown), shown, figures(digits));
          const { quantity: back } = parseQuantity(written, shown.dimension);
          expect(back?.si, written).toBe(quantity(printed.value, shown).si);
        },
      ),
    );
  });

  test('metres or millimetres, kips or pounds: the same text in the same unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000_000 }), (millimetres) => {
        const inMetres = parseQuantity(`${millimetres / 1000} m`).quantity!;
        const inMillimetres = parseQuantity(`${millimetres} mm`).quantity!;
        expect(inMetres.si).toBe(inMillimetres.si);
        for (const shown of [unit('ft'), unit('m')]) {
          expect(quantityText(inMetres, shown, figures(4))).toBe(
            quantityText(inMillimetres, shown, figures(4)),
          );
        }
      }),
    );
  });
});
