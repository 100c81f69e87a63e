import type { Span } from '../../../diagnostics/index.ts';
import type { GivenQuantity } from '../../../units/index.ts';
import type { LoadDirection, Stated } from '../../definitions.ts';
import type { Named } from '../../shape/map-of.ts';
import type { Placed } from '../../shape/shape.ts';
import type { Spacing } from './spacing.ts';

/** A value for one case (named beside it), or one a case. */
export type PerCase<T> =
  | { readonly kind: 'single'; readonly value: T; readonly span: Span }
  | {
      readonly kind: 'cases';
      readonly cases: readonly Named<T>[];
      readonly span: Span;
    };

/** What every load line may say. */
export interface Common {
  readonly note?: string;
  readonly uses?: readonly Placed<string>[];
  readonly times?: PerCase<number>;
  readonly because?: Placed<string>;
}

/** Where a load over a length lies, as written. */
export interface Stretch {
  readonly from?: Placed<string>;
  readonly to?: Placed<string>;
  readonly span?: Placed<string>;
}

/** Point loads at one place or several. */
export interface PointLine extends Common {
  readonly case?: Placed<string>;
  readonly point: PerCase<GivenQuantity>;
  readonly at: readonly Placed<string>[];
  readonly direction?: LoadDirection;
}
/** A force per length, the same all along. */
export interface UniformLine extends Common, Stretch {
  readonly case?: Placed<string>;
  readonly uniform: PerCase<GivenQuantity>;
  readonly direction?: LoadDirection;
  readonly per?: 'projection';
}
/** A force per length that runs straight from one size to another. */
export interface VaryingLine extends Common, Stretch {
  readonly case?: Placed<string>;
  readonly varying: PerCase<readonly GivenQuantity[]>;
  readonly direction?: LoadDirection;
  readonly per?: 'projection';
}
/** Couples at one place or several. */
export interface CoupleLine extends Common {
  readonly case?: Placed<string>;
  readonly couple: PerCase<GivenQuantity>;
  readonly at: readonly Placed<string>[];
  readonly turn: 'clockwise' | 'counterclockwise';
  readonly side?: Placed<'left' | 'right'>;
}
/** An area load times its tributary width. */
export interface AreaLine extends Common, Stretch {
  readonly area: Placed<string>;
  readonly width: readonly GivenQuantity[];
  readonly direction?: LoadDirection;
}
/** A top warmer than the bottom by `difference`, or colder where that is negative. */
export interface TemperatureLine extends Common, Stretch {
  readonly case?: Placed<string>;
  readonly temperature: Placed<{
    readonly difference: GivenQuantity;
    /** Depth over which the difference stands; absent where the cross-section says it. */
    readonly depth?: GivenQuantity;
    /** Absent where the material says it. */
    readonly expansion?: GivenQuantity;
    /** Never there: a beam does not feel it, and the reader says so. */
    readonly rise?: never;
  }>;
}
/** Axles that roll along the beam; see `BeamTrain`. */
export interface AxlesLine {
  readonly case?: Placed<string>;
  readonly axles: Placed<readonly GivenQuantity[]>;
  readonly spacing?: Placed<readonly Spacing[]>;
  readonly travel: Stated<'right' | 'left' | 'both'>;
  readonly lane?: GivenQuantity;
  readonly times?: Placed<{ readonly axles?: number; readonly lane?: number }>;
  readonly because?: Placed<string>;
  readonly relieving: Stated<'kept' | 'left out'>;
  readonly note?: string;
  readonly uses?: readonly Placed<string>[];
}
/** A reaction that another member delivers. */
export interface ReactionLine {
  readonly reaction: Placed<string>;
  readonly at: readonly Placed<string>[];
  readonly times?: number;
  readonly carry?: 'vertical' | 'all';
  readonly side?: Placed<'left' | 'right'>;
  readonly because?: string;
  readonly note?: string;
  readonly uses?: readonly Placed<string>[];
}

/** One entry of `loads` as written, by its kind; `lineSpan` is its place. */
export type LoadLine = { readonly lineSpan: Span } & (
  | ({ readonly kind: 'point' } & PointLine)
  | ({ readonly kind: 'uniform' } & UniformLine)
  | ({ readonly kind: 'varying' } & VaryingLine)
  | ({ readonly kind: 'couple' } & CoupleLine)
  | ({ readonly kind: 'area' } & AreaLine)
  | ({ readonly kind: 'temperature' } & TemperatureLine)
  | ({ readonly kind: 'axles' } & AxlesLine)
  | ({ readonly kind: 'reaction' } & ReactionLine)
);
