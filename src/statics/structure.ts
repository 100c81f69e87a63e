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
  /** Flexural stiffness by stretch, from left to right without gaps; absent where E or I is not known. */
  readonly stiffness?: readonly StiffnessStretch[];
  /** Curvatures that the beam would take if nothing held it (temperature). */
  readonly curvatures?: readonly FreeCurvature[];
  /** Loads that may stand in several ways, whatever the others do: pattern loads, ranges carried here. */
  readonly choices?: readonly LoadChoice[];
  /** Trains of axles that run along the beam. */
  readonly trains?: readonly Train[];
}

/** A stretch of constant flexural stiffness. */
export interface StiffnessStretch {
  readonly from: number;
  readonly to: number;
  /** E times I, N·m². */
  readonly EI: number;
}

/**
 * The curvature v″ (1/m) that a stretch would take if nothing held it, so that M = EI (v″ − curvature).
 * A top warmer by dT over a depth h gives −α dT / h.
 */
export interface FreeCurvature {
  readonly id: string;
  readonly case: string;
  readonly from: number;
  readonly to: number;
  readonly curvature: number;
}

/**
 * Loads of one case that stand in exactly one of several ways. A patterned span has the options
 * `off` (no loads) and `on`; a carried range its greatest and its least. Choices are independent of
 * one another; the loads in them are not among `loads` of the structure.
 */
export interface LoadChoice {
  /** Unique in the structure. */
  readonly id: string;
  readonly case: string;
  /** The stretch whose loads the choice holds (a span or an overhang); absent for a carried range. */
  readonly span?: { readonly from: number; readonly to: number };
  readonly options: readonly {
    readonly name: string;
    readonly loads: readonly Load[];
  }[];
}

/** Axles that roll along the beam as one train, with an optional lane load beside it. */
export interface Train {
  /** Unique in the structure. Trains of one case are alternatives: one of them is on the beam at a time. */
  readonly id: string;
  readonly case: string;
  /** Downward axle loads in N, front first, factors applied. */
  readonly axles: readonly number[];
  /** Distances from each axle to the next in metres, least and greatest; one fewer than axles. */
  readonly spacings: readonly { readonly least: number; readonly greatest: number }[];
  /** Which way it may travel: the front axle leads. */
  readonly travel: 'right' | 'left' | 'both';
  /** Downward lane load in N/m, factors applied, placed only where it makes things worse. */
  readonly lane?: number;
  /** Whether axles that reduce the effect sought still count. */
  readonly relieving: 'kept' | 'left out';
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
