import type { Expression, Statement, Symbol } from '../../equation/index.ts';
import type { Place } from './shared.ts';

/** A stretch with functions of the distance from its start. */
export interface StretchFact {
  readonly from: Place;
  readonly to: Place;
  readonly functions: Statement;
}

/** A share of a movement: of bending, of warmth, of a support that gives way or moves. */
export interface ShareFact {
  readonly what: 'bending' | 'warmth' | 'spring' | 'foot';
  /** The support, for the last two. */
  readonly point?: string;
  readonly statement: Statement;
}

/** Facts of the stiffness that movements are worked with. */
export interface RigidityStep {
  readonly kind: 'rigidity';
  /** One a stretch of its own stiffness: E times I, and EI₀ over it where there are several. */
  readonly stretches: readonly {
    readonly from: Place;
    readonly to: Place;
    readonly statement: Statement;
  }[];
  /** How movements are written, times this. */
  readonly reference: Expression;
  readonly isStepped: boolean;
  /** Where the file gives none. */
  readonly isAssumed: boolean;
  /** False where the stiffness drops out, so that its size is not shown. */
  readonly isUsed: boolean;
  /** Free curvature of a temperature difference, −α ΔT / h. */
  readonly curvatures: readonly {
    readonly from: Place;
    readonly to: Place;
    readonly statement: Statement;
  }[];
}

/** Facts of the force method. */
export type ForceStep =
  | {
      readonly kind: 'released';
      readonly redundants: readonly {
        readonly symbol: Symbol;
        readonly point: string;
        readonly what: 'force' | 'moment';
        readonly isSpring: boolean;
      }[];
      readonly leaves: 'cantilever' | 'simple-beam' | 'other';
      readonly hasLoads: boolean;
    }
  /** The released member under a unit redundant. */
  | {
      readonly kind: 'unit-state';
      readonly number: number;
      readonly redundant: Symbol;
      readonly what: 'force' | 'moment';
      /** Reactions a unit of the redundant, one statement each. */
      readonly reactions: readonly Statement[];
    }
  | {
      readonly kind: 'movements';
      readonly of: 'loads' | 'units';
      readonly stretches: readonly StretchFact[];
      readonly movements: readonly {
        readonly release: Symbol;
        /** The unit redundant that moves the release; absent under the loads. */
        readonly under?: Symbol;
        readonly shares: readonly ShareFact[];
        readonly statement: Statement;
      }[];
    }
  | {
      readonly kind: 'compatibility';
      readonly equations: readonly {
        readonly release: Symbol;
        /** What the release allows: nothing, a foot that moves, a spring that gives. */
        readonly allows: 'nothing' | 'foot' | 'spring' | 'both';
        readonly statement: Statement;
      }[];
    }
  | { readonly kind: 'superposition'; readonly statements: readonly Statement[] };
