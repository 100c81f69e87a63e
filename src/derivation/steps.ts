import type { Expression, Statement, Symbol } from '../equation/index.ts';
import type { FigureSpec } from '../figure/index.ts';

/** A place on the member: its station, and the point's name where it is one. */
export interface Place {
  readonly station: Expression;
  readonly point?: string;
}

/** A support with the movements that it stops. */
export interface SupportRow {
  readonly point: string;
  readonly type: 'pin' | 'roller' | 'fixed' | 'guide' | 'spring';
  readonly holds: {
    readonly x: boolean;
    readonly y: boolean;
    readonly moment: boolean;
  };
  /** Direction of an inclined roller's reaction. */
  readonly normal?: Expression;
  readonly stiffness?: Expression;
  readonly rotation?: Expression;
  readonly settlement?: { readonly value: Expression; readonly case: string };
}

/** Where a load comes from, when it is not written as such. */
export type OriginFact =
  | {
      readonly kind: 'area';
      readonly area: string;
      readonly product: Statement;
      readonly source?: string;
    }
  | { readonly kind: 'self-weight'; readonly product?: Statement }
  | {
      readonly kind: 'carried';
      readonly member: string;
      readonly point: string;
      readonly anchor: string;
      readonly times: number;
    };

/** A load as the given list shows it. */
export interface LoadRow {
  readonly symbol: Symbol;
  readonly case: string;
  readonly kind: 'force' | 'uniform' | 'varying' | 'couple';
  /** As given: one size, or those at the two ends. */
  readonly sizes: readonly Expression[];
  readonly at?: Place;
  readonly from?: Place;
  readonly to?: Place;
  /** `down`, `right`, `300°`, `clockwise`. */
  readonly direction: string;
  readonly note?: string;
  readonly uses: readonly string[];
  readonly origin?: OriginFact;
  /** A slanted load given per length square to its direction, brought to a length of beam. */
  readonly projected?: Statement;
  /** A factor on the given size, with its reason and the product. */
  readonly factor?: {
    readonly times: Expression;
    readonly because: string;
    readonly product: Statement;
  };
}

/** A reaction component as an unknown. */
export interface UnknownRow {
  readonly symbol: Symbol;
  readonly sense: Sense;
}

/** The way a force or couple acts, in words of the sheet. */
export type Sense =
  | 'up'
  | 'down'
  | 'right'
  | 'left'
  | 'counterclockwise'
  | 'clockwise'
  | 'along the normal'
  | 'against the normal';

/** Facts of what is given. */
export type GivenStep =
  | {
      readonly kind: 'geometry';
      readonly length: Expression;
      readonly points: readonly {
        readonly name: string;
        /** As given where the file gives the station itself, else as the project prints lengths. */
        readonly station: Expression;
        /** The same as the sums use it, where that reads otherwise (feet and inches, another unit). */
        readonly decimal?: Expression;
        /** What the file gives instead of the station: the distance from the point before. */
        readonly fromBefore?: Expression;
      }[];
      readonly hinges: readonly string[];
    }
  | { readonly kind: 'supports'; readonly supports: readonly SupportRow[] }
  | {
      readonly kind: 'loads';
      readonly loads: readonly LoadRow[];
      readonly cases: readonly { readonly mark: string; readonly title?: string }[];
    }
  | {
      readonly kind: 'section';
      readonly stretches: readonly {
        readonly from: Place;
        readonly to: Place;
        readonly name?: string;
        readonly values: readonly {
          readonly symbol: Symbol;
          readonly value: Expression;
        }[];
        readonly source?: string;
      }[];
      readonly material?: {
        readonly name?: string;
        readonly values: readonly {
          readonly symbol: Symbol;
          readonly value: Expression;
        }[];
        readonly source?: string;
      };
      readonly bracing?: { readonly top?: string; readonly bottom?: string };
    }
  /** What the file leaves open and the program takes. */
  | {
      readonly kind: 'taken';
      readonly selfWeight: boolean;
      readonly hasStiffness: boolean;
      readonly limitStates: boolean;
    };

