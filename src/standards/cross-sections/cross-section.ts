import type { GivenQuantity } from '../../units/index.ts';

/** A cross-section of a published table: each property as the table gives it, and whose table it is. */
export interface TabulatedCrossSection {
  /** Designation: `W12x26`, `IPE300`. */
  readonly name: string;
  readonly A: GivenQuantity;
  readonly depth: GivenQuantity;
  /** Second moment of area about the strong axis. */
  readonly I: GivenQuantity;
  /** Elastic section modulus about the strong axis; absent where the source does not give it. */
  readonly S?: GivenQuantity;
  /** Weight per length; absent where the table gives a mass, so that the weight follows from A and a density. */
  readonly weight?: GivenQuantity;
  /** The plates that the shape is rolled from, as it were; absent for shapes of another form. */
  readonly plates: Plates;
  /** Whose table; says `from memory` where the values were not read there. */
  readonly source: string;
}

/** Flanges and web of an I-shape or a channel. */
export interface Plates {
  readonly flangeWidth: GivenQuantity;
  readonly flangeThickness: GivenQuantity;
  readonly webThickness: GivenQuantity;
  /** Radius between flange and web; absent where the table gives none. */
  readonly rootRadius?: GivenQuantity;
}
