import type { Expression, Statement, Symbol } from '../../equation/index.ts';
import type { Place } from './shared.ts';

/** Facts of the displacements of one case. */
export type DisplacementStep =
  /** E I, and what is done where it steps or where warmth bends the member. */
  | {
      readonly kind: 'curve-rigidity';
      readonly stretches: readonly {
        readonly from: Place;
        readonly to: Place;
        readonly statement: Statement;
      }[];
      /** E I of the start over E I of each other stretch; none where E I is one all along. */
      readonly ratios: readonly Statement[];
      readonly curvatures: readonly {
        readonly from: Place;
        readonly to: Place;
        readonly statement: Statement;
      }[];
    }
  /** E I v″ in singularity functions, and integrated twice. */
  | {
      readonly kind: 'integration';
      readonly from: Place;
      readonly to: Place;
      /** True where only part of the member is worked; moment and shear stand for what is left of it. */
      readonly isPart: boolean;
      readonly isStepped: boolean;
      readonly hasHinges: boolean;
      readonly rates: readonly Statement[];
      readonly symbolic: Statement;
      readonly numeric: Statement;
      /** Where the slope's constant counts from, when that is not where the stations do. */
      readonly origin?: Place;
    }
  /** What a support makes of the constants. */
  | {
      readonly kind: 'condition';
      readonly what: 'deflection' | 'slope';
      readonly point: string;
      readonly why: 'held' | 'settles' | 'spring' | 'inclined';
      /** The support's movement, where it moves. */
      readonly movement?: Statement;
      /** What the terms give at its station; absent where none has begun. */
      readonly terms?: Statement;
      /** The equation in the constants, and the one found from it where one is left. */
      readonly equation: Statement;
      readonly found?: Statement;
    }
  /** Conditions that the redundants have met already. */
  | {
      readonly kind: 'other-conditions';
      readonly conditions: readonly {
        readonly what: 'deflection' | 'slope';
        readonly point: string;
        readonly statement: Statement;
      }[];
    }
  /** How much the slope changes at hinges. */
  | {
      readonly kind: 'hinge-slopes';
      readonly hinges: readonly {
        readonly point: string;
        readonly statement: Statement;
      }[];
    }
  | {
      readonly kind: 'greatest-deflection';
      readonly way: 'down' | 'up';
      readonly place: 'zero-slope' | 'level' | 'end' | 'hinge';
      readonly at: Place;
      /** Of zero slope: the slopes on both sides of it, which differ in sign. */
      readonly between?: {
        readonly from: Place;
        readonly to: Place;
        readonly statement: Statement;
      };
      /** The station found, put back into the slope. */
      readonly root?: Statement;
      readonly value: Statement;
    }
  | {
      readonly kind: 'virtual-work';
      readonly at: Place;
      /** Redundant supports that are let go for the unit load. */
      readonly released: readonly Symbol[];
      readonly reactions: readonly Statement[];
      /** Sums that the unit load's reactions close. */
      readonly closes: readonly Statement[];
      readonly moment: Statement;
      readonly rules: readonly ('simpson' | 'boole')[];
      readonly stretches: readonly {
        readonly from: Place;
        readonly to: Place;
        readonly statement: Statement;
      }[];
      readonly curvatures: readonly Statement[];
      readonly supports: readonly {
        readonly point: string;
        readonly statement: Statement;
      }[];
      readonly value: Statement;
      readonly integrated: Expression;
      /** How far the two are apart as a share of the sum of the sizes of all terms, `2e-16`. */
      readonly difference: Expression;
    }
  /** The member stays as it is: nothing bends or moves it. */
  | { readonly kind: 'no-displacement'; readonly case: string };
