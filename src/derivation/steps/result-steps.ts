import type { Expression, Statement, Symbol } from '../../equation/index.ts';
import type { Place } from './shared.ts';

/** Values of one entry (case or combination) in the combination tables. */
export interface EntryRow {
  readonly mark: string;
  /** Marks of further entries that come to the same on this member: they differ in cases that it does not feel. */
  readonly alike: readonly string[];
  readonly clauses: readonly string[];
  /** Of an entry without a single state the greatest of each. */
  readonly reactions: readonly Expression[];
  /** Of an entry without a single state the least of each; absent for one that has it. */
  readonly least?: readonly Expression[];
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
      /** True where an entry has no single state: its greatest and least do not act together. */
      readonly hasRanges: boolean;
    }
  | {
      readonly kind: 'governing';
      readonly for: 'strength' | 'service' | 'cases';
      readonly what: 'moment-max' | 'moment-min' | 'shear';
      readonly entry: string;
      readonly clauses: readonly string[];
      readonly at: Place;
      /** How the loads stand that may stand in several ways; absent where none do. */
      readonly arrangement?: string;
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
  /** How the loads stand that may stand in several ways; absent where none do. */
  readonly arrangement?: string;
}

/** Facts of the results box. */
export interface ResultStep {
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
}
