import type { Dimension } from './dimension.ts';

/** One factor of a unit: a base symbol such as `kip` or `ft` raised to a power other than 0. */
export interface UnitFactor {
  /** Canonical symbol, as printed in upright type: `kip`, `ft`, `in`, `kN`, `m`, `mm`, `psf`, `deg`, `K` … */
  readonly symbol: string;
  readonly power: number;
}

/** A unit as a product of factors (kip·ft, kip/ft, in⁴), so that units can be seen to cancel. */
export interface Unit {
  readonly factors: readonly UnitFactor[];
  readonly dimension: Dimension;
  /** SI units (N, m, K, rad) that one of this unit is worth. */
  readonly inSi: number;
}
