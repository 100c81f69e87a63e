import type { Dimension } from './dimension.ts';
import type { UnitFactor } from './unit.ts';

/** Which habit of printing a unit belongs to; it decides how thousands are set apart. */
export type UnitSystem = 'us' | 'si' | 'both';

/** One unit symbol: what it is worth, and who says so. */
export interface UnitEntry {
  /** As printed. */
  readonly symbol: string;
  /** Other ways of writing it. */
  readonly aliases?: readonly string[];
  readonly dimension: Dimension;
  /** SI units (N, m, K, rad) that one is worth; every factor is exact by definition, up to a double's last bit. */
  readonly inSi: number;
  /** Where the factor is laid down. */
  readonly source: string;
  readonly system: UnitSystem;
  /** Where the symbol is short for a product: its factors, so that they can be seen to cancel. */
  readonly shortFor?: readonly UnitFactor[];
}

/** The factors of a unit that divides by a power of another: lb/ft² by `per('lb', 'ft', 2)`. */
export function per(
  over: string,
  under: string,
  power: number = 1,
): readonly UnitFactor[] {
  return [
    { symbol: over, power: 1 },
    { symbol: under, power: -power },
  ];
}
