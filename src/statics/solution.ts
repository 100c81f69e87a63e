import type { Extreme, Piecewise } from './piecewise.ts';

/** What counting and the rank of the equilibrium system say of a beam. */
export interface Determinacy {
  /** How many restraint components the supports have; `unknownsOf` names them in order. */
  readonly unknowns: number;
  /** Three, and one a hinge. */
  readonly equations: number;
  /** unknowns − equations. */
  readonly degree: number;
  readonly rank: number;
  /** unknowns − rank: forces that equilibrium alone cannot tell. */
  readonly redundants: number;
  /** equations − rank: movements that nothing resists. */
  readonly mechanisms: number;
  readonly stable: boolean;
  /** Ratio of the greatest to the least non-zero singular value of the scaled system; 1 where there is none. */
  readonly condition: number;
  /** True where the condition number is so great that small errors of geometry matter (a caution belongs on the sheet). */
  readonly nearlyUnstable: boolean;
  /** True where the only redundancy is axial, so that y and moments are still found by statics. */
  readonly axialOnly: boolean;
  /** Why the beam can move, where it can. */
  readonly instability?: Instability;
}

/** The movement that the supports leave free, named for what it is. */
export type Instability =
  | {
      readonly kind: 'too-few-reactions';
      readonly unknowns: number;
      readonly equations: number;
    }
  /** All reactions run in one direction (a unit vector, upward or right); the beam slides across it. */
  | { readonly kind: 'parallel'; readonly direction: readonly [number, number] }
  /** All reactions meet at one place (x, y); the beam turns about it. */
  | { readonly kind: 'concurrent'; readonly x: number; readonly y: number }
  /** The pieces turn against one another at these hinges. */
  | { readonly kind: 'mechanism'; readonly hinges: readonly string[] }
  /** Nothing holds the beam along its axis. */
  | { readonly kind: 'no-x-restraint' };

/** The forces that a support gives in one result, N and N·m; positive right, up, counterclockwise; null where it gives none. */
export interface Reaction {
  readonly point: string;
  readonly x: number | null;
  readonly y: number | null;
  readonly moment: number | null;
  /** The components as the restraints of the support, in their order and positive sense. */
  readonly components: readonly number[];
}

/** Forces passing through a hinge: what the left piece does to the right piece, N. */
export interface HingeForce {
  readonly point: string;
  readonly x: number;
  readonly y: number;
}

/** One equilibrium sum worked with the solved forces: how far from zero it is, and the sum of absolute terms to judge it by. */
export interface Residual {
  /**
   * `forces x`, `forces y` or `moments about P` of the whole beam, `moments about H, right part`
   * of what is right of a hinge, or `closing axial`, `closing shear`, `closing moment`: what the
   * diagrams leave beyond the right end.
   */
  readonly equation: string;
  readonly residual: number;
  readonly scale: number;
}

/**
 * Everything found for one case or combination. Shear is positive where the part left of a cut
 * pushes the part right of it up: V = sum of upward forces left of the cut; moment is positive
 * sagging; axial force is positive in tension.
 */
export interface BeamResult {
  /** Mark of the case or combination. */
  readonly mark: string;
  readonly reactions: readonly Reaction[];
  readonly hingeForces: readonly HingeForce[];
  readonly axial: Piecewise;
  readonly shear: Piecewise;
  readonly moment: Piecewise;
  readonly extremes: {
    readonly shear: { readonly max: Extreme; readonly min: Extreme };
    readonly moment: { readonly max: Extreme; readonly min: Extreme };
    readonly axial: { readonly max: Extreme; readonly min: Extreme };
  };
  readonly residuals: readonly Residual[];
}

/** A solved beam: its determinacy, and a result a case in the order of `cases`. */
export interface BeamSolution {
  readonly kind: 'beam';
  readonly determinacy: Determinacy;
  readonly results: readonly BeamResult[];
}

/** Why a beam has no results. */
export type Unsolved =
  | { readonly reason: 'unstable'; readonly determinacy: Determinacy }
  | { readonly reason: 'indeterminate'; readonly determinacy: Determinacy };

/** What solving a beam comes to. */
export type BeamOutcome =
  BeamSolution | { readonly kind: 'unsolved'; readonly unsolved: Unsolved };