/** Facts of supports as reactions and of determinacy. */
export type StaticsStep =
  | {
      readonly kind: 'release';
      readonly rows: readonly {
        readonly point: string;
        readonly type: SupportRow['type'];
        /** Of an inclined roller: where its reaction points, its angle to the axis and the way of its two parts. */
        readonly inclined?: {
          readonly toward: Expression;
          readonly angle: Expression;
          readonly x: Sense;
          readonly y: Sense;
        };
        readonly gives: readonly UnknownRow[];
      }[];
    }
  | {
      readonly kind: 'count';
      readonly unknowns: readonly Symbol[];
      readonly unknownCount: number;
      readonly hinges: readonly string[];
      readonly equationCount: number;
      readonly degree: number;
    }
  | {
      readonly kind: 'geometry-test';
      readonly rank: number;
      readonly equationCount: number;
      readonly redundants: number;
      readonly mechanisms: number;
      readonly condition: string;
      readonly isNearlyUnstable: boolean;
      /** How the geometry was seen to hold: x held by, and y and turning held by. */
      readonly alongX: readonly Symbol[];
      readonly acrossAndTurning: readonly Symbol[];
      /** True where a support holds against turning by itself. */
      readonly holdsTurning: boolean;
      readonly hinges: readonly string[];
    }
  | {
      readonly kind: 'method';
      readonly axialOnly: boolean;
      readonly hinges: readonly string[];
    };

/** What a sum found. */
export interface Found {
  readonly symbol: Symbol;
  readonly value: Expression;
  /** The way that it really acts; absent where it is 0. Of a force through a hinge: on the piece to its right. */
  readonly acts?: Sense;
  /** The way that it acts on the piece to the left of its hinge. */
  readonly actsLeft?: Sense;
  /** The hinge that it passes through. */
  readonly hinge?: string;
  readonly isNegative: boolean;
  readonly isZero: boolean;
}

/** Facts of the equations of one case. */
export type EquationStep =
  | {
      readonly kind: 'no-loads';
      readonly case: string;
      /** Supports that settle in this case: they move the member and strain nothing. */
      readonly settlements: readonly {
        readonly point: string;
        readonly value: Expression;
      }[];
    }
  /** Given in another unit than the sums use. */
  | { readonly kind: 'conversion'; readonly statement: Statement }
  | {
      readonly kind: 'resultant';
      readonly symbol: Symbol;
      readonly of: Symbol;
      readonly shape: 'rectangle' | 'triangle';
      /** A share of a load: one of the shapes that a trapezoid or a sign-changing load is cut into, or the stretch on one piece. */
      readonly isShare: boolean;
      /** The stretch that the shape stands on. */
      readonly from: Place;
      readonly to: Place;
      readonly direction: string;
      /** Of a varying load: its intensity where a stretch is cut, or where it passes through 0. */
      readonly ordinates: readonly {
        readonly what: 'at-cut' | 'zero';
        readonly statement: Statement;
      }[];
      readonly size: Statement;
      readonly place: Statement;
    }
  | {
      readonly kind: 'components';
      readonly symbol: Symbol;
      /** Where it points, from +x, and the acute angle to the axis that the sizes are worked with. */
      readonly direction: Expression;
      readonly angle: Expression;
      readonly x: Sense;
      readonly y: Sense;
      readonly statement: Statement;
    }
  | {
      readonly kind: 'take-apart';
      readonly pieces: readonly string[];
      readonly hinges: readonly string[];
      /** The forces through the hinges, drawn on the piece to the right of each. */
      readonly forces: readonly UnknownRow[];
      /** Loads of the case that stand at a hinge itself. */
      readonly atHinges: readonly Symbol[];
    }
  | {
      readonly kind: 'sum';
      readonly sum: 'moments' | 'forces-x' | 'forces-y';
      readonly about?: string;
      /** Name of the piece, `A to H`; absent for the whole member. */
      readonly piece?: string;
      /** Unknowns that have no part in this sum because they pass through the point or lie across it. */
      readonly clears: readonly Symbol[];
      /** Why it comes now. */
      readonly why: 'clears-all-but-one' | 'clears-most' | 'one-unknown-left';
      readonly statement: Statement;
      readonly solution: Statement;
      readonly found: Found;
    }
  | {
      readonly kind: 'simultaneous';
      readonly unknowns: readonly Symbol[];
      /** Each sum written out, and gathered by its unknowns. */
      readonly equations: readonly {
        readonly statement: Statement;
        readonly gathered: Statement;
      }[];
      readonly elimination: readonly {
        readonly what: 'eliminate' | 'back-substitute';
        readonly symbol: Symbol;
        readonly pivot: number;
        readonly row: number;
        /** What equation `pivot` is multiplied by before it is added to or taken from equation `row`. */
        readonly times?: Expression;
        readonly isAdded?: boolean;
        readonly statement: Statement;
      }[];
      readonly found: readonly Found[];
    }
  | {
      readonly kind: 'axial-shared';
      readonly restraints: readonly Symbol[];
      readonly hasLoads: boolean;
      readonly statement: Statement;
      readonly found: readonly Found[];
    }
  | {
      readonly kind: 'reactions-found';
      readonly found: readonly Found[];
      readonly forHinges: readonly Found[];
    };

