import type { Expression, Statement } from '../../equation/index.ts';
import type { QuantityHead } from './range-steps.ts';
import type { Place } from './shared.ts';

/** An axle of a train: its number from 1, front first, and how far it runs behind the one before. */
export interface AxleRow {
  readonly number: number;
  readonly given: Expression;
  /** With its factor; absent where there is none. */
  readonly counted?: Expression;
  readonly behind?: Expression;
  /** The greatest distance, where it varies. */
  readonly behindAtMost?: Expression;
}

/** A place where the train might have stood worst. */
export interface PlaceRow {
  /** How far the train has rolled right from its worst place; left where negative. */
  readonly shift: Expression;
  /** The axle on a break of the line and where that is; absent at a turning point between. */
  readonly axle?: number;
  readonly at?: Place;
  readonly value: Expression;
  readonly isWorst: boolean;
}

/** A stretch of the member that a lane load covers. */
export interface LaneStretch {
  readonly from: Place;
  readonly to: Place;
}

/** Facts of loads that roll. */
export type MovingStep =
  | {
      readonly kind: 'train';
      readonly case: string;
      /** Number among the trains of the case; absent where it is alone. */
      readonly number?: number;
      readonly axles: readonly AxleRow[];
      readonly travel: 'right' | 'left' | 'both';
      readonly relieving: 'kept' | 'left out';
      /** What the file does not say and stands by default. */
      readonly taken: { readonly travel: boolean; readonly relieving: boolean };
      readonly lane?: { readonly given: Expression; readonly counted?: Expression };
      readonly factors?: {
        readonly axles?: Expression;
        readonly lane?: Expression;
        readonly because: string;
        /** The products, line by line. */
        readonly products: Statement;
      };
      readonly note?: string;
    }
  | {
      readonly kind: 'influence';
      readonly case: string;
      readonly of: 'reaction' | 'shear' | 'moment';
      readonly head: QuantityHead;
      readonly sense: 'max' | 'min';
      readonly direction: 'right' | 'left';
      /** The axle on a break of the line and where that is; absent where the sum turns between breaks. */
      readonly axle?: number;
      readonly at?: Place;
      /** Whether the line is made of straight stretches. */
      readonly isStraight: boolean;
      /** Axles off the member, and those left out because they relieve. */
      readonly off: readonly number[];
      readonly leftOut: readonly number[];
      readonly ordinates?: Statement;
      readonly lane: readonly LaneStretch[];
      readonly sum: Statement;
      readonly places: readonly PlaceRow[];
    }
  | {
      readonly kind: 'moving-extremes';
      readonly case: string;
      readonly rows: readonly {
        readonly what: 'moment-max' | 'moment-min' | 'shear-max' | 'shear-min';
        readonly value: Expression;
        readonly at: Place;
        readonly direction: 'right' | 'left';
        readonly axles: readonly { readonly number: number; readonly at: Place }[];
      }[];
    };
