import type { Expression, Statement, Symbol } from '../../equation/index.ts';
import type { EliminationStep } from '../linear-system/eliminate.ts';
import type { Found, Place, Sense, UnknownRow } from './shared.ts';

/** Facts of the equations of one case. */
export type EquationStep =
  | {
      readonly kind: 'no-loads';
      readonly cases: readonly string[];
      /** True where a temperature difference bends the member, which strains nothing. */
      readonly isWarm: boolean;
      /** Supports that settle in the only case: they move the member and strain nothing. */
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
      readonly elimination: readonly EliminationStep[];
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
