/**
 * results.json as a value, format 1. Every quantity is in the project's display units (us kip, ft, kip ft,
 * in for deflections; si kN, m, kN m, mm). Forces are positive right and up, moments of
 * supports counterclockwise, shear as the upward force left of a cut, bending moment sagging, deflections
 * up, whatever the project prints.
 */
export interface Results {
  readonly format: 1;
  readonly project: ProjectIdentity;
  /** In sheet order. */
  readonly members: readonly MemberResults[];
}

/** What stands in place of results where the project itself cannot be read. */
export interface ProjectErrors {
  readonly format: 1;
  readonly errors: readonly ProjectError[];
}

/** One error of a project that cannot be read; line and column counted from 1. */
export interface ProjectError {
  readonly code: string;
  readonly message: string;
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
}

/** Which project, at which revision. */
export interface ProjectIdentity {
  /** Null where the project gives none. */
  readonly number: string | null;
  readonly title: string;
  /** Mark of the latest revision; null where there is none. */
  readonly revision: string | null;
  readonly units: 'us' | 'si';
}

/** A number with its unit as text: `kip`, `kN m`, `rad`. */
export interface Figure {
  readonly value: number;
  readonly unit: string;
}

/** A greatest or least value and the leftmost station that has it, on the axis of the member's points. */
export interface ExtremeFigure extends Figure {
  readonly at: Figure;
}

/** The greatest and the least of something along a member. */
export interface ExtremeFigures {
  readonly max: ExtremeFigure;
  readonly min: ExtremeFigure;
}

/** What a support gives; null exactly where it gives nothing in that sense. */
export interface ReactionFigures {
  readonly point: string;
  readonly x: Figure | null;
  readonly y: Figure | null;
  readonly moment: Figure | null;
}

/** The values at one station: just right of the member's first, just left of every other. */
export interface StationFigures {
  readonly x: Figure;
  readonly shear: Figure;
  readonly moment: Figure;
  /** dv/dx in rad; null where E and I are not known. */
  readonly slope: Figure | null;
  readonly deflection: Figure | null;
}

/** What was found for one case or combination. */
export interface EntryResults {
  readonly reactions: readonly ReactionFigures[];
  readonly shear: ExtremeFigures;
  readonly moment: ExtremeFigures;
  /** Absent where E and I are not known. */
  readonly deflection?: ExtremeFigures;
  /** Only where stations were asked for. */
  readonly stations?: readonly StationFigures[];
}

/** How loads that may stand in several ways stand. */
export interface ArrangementFigures {
  /** The spans (or, where both points are one, the supports) that patterned cases load; all others are empty. */
  readonly spans: readonly {
    readonly case: string;
    readonly from: string;
    readonly to: string;
  }[];
  /** What is taken of each carried reaction that has no single state: `greatest` or `least`. */
  readonly carried?: readonly {
    readonly case: string;
    readonly member: string;
    readonly point: string;
    readonly component: 'x' | 'y' | 'moment';
    readonly taken: string;
  }[];
  /** Trains on the beam: every axle that counts, numbered from the front, with its station. */
  readonly trains?: readonly {
    readonly train: string;
    readonly direction: 'right' | 'left';
    readonly axles: readonly { readonly axle: number; readonly at: Figure }[];
    readonly lane: readonly { readonly from: Figure; readonly to: Figure }[];
  }[];
}

/** Greatest and least of a reaction component; they do not act together, nor with those of others. */
export interface EndsFigures {
  readonly max: Figure & { readonly arrangement: ArrangementFigures };
  readonly min: Figure & { readonly arrangement: ArrangementFigures };
}

/** Greatest and least of something along a member, each with the arrangement that gives it. */
export interface RangeExtremeFigures {
  readonly max: ExtremeFigure & { readonly arrangement: ArrangementFigures };
  readonly min: ExtremeFigure & { readonly arrangement: ArrangementFigures };
}

/** Greatest and least at one station, on the sides that `StationFigures` are read from. */
export interface RangeStationFigures {
  readonly x: Figure;
  readonly shear_max: Figure;
  readonly shear_min: Figure;
  readonly moment_max: Figure;
  readonly moment_min: Figure;
  /** Null where E and I are not known. */
  readonly slope_max: Figure | null;
  readonly slope_min: Figure | null;
  readonly deflection_max: Figure | null;
  readonly deflection_min: Figure | null;
}

/** What was found for a case or combination whose loads may stand in several ways. */
export interface RangeEntryResults {
  readonly kind: 'range';
  readonly reactions: readonly {
    readonly point: string;
    readonly x: EndsFigures | null;
    readonly y: EndsFigures | null;
    readonly moment: EndsFigures | null;
  }[];
  readonly shear: RangeExtremeFigures;
  readonly moment: RangeExtremeFigures;
  /** Absent where E and I are not known. */
  readonly deflection?: RangeExtremeFigures;
  /** Only where stations were asked for. */
  readonly stations?: readonly RangeStationFigures[];
}

/** An extreme over several entries, and the mark of the entry that has it. */
export interface GoverningFigure extends ExtremeFigure {
  readonly result: string;
  /** Where that entry has no single state. */
  readonly arrangement?: ArrangementFigures;
}

/** Extremes over several entries. */
export interface EnvelopeFigures {
  readonly shear: { readonly max: GoverningFigure; readonly min: GoverningFigure };
  readonly moment: { readonly max: GoverningFigure; readonly min: GoverningFigure };
}

/** A limit that was judged; ratio is demand over capacity, unrounded. */
export interface CheckFigures {
  readonly name: string;
  readonly clause: string;
  readonly combination: string;
  readonly demand: Figure;
  readonly capacity: Figure;
  readonly ratio: number;
  readonly passes: boolean;
  readonly span?: string;
  readonly at?: Figure;
}

/** How far from zero an equilibrium sum came out, and the sum of the sizes of its terms. */
export interface ClosureFigures {
  readonly result: string;
  readonly equation: string;
  readonly residual: Figure;
  readonly scale: Figure;
}

/** Unknowns counted against equations; degree is unknowns − equations. */
export interface StaticsFigures {
  readonly unknowns: number;
  readonly equations: number;
  readonly degree: number;
  readonly stable: boolean;
}

/** Why a member has no results. */
export interface MemberError {
  readonly code: string;
  readonly message: string;
  readonly file?: string;
  readonly line?: number;
}

interface MemberIdentity {
  readonly mark: string;
  readonly title?: string;
  /** First sheet of the member; only in what is written beside a package. */
  readonly sheet?: number;
}

/** A beam with its results, by the marks of cases and combinations. */
export interface BeamResults extends MemberIdentity {
  readonly kind: 'beam';
  readonly statics: StaticsFigures;
  readonly results: Readonly<Record<string, EntryResults | RangeEntryResults>>;
  /** Over every combination, or over the cases where there are no combinations. */
  readonly envelope: EnvelopeFigures;
  /** Each over its own combinations; null where there are none. */
  readonly envelopes: {
    readonly strength: EnvelopeFigures | null;
    readonly service: EnvelopeFigures | null;
  };
  readonly checks: readonly CheckFigures[];
  readonly closure: readonly ClosureFigures[];
}

/** A member of any kind that could not be solved. */
export interface UnsolvedMember extends MemberIdentity {
  readonly kind: string;
  /** Where it came as far as counting. */
  readonly statics?: StaticsFigures;
  readonly error: MemberError;
}

/** One member of the package. */
export type MemberResults = BeamResults | UnsolvedMember;
