import {
  countIn,
  type GivenQuantity,
  type Quantity,
  type Unit,
} from '../units/index.ts';

/**
 * A quantity that the program worked out from given ones (pressure times width), in the form of
 * a given one: its text holds twelve significant figures, far beyond what any sheet prints.
 */
export function computedQuantity(of: Quantity, unit: Unit): GivenQuantity {
  const count = Number(countIn(of, unit).toPrecision(12));
  return { ...of, text: String(count === 0 ? 0 : count), unit, compound: false };
}
