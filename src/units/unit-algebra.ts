import {
  multiplyDimensions,
  powerOfDimension,
  dimension,
  type Dimension,
} from './dimension.ts';
import type { Unit, UnitFactor } from './unit.ts';
import type { UnitSystem } from './unit-entry.ts';
import { unitEntry } from './unit-table.ts';

/**
 * A unit from its factors, in the order given; factors of one symbol are merged, powers of 0 drop
 * out. A symbol that the table lacks is a programmer's mistake, a RangeError.
 */
export function unitOf(factors: readonly UnitFactor[]): Unit {
  const powers = new Map<string, number>();
  for (const { symbol, power } of factors) {
    powers.set(symbol, (powers.get(symbol) ?? 0) + power);
  }
  const kept = [...powers]
    .filter(([, power]) => power !== 0)
    .map(([symbol, power]) => ({ symbol, power }));
  return {
    factors: kept,
    dimension: kept.reduce<Dimension>(
      (product, { symbol, power }) =>
        multiplyDimensions(
          product,
          powerOfDimension(unitEntry(symbol).dimension, power),
        ),
      dimension({}),
    ),
    inSi: worthOf(kept),
  };
}

// Multiply first, divide once: kip/ft must be worth exactly what klf is.
function worthOf(factors: readonly UnitFactor[]): number {
  const product = (sign: number): number =>
    factors
      .filter(({ power }) => power * sign > 0)
      .reduce((worth, f) => worth * unitEntry(f.symbol).inSi ** Math.abs(f.power), 1);
  return product(1) / product(-1);
}

/** The unit of a pure number, without factors. */
export const pureUnit: Unit = unitOf([]);

/** The unit of a product: forces come first and lengths next, so that ft × kip prints as kip·ft. */
export function multiplyUnits(a: Unit, b: Unit): Unit {
  const merged = unitOf([...a.factors, ...b.factors]).factors;
  return unitOf([...merged].sort((x, y) => placeOf(x.symbol) - placeOf(y.symbol)));
}

/** The unit of a quotient. */
export function divideUnits(over: Unit, under: Unit): Unit {
  return multiplyUnits(over, powerOfUnit(under, -1));
}

/** A unit raised to a power, whole or fractional. */
export function powerOfUnit(of: Unit, power: number): Unit {
  return unitOf(of.factors.map((f) => ({ symbol: f.symbol, power: f.power * power })));
}

/** A unit with its short names written out: psf as lb/ft², MPa as N/mm². Worth the same. */
export function expandUnit(unit: Unit): Unit {
  const factors = unit.factors.flatMap(({ symbol, power }) => {
    const shortFor = unitEntry(symbol).shortFor;
    if (shortFor === undefined) return [{ symbol, power }];
    return shortFor.map((f) => ({ symbol: f.symbol, power: f.power * power }));
  });
  return multiplyUnits(unitOf(factors), pureUnit);
}

/** True where two units are the same product of the same symbols, in any order. */
export function sameUnit(a: Unit, b: Unit): boolean {
  return divideUnits(a, b).factors.length === 0;
}

/** The habit of printing that a unit follows: that of its first factor that has one, else `both`. */
export function systemOf(unit: Unit): UnitSystem {
  const systems = unit.factors.map(({ symbol }) => unitEntry(symbol).system);
  return systems.find((system) => system !== 'both') ?? 'both';
}

// Forces before lengths, then temperatures and angles.
function placeOf(symbol: string): number {
  const { dimension: of } = unitEntry(symbol);
  if (of.force !== 0) return 0;
  if (of.length !== 0) return 1;
  return of.temperature !== 0 ? 2 : 3;
}
