import type { Expression, Statement } from '../../equation/index.ts';
import type { Place } from './shared.ts';

/** A limit on one span in the table of limits. */
export interface LimitRow {
  readonly entry: string;
  readonly span: string;
  readonly isOverhang: boolean;
  /** In the unit of deflections, positive up. */
  readonly demand: Expression;
  readonly at: Place;
  /** As the file states it, `L/360`. */
  readonly text: string;
  readonly limit: Expression;
  /** Never `1.00` where it fails. */
  readonly ratio: string;
  readonly passes: boolean;
}

/** Facts of the limits of deflection. */
export type LimitStep =
  /** How deflections and lengths are measured. */
  | {
      readonly kind: 'limit-basis';
      readonly from: 'member' | 'project';
      readonly hasSpans: boolean;
      readonly hasOverhangs: boolean;
      /** Whether overhangs count with twice their length. */
      readonly isDoubled: boolean;
      readonly hasHinges: boolean;
    }
  /** The span on which a limit comes out worst, worked. */
  | {
      readonly kind: 'limit';
      readonly entry: string;
      readonly text: string;
      readonly span: string;
      readonly isOverhang: boolean;
      readonly at: Place;
      /** Why the length counts twice, where it does. */
      readonly clause?: string;
      /** True where the cases have no single state: each gives the most that its loads can. */
      readonly isBound: boolean;
      /** The chord or the support that the deflection is measured from, where it moves. */
      readonly chord?: Statement;
      readonly demand: Statement;
      readonly capacity: Statement;
      readonly ratio: Statement;
      readonly ratioText: string;
      readonly passes: boolean;
    }
  | {
      readonly kind: 'limit-table';
      readonly unit: string;
      readonly rows: readonly LimitRow[];
      readonly failing: number;
    }
  | {
      readonly kind: 'limits-unchecked';
      readonly why: 'no-stiffness' | 'strength' | 'moving-supports';
      readonly limits: readonly {
        readonly entry: string;
        readonly text: string;
        readonly span?: string;
      }[];
    };
