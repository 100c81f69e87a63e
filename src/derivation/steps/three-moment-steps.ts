import type { Expression, Figure, Statement, Symbol } from '../../equation/index.ts';
import type { StretchFact } from './redundant-steps.ts';
import type { SpanFact } from './slope-steps.ts';

/** Load terms of one span. */
export interface TermSpan extends SpanFact {
  /** True of a stepped span, whose terms are integrals over its stretches. */
  readonly isByTurns: boolean;
  readonly stretches: readonly StretchFact[];
}

/** A support with something worked for it. */
interface SupportFact {
  readonly point: string;
  readonly statement: Statement;
}

/** Facts of three-moment equations and of moment distribution. */
export type ContinuousStep =
  | {
      readonly kind: 'three-moments';
      /** Spans between supports, `A to B`. */
      readonly spans: readonly string[];
      readonly unknowns: readonly Symbol[];
      /** The equation of a support between two spans, in general. */
      readonly general: Statement;
      /** Built-in ends, each beside a span of no length. */
      readonly fixed: readonly string[];
      /** Supports whose moment follows from what is beyond them: an overhang, couples at the end; else a free end. */
      readonly known: readonly (SupportFact & { readonly isFree: boolean })[];
      /** Lengths of the spans, times EI₀ over EI where this is not 1. */
      readonly lengths: Statement;
      readonly hasRatios: boolean;
      readonly hasSteps: boolean;
      /** Settlements, in the unit of the equations. */
      readonly sinks?: Statement;
      /** Turns by free curvature. */
      readonly warmTurns: readonly Statement[];
    }
  | { readonly kind: 'load-terms'; readonly spans: readonly TermSpan[] }
  | {
      readonly kind: 'support-equations';
      readonly supports: readonly {
        readonly point: string;
        readonly isFixed: boolean;
        readonly statements: readonly Statement[];
      }[];
    }
  | { readonly kind: 'end-shears'; readonly spans: readonly SpanFact[] }
  | {
      readonly kind: 'distribution';
      readonly spans: readonly string[];
      readonly turning: readonly string[];
      readonly fixed: readonly string[];
      readonly released: readonly string[];
    }
  | {
      readonly kind: 'distribution-factors';
      readonly joints: readonly SupportFactors[];
    }
  /** Moments that the distribution starts from, where they are more than those of the loads. */
  | { readonly kind: 'starting-moments'; readonly spans: readonly SpanFact[] }
  | {
      readonly kind: 'distribution-table';
      readonly unit: string;
      readonly share: string;
      readonly limit: Figure;
      readonly tables: readonly DistributionTable[];
      /** How far the sums are from the exact moments at most, as a value and as a share of the greatest moment. */
      readonly difference: Figure;
      readonly differenceShare: string;
      /** True where the rounds end by themselves, so that nothing is left out. */
      readonly isExact: boolean;
      /** Joints with a couple of their own, which counts on the end left of them. */
      readonly couples: readonly string[];
    };

/** Shares of a joint. */
export interface SupportFactors {
  readonly point: string;
  readonly statements: readonly Statement[];
}

/** A stretch of the distribution table: so many ends of spans side by side. */
export interface DistributionTable {
  readonly ends: readonly string[];
  readonly factors: readonly (Expression | null)[];
  readonly rows: readonly {
    readonly what: 'start' | 'balance' | 'carry-over' | 'sum' | 'exact';
    /** A value an end; none where nothing is added. */
    readonly cells: readonly (Expression | null)[];
  }[];
}
