import type { Expression, Statement } from '../../equation/index.ts';
import type { HandMethod } from '../redundants/choose-method.ts';

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
  | CheckFact
  /** An indeterminate member solved a second way, and the hand method compared with what is reported. */
  | {
      readonly kind: 'ways-agree';
      readonly method: HandMethod;
      /** Shares of scale, `3e-16`. */
      readonly difference: Expression;
      readonly allowed: Expression;
      readonly condition: Expression;
      readonly byHand: Expression;
      readonly byHandAllowed: Expression;
    }
  | { readonly kind: 'agreement'; readonly count: number };
