import { describe, expect, test } from 'vitest';
import { parseQuantity, unitTable } from '../../src/units/index.ts';
import { findUnit, unitEntry } from '../../src/units/unit-table.ts';

/*
 * Factors as printed in NIST Special Publication 811 (2008), appendix B.8, to its seven significant digits
 * (exact ones in full): what one of the unit is worth in N, m, K, rad and their products.
 */
const published: readonly (readonly [unit: string, worth: number])[] = [
  ['ft', 0.3048],
  ['in', 0.0254],
  ['yd', 0.9144],
  ['lbf', 4.448222],
  ['kip', 4.448222e3],
  ['lb/ft', 14.5939],
  ['plf', 14.5939],
  ['lb/in', 175.1268],
  ['klf', 1.45939e4],
  ['psf', 47.88026],
  ['ksf', 4.788026e4],
  ['psi', 6.894757e3],
  ['ksi', 6.894757e6],
  ['lb ft', 1.355818],
  ['lb in', 0.1129848],
  ['kip ft', 1355.818],
  ['pcf', 157.0875],
  ['in^2', 6.4516e-4],
  ['ft^2', 9.290304e-2],
  ['in^3', 1.638706e-5],
  ['ft^3', 2.831685e-2],
  ['in^4', 4.162314e-7],
  ['ft^4', 8.630975e-3],
  ['deg', 1.745329e-2],
  ['°F', 0.5555556],
  ['°C', 1],
  ['cm', 0.01],
  ['mm', 0.001],
  ['kN', 1000],
  ['MN', 1e6],
  ['N/mm', 1000],
  ['kN/mm', 1e6],
  ['MPa', 1e6],
  ['GPa', 1e9],
  ['kPa', 1000],
  ['Pa', 1],
  ['kN/m^2', 1000],
  ['mm^4', 1e-12],
];

describe('the unit table', () => {
  test.each(published)('one %s is worth %d SI units', (unit, worth) => {
    const { quantity } = parseQuantity(`1 ${unit}`);
    expect(Number(quantity!.si.toPrecision(7))).toBe(worth);
  });

  test('the pound-force is exact: the pound of 1959 times standard gravity', () => {
    // 0.45359237 × 9.80665 in whole numbers: 45359237 × 980665 / 10^13.
    expect(45359237n * 980665n).toBe(44482216152605n);
    expect(findUnit('lb')?.inSi).toBe(4.4482216152605);
    expect(findUnit('kip')?.inSi).toBe(4448.2216152605);
  });

  test('every alias of the trade means its unit', () => {
    const meant = { k: 'kip', kips: 'kip', lbs: 'lb', lbf: 'lb', '#': 'lb', F: '°F' };
    for (const [alias, symbol] of Object.entries({ ...meant, '°': 'deg' })) {
      expect(findUnit(alias)?.symbol).toBe(symbol);
    }
  });

  test('case matters: K is kelvin and k is kip', () => {
    expect(findUnit('K')?.symbol).toBe('K');
    expect(findUnit('k')?.symbol).toBe('kip');
    expect(findUnit('KIP')).toBeUndefined();
  });

  test('no name means two units, and every factor says where it is from', () => {
    const names = unitTable.flatMap((entry) => [
      entry.symbol,
      ...(entry.aliases ?? []),
    ]);
    expect(new Set(names).size).toBe(names.length);
    for (const { source } of unitTable) expect(source).toMatch(/SP 811|SI brochure/);
  });

  test('names of objects that a table inherits are no units', () => {
    for (const name of ['constructor', '__proto__', 'toString']) {
      expect(findUnit(name)).toBeUndefined();
    }
  });

  test('an unknown canonical symbol is a programmer’s mistake', () => {
    expect(() => unitEntry('stone')).toThrow(RangeError);
  });
});
