import type { GivenQuantity, Unit } from '../units/index.ts';

/** A number of a published table in the table's unit, which prints as the table has it. */
export function given(text: string, unit: Unit): GivenQuantity {
  return {
    si: Number(text) * unit.inSi,
    dimension: unit.dimension,
    text,
    unit,
    compound: false,
  };
}
