import type { Dimension } from './dimension.ts';
import type { Unit } from './unit.ts';

/** A number that knows what it measures; `si` counts in N, m, K, rad and their products. */
export interface Quantity {
  readonly si: number;
  readonly dimension: Dimension;
}

/** A quantity that somebody wrote down: it prints as it was given. */
export interface GivenQuantity extends Quantity {
  /** The number as given, tidied for print (`8.4`, `1,250`, `12 ft 6 1/2 in` whole for feet and inches). */
  readonly text: string;
  /** The unit given; for feet and inches the foot. A bare 0 takes the unit that the reader expected there. */
  readonly unit: Unit;
  /** True where `text` holds its units itself (feet and inches). */
  readonly compound: boolean;
}

/**
 * So many of a unit. The product is settled to 15 digits, so that 12 ft, 144 in and 3.6576 m are one number
 * and not three neighbours.
 */
export function quantity(count: number, unit: Unit): Quantity {
  return { si: settled(count * unit.inSi), dimension: unit.dimension };
}

function settled(value: number): number {
  return Number(value.toPrecision(15));
}

/** How many of a unit a quantity is worth; the dimensions are the caller's to match. */
export function countIn(of: Quantity, unit: Unit): number {
  return of.si / unit.inSi;
}
