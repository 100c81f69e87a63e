import type { Expression, Statement, Symbol } from '../../equation/index.ts';
import type { HandMethod } from '../redundants/choose-method.ts';
import type { Place } from './shared.ts';
import type { ArrangedExtreme } from './sheet-steps.ts';

/** What a column of a table of options, or a line of sums, is about: `M at B`, `V left of B`, `R_A`. */
export interface QuantityHead {
  readonly symbol: Symbol;
  /** Absent for a reaction, whose symbol names its place. */
  readonly place?: Place;
  /** Where the two sides of the place differ. */
  readonly side?: 'left' | 'right';
}

/** One of the things that may stand or not, with the number that it has on the sheet; a carried reaction has one an end. */
export interface ChoiceRow {
  readonly numbers: readonly number[];
  /** The loads of one span, those at one support, or a carried reaction. */
  readonly kind: 'span' | 'support' | 'carried';
  /** `A–B`, `B`, `B2.C`. */
  readonly text: string;
  readonly isOverhang: boolean;
  /** Symbols of the loads that it holds. */
  readonly loads: readonly Symbol[];
}

/** The values of one thing that may stand, down the columns of a table. */
export interface OptionRow {
  /** Absent for what always stands. */
  readonly number?: number;
  readonly text: string;
  /** Of a carried reaction: which end. */
  readonly option?: string;
  readonly cells: readonly Expression[];
}

/** Facts of loads that may stand in several ways. */
export type RangeStep =
  /** Before a case is worked: that it is worked as it is placed, and the rest follows. */
  | {
      readonly kind: 'stated';
      readonly case: string;
      readonly spans: boolean;
      readonly carried: boolean;
    }
  | {
      readonly kind: 'choices';
      readonly case: string;
      readonly rows: readonly ChoiceRow[];
      /** Whether loads of the case, settlements or temperature always stand. */
      readonly hasFixed: boolean;
      readonly hasSpans: boolean;
      readonly hasCarried: boolean;
      /** By what equations each is worked alone. */
      readonly method: HandMethod | 'statics';
      /** True where there are so many that only what governs is told. */
      readonly isShortened: boolean;
      /** True where the case has moving loads, which are worked by themselves. */
      readonly hasTrains: boolean;
    }
  | {
      readonly kind: 'options';
      readonly of: 'moments' | 'shears' | 'reactions';
      readonly columns: readonly QuantityHead[];
      readonly units: readonly string[];
      readonly rows: readonly OptionRow[];
      readonly greatest: readonly Expression[];
      readonly least: readonly Expression[];
    }
  | {
      readonly kind: 'range-sums';
      readonly of: 'moments' | 'shears' | 'reactions';
      /** Two lines a quantity, greatest and least; the numbers of what is loaded stand in the margin. */
      readonly statement: Statement;
    }
  | {
      readonly kind: 'arrangement';
      readonly case: string;
      readonly extremes: readonly {
        readonly what: ArrangedExtreme;
        readonly value: Expression;
        readonly at: Place;
        readonly arrangement: string;
      }[];
    };
