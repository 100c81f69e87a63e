import type { GivenQuantity } from '../../units/index.ts';

/** Properties of a cross-section; each as given, or from a table with its source. */
export interface CrossSection {
  /** A designation, a name of the project's, or absent where the values stand in the member. */
  readonly name?: string;
  readonly I?: GivenQuantity;
  readonly S?: GivenQuantity;
  readonly A?: GivenQuantity;
  readonly weight?: GivenQuantity;
  readonly depth?: GivenQuantity;
  /** Where the values come from; absent for values in the definition itself. */
  readonly source?: string;
}

/** Properties of a material. */
export interface Material {
  readonly name?: string;
  readonly E?: GivenQuantity;
  readonly density?: GivenQuantity;
  readonly expansion?: GivenQuantity;
  readonly source?: string;
}
