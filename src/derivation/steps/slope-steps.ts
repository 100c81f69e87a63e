import type { Expression, Statement } from '../../equation/index.ts';
import type { StretchFact } from './redundant-steps.ts';

/** What is found of one span. */
export interface SpanFact {
  /** `A to B`. */
  readonly span: string;
  readonly statements: readonly Statement[];
}

/** Facts of slope-deflection. */
export type SlopeStep =
  | {
      readonly kind: 'joint-unknowns';
      readonly unknowns: readonly {
        readonly what: 'rotation' | 'deflection' | 'slide';
        readonly point: string;
        readonly of: Expression;
      }[];
      /** Spans between joints, `A to B`. */
      readonly spans: readonly string[];
      /** Hinges and simple ends, whose moment is known. */
      readonly knownEnds: readonly string[];
    }
  /** Loads exactly at joints and on overhangs, as a force and a couple on the joint. */
  | {
      readonly kind: 'joint-loads';
      readonly joints: readonly {
        readonly point: string;
        readonly hasOverhang: boolean;
        readonly statements: readonly Statement[];
      }[];
    }
  /** Forces at the ends of each span as a beam of its own on simple supports. */
  | { readonly kind: 'simple-spans'; readonly spans: readonly SpanFact[] }
  | {
      readonly kind: 'held-spans';
      readonly spans: readonly (SpanFact & {
        /** Which end is held while the other turns freely; both held where absent. */
        readonly held?: string;
        readonly isByTurns: boolean;
        readonly stretches: readonly StretchFact[];
      })[];
    }
  | { readonly kind: 'end-moments'; readonly spans: readonly SpanFact[] }
  | { readonly kind: 'end-forces'; readonly spans: readonly SpanFact[] }
  | {
      readonly kind: 'joint-equilibrium';
      readonly equations: readonly {
        readonly what: 'rotation' | 'deflection' | 'slide';
        readonly point: string;
        readonly statement: Statement;
      }[];
    }
  | { readonly kind: 'ends-found'; readonly spans: readonly SpanFact[] }
  | { readonly kind: 'joint-reactions'; readonly statements: readonly Statement[] };
