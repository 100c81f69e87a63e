import type { GivenQuantity } from '../../units/index.ts';

/** A material of a standard, as far as statics and deflections need it. */
export interface TabulatedMaterial {
  readonly name: string;
  /** Modulus of elasticity. */
  readonly E: GivenQuantity;
  /** Weight per volume. */
  readonly density: GivenQuantity;
  /** Strain per kelvin or degree Fahrenheit; absent where the source gives none. */
  readonly expansion?: GivenQuantity;
  /** The clauses; says `from memory` where they were not read. */
  readonly source: string;
}