/** A check that is a theorem under its conditions; a false one stops the sheet. */
export interface CheckFact {
  readonly kind: 'check';
  readonly check:
    | 'moments-about'
    | 'forces-y'
    | 'forces-x'
    | 'diagram-closes'
    | 'cut-from-right'
    | 'hinge-moment'
    | 'symmetry'
    | 'opposite-distances'
    | 'nearer-takes-more'
    | 'between-bounds'
    | 'standard-case'
    | 'moment-bound';
  /** Names and words that the template puts into its sentence. */
  readonly facts: Readonly<Record<string, string>>;
  readonly statement: Statement;
  /** A formula's source. */
  readonly source?: string;
}

/** Facts of reasonableness. */
export type ReasonStep =
  CheckFact | { readonly kind: 'agreement'; readonly count: number };

/** One stretch between key stations, with its functions. */
export interface SegmentFact {
  readonly from: Place;
  readonly to: Place;
  /** V(x), M(x), and N(x) where there is any, a line each. */
  readonly functions: Statement;
}

/** Facts of the internal forces of one case. */
export type InternalStep =
  | {
      readonly kind: 'segments';
      readonly segments: readonly SegmentFact[];
      readonly form: 'forces' | 'running';
    }
  | {
      readonly kind: 'zero-shear';
      readonly places: readonly {
        readonly from: Place;
        readonly to: Place;
        readonly statement: Statement;
      }[];
    }
  | {
      readonly kind: 'areas';
      readonly rows: readonly {
        readonly place: Place;
        readonly shearLeft: Expression;
        readonly shearRight: Expression;
        readonly momentLeft: Expression;
        readonly momentRight: Expression;
        /** Area of the shear diagram up to the next row. */
        readonly area?: Expression;
      }[];
      readonly hasCouples: boolean;
    }
  | { readonly kind: 'extremes'; readonly statement: Statement };

/** Values of one entry (case or combination) in the combination tables. */
export interface EntryRow {
  readonly mark: string;
  readonly clauses: readonly string[];
  readonly reactions: readonly Expression[];
  readonly shear: Expression;
  readonly momentMax: Expression;
  readonly momentMin: Expression;
  readonly governs: readonly string[];
}

/** Facts of combinations. */
export type CombinationStep =
  | {
      readonly kind: 'entries';
      readonly for: 'cases' | 'strength' | 'service';
      readonly columns: readonly Symbol[];
      readonly units: { readonly force: string; readonly moment: string };
      readonly rows: readonly EntryRow[];
    }
  | {
      readonly kind: 'governing';
      readonly for: 'strength' | 'service' | 'cases';
      readonly what: 'moment-max' | 'moment-min' | 'shear';
      readonly entry: string;
      readonly clauses: readonly string[];
      readonly at: Place;
      readonly statement: Statement;
      /** Entries that come to the same; the first in the list is said to govern. */
      readonly equals: readonly string[];
      /** The next greatest, which proves that the others do not govern. */
      readonly next?: {
        readonly entry: string;
        readonly value: Expression;
        readonly share: string;
      };
    };

/** One line of the results box. */
export interface ResultLine {
  readonly what: 'moment-max' | 'moment-min' | 'shear' | 'reaction' | 'axial';
  readonly statement: Statement;
  readonly at: Place;
  readonly entry: string;
}

/** Facts of the results box. */
export type ResultStep = {
  readonly kind: 'results';
  /** Strength and service stand apart; none where nothing acts. */
  readonly groups: readonly {
    readonly for: 'cases' | 'strength' | 'service';
    readonly lines: readonly ResultLine[];
  }[];
  readonly handedOn: readonly {
    readonly point: string;
    readonly to: string;
    readonly anchor: string;
    readonly at: string;
  }[];
};

/** A caution that matters to this sheet. */
export type CautionStep = {
  readonly kind: 'caution';
  readonly caution:
    | 'uplift'
    | 'nearly-unstable'
    | 'left-behind'
    | 'handed-on-in-part'
    | 'pattern'
    | 'given'
    | 'axial-shared'
    | 'upward-load';
  readonly facts: Readonly<Record<string, string>>;
};

/** A drawing, and what its caption speaks of. */
export type FigureStep = {
  readonly kind: 'figure';
  readonly shows: 'as-loaded' | 'free-body' | 'pieces' | 'diagrams' | 'envelope';
  readonly case?: string;
  /** Of an envelope: the entries that it covers. */
  readonly for?: 'cases' | 'strength' | 'service';
  readonly figure: FigureSpec;
};

/** One step of a sheet: facts for one template, named `step-` and the kind. */
export type Step =
  | GivenStep
  | StaticsStep
  | EquationStep
  | ReasonStep
  | InternalStep
  | CombinationStep
  | ResultStep
  | CautionStep
  | FigureStep;
