/**
 * The terms of any equilibrium sum, about any point, of any part. One term a force or couple on
 * the part, in the order reactions (left to right), hinge forces, loads (as defined); every one
 * stands in every sum, those with a zero arm or a zero component too. Derivation prints these
 * terms, checks re-work them, and a reviewer's line is matched against them.
 */
export interface SumTerm {
  readonly source:
    /** The `index`-th restraint of the support at a point: an unknown. */
    | { readonly kind: 'reaction'; readonly point: string; readonly index: number }
    /** The x or y force through a hinge on this part: an unknown until the other part is solved. */
    | { readonly kind: 'hinge'; readonly point: string; readonly component: 'x' | 'y'; readonly side: 'left' | 'right' }
    /** A load, whole, or the part of a distributed load that lies on this part. */
    | { readonly kind: 'load'; readonly id: string; readonly from?: number; readonly to?: number };
  /**
   * What one unit of the force adds to the sum: for a force sum the direction cosine; for a moment
   * sum the signed arm in metres, counterclockwise positive (±1 for a moment component).
   * For loads, what one unit of the force's or resultant's MAGNITUDE (its downward, rightward or
   * counterclockwise size as `magnitude` has it) adds.
   */
  readonly factor: number;
  /** Size of a load or a resultant, N or N·m, in the load's own positive sense; absent for unknowns. */
  readonly magnitude?: number;
  /** Station of a force or of a resultant's line of action, in metres. */
  readonly x: number;
}

/** A part of the beam between two stations that are ends or hinges. */
export interface Part {
  readonly from: number;
  readonly to: number;
}

/** Which sum is meant. Sums of forces run along +x or +y, moments counterclockwise. */
export type Sum =
  | { readonly kind: 'forces'; readonly along: 'x' | 'y' }
  | { readonly kind: 'moments'; readonly about: number };
