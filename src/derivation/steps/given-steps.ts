import type { Expression, Statement, Symbol } from '../../equation/index.ts';
import type { Place } from './shared.ts';

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

/** A temperature difference as the given list shows it. */
export interface TemperatureRow {
  readonly case: string;
  /** Top minus bottom, as given, before the factor. */
  readonly difference: Expression;
  readonly factor?: { readonly times: Expression; readonly because: string };
  readonly depth: Expression;
  readonly expansion: Expression;
  /** What the line leaves to the cross-section or the material. */
  readonly taken: { readonly depth: boolean; readonly expansion: boolean };
  readonly from: Place;
  readonly to: Place;
  readonly note?: string;
  readonly uses: readonly string[];
}

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
  /** Temperature differences, as given. */
  | { readonly kind: 'temperatures'; readonly rows: readonly TemperatureRow[] }
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
      /** Limits of deflection that the member states for itself, as given. */
      readonly deflectionLimits: readonly {
        readonly entry: string;
        readonly text: string;
      }[];
    };
