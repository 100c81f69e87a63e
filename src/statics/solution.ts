import type { Extreme, Piecewise, Side } from './piecewise.ts';
import type { Load } from './structure.ts';

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
  /** Absent where E or I is not known. */
  readonly displacement?: Displacement;
  /** How far the two ways of solving an indeterminate beam are apart; absent where statics alone solves it. */
  readonly agreement?: Agreement;
}

/** The elastic curve: exact piecewise polynomials, one-sided where a hinge breaks the slope. */
export interface Displacement {
  /** dv/dx in rad, counterclockwise positive; it jumps at hinges. */
  readonly slope: Piecewise;
  /** v in metres, up positive; continuous. */
  readonly deflection: Piecewise;
  readonly extremes: { readonly max: Extreme; readonly min: Extreme };
}

/** Two unrelated ways compared: the worst difference over reactions, shears and moments as a share of their scale. */
export interface Agreement {
  /** Worst |difference| / scale; forces against the scale of forces, moments against that of moments. */
  readonly difference: number;
  /** What is still agreement: 1e-9, or that times the condition estimate for very unequal stiffnesses. */
  readonly allowed: number;
  /** Estimated condition number of the stiffness matrix, scaled to a unit diagonal. */
  readonly condition: number;
}

/** A solved beam: its determinacy, and a result a case in the order of `cases`. */
export interface BeamSolution {
  readonly kind: 'beam';
  readonly determinacy: Determinacy;
  /**
   * One state a case. Where a case has choices or trains (its mark is then in `ranges` too), the
   * state is the one that stands for it on the sheet: every patterned span loaded, carried ranges at their
   * greatest, the train where it bends the beam most.
   */
  readonly results: readonly BeamResult[];
  /** Greatest and least of each case that has no single state. */
  readonly ranges: readonly RangeResult[];
  /** What trains alone give, by the cases that have some; absent where none has. */
  readonly rolled?: readonly RolledCase[];
  /** True where an indeterminate beam without E and I was solved with one EI all along. */
  readonly assumesConstantStiffness: boolean;
}

/** A greatest and a least value, each with the arrangement of loads that gives it. */
export interface Range {
  readonly max: { readonly value: number; readonly arrangement: Arrangement };
  readonly min: { readonly value: number; readonly arrangement: Arrangement };
}

/** The greatest and least value along the beam; at every station the arrangement may be another. */
export interface RangeCurves {
  readonly max: Piecewise;
  readonly min: Piecewise;
}

/** The extremes along the beam, each with its arrangement. */
export interface RangeExtremes {
  readonly max: Extreme & { readonly arrangement: Arrangement };
  readonly min: Extreme & { readonly arrangement: Arrangement };
}

/** How the loads stand: the option taken of each choice, and where each train is. */
export interface Arrangement {
  readonly choices: readonly { readonly id: string; readonly option: string }[];
  readonly trains: readonly TrainPlace[];
}

/** A train on the beam. */
export interface TrainPlace {
  readonly id: string;
  readonly direction: 'right' | 'left';
  /** Station and size of every axle that counts: on the beam, and not left out as relieving. */
  readonly axles: readonly { readonly index: number; readonly x: number }[];
  /** Stretches that the lane load covers. */
  readonly lane: readonly { readonly from: number; readonly to: number }[];
}

/** What the trains of one case give wherever they are, and as loads where they bend the beam most. */
export interface RolledCase {
  readonly mark: string;
  readonly part: RangePart;
  /** Axles and lane load where the state of the case has them. */
  readonly standing: readonly Load[];
}

/** One quantity at one station, and which of its ends is sought. */
export interface RangeQuery {
  readonly of: 'axial' | 'shear' | 'moment' | 'slope' | 'deflection';
  readonly sense: 'max' | 'min';
  readonly x: number;
  readonly side: Side;
}

/** What loads that may stand in several ways give at most and at least; signs as for `BeamResult`. */
export interface RangePart {
  readonly reactions: readonly {
    readonly point: string;
    readonly x: Range | null;
    readonly y: Range | null;
    readonly moment: Range | null;
  }[];
  /** Absent where the loads that may stand in several ways send no force along the axis. */
  readonly axial?: RangeCurves;
  readonly shear: RangeCurves;
  readonly moment: RangeCurves;
  /** Both absent where E or I is not known. */
  readonly slope?: RangeCurves;
  readonly deflection?: RangeCurves;
  /** How the loads stand where they give the end sought at that station: the curves say how much, this says how. */
  readonly arrangementAt: (query: RangeQuery) => Arrangement;
}

/** What was found for a case or combination without a single state. */
export interface RangeResult extends RangePart {
  readonly kind: 'range';
  readonly mark: string;
  readonly extremes: {
    readonly axial?: RangeExtremes;
    readonly shear: RangeExtremes;
    readonly moment: RangeExtremes;
    readonly deflection?: RangeExtremes;
  };
}

/** Why a beam has no results. */
export type Unsolved =
  | { readonly reason: 'unstable'; readonly determinacy: Determinacy }
  /** Springs, settlements or temperature share their forces by stiffness, which is not known. */
  | { readonly reason: 'needs-stiffness'; readonly determinacy: Determinacy }
  /** The two ways of solving disagree beyond what rounding explains: no result is given. */
  | {
      readonly reason: 'ways-disagree';
      readonly determinacy: Determinacy;
      readonly case: string;
      readonly agreement: Agreement;
    }
  | { readonly reason: 'indeterminate'; readonly determinacy: Determinacy };

/** What solving a beam comes to. */
export type BeamOutcome =
  BeamSolution | { readonly kind: 'unsolved'; readonly unsolved: Unsolved };
