/**
 * What the solver sees: a straight beam along x, its points, supports, hinges and loads.
 * SI throughout: metres, newtons, newton metres, radians, kelvins; x to the right, y up,
 * couples and rotations counterclockwise positive. No words, no paper.
 */
export interface BeamStructure {
  readonly kind: 'beam';
  /** Named points from left to right, stations strictly increasing; the first and last are the beam's ends. */
  readonly points: readonly { readonly name: string; readonly x: number }[];
  readonly supports: readonly Support[];
  /** Internal hinges: the moment is zero there, both forces pass. */
  readonly hinges: readonly { readonly point: string; readonly x: number }[];
  readonly loads: readonly Load[];
  /** Marks of every load case to be solved, in order; a case without loads solves to zero. */
  readonly cases: readonly string[];
}

/** A support at a point, as the reaction components that it can give. */
export interface Support {
  readonly point: string;
  readonly x: number;
  /** What the file calls it; words on the sheet follow it, the solver does not look at it. */
  readonly type: 'pin' | 'roller' | 'fixed' | 'guide' | 'spring';
  readonly restraints: readonly Restraint[];
}

/**
 * One reaction component, which counts as one unknown. A force acts along `direction` (a unit
 * vector, the positive sense of the unknown); a moment turns counterclockwise.
 */
export type Restraint = (
  | { readonly kind: 'force'; readonly direction: readonly [x: number, y: number] }
  | { readonly kind: 'moment' }
) & {
  /** Stiffness of a spring, N/m or N·m/rad; absent for a rigid restraint. */
  readonly stiffness?: number;
  /** Movement of the support's foot against `direction`, in metres, by case (a settlement is downward positive). */
  readonly settlements?: readonly { readonly case: string; readonly value: number }[];
};

/** One load of one case. `id` is unique in the structure and orders the terms of a sum. */
export type Load = {
  readonly id: string;
  readonly case: string;
} & (
  | {
      readonly kind: 'point';
      readonly x: number;
      readonly fx: number;
      readonly fy: number;
    }
  /** A force per length, straight from `from` (x1, y1) to `to` (x2, y2), N/m. */
  | {
      readonly kind: 'distributed';
      readonly from: number;
      readonly to: number;
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
    }
  /** A couple, counterclockwise positive; `side` says which piece carries it where it stands exactly at a hinge. */
  | {
      readonly kind: 'couple';
      readonly x: number;
      readonly m: number;
      readonly side?: 'left' | 'right';
    }
);
