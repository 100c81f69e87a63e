import type { Symbol } from '../../equation/index.ts';
import type {
  ContinuousBeam,
  ContinuousSpan,
  SpanState,
  SpanTerms,
} from '../../statics/index.ts';
import { endsOf, type SlopeSetting } from './slope-setting.ts';
import { spanSymbols, type SpanSymbols } from './span-symbols.ts';

/** An end of a span: 0 the left, 1 the right. */
export type End = 0 | 1;

/** A case of a continuous beam: the words and symbols of its spans, and what they put into the equations of their supports. */
export interface ContinuousSetting extends SlopeSetting {
  readonly beam: ContinuousBeam;
  readonly terms: readonly SpanTerms[];
}

/** Symbols of a span in three-moment equations. */
export interface ContinuousSymbols extends SpanSymbols {
  /** The length that counts: the span's own, or times EI₀ over its EI where this is not 1. */
  readonly counted: Symbol;
  /** Factors of a stepped span: of the moment at an end itself, of the moment at the other. */
  readonly direct: (end: End) => Symbol;
  readonly cross: Symbol;
  /** The load term at an end, the share of one load by its number. */
  readonly term: (end: End, load?: string) => Symbol;
  /** The turn that free curvature gives an end. */
  readonly warmTurn: (end: End) => Symbol;
}

/** One span with everything that is known of it. */
export interface OneSpan {
  readonly state: SpanState;
  readonly span: ContinuousSpan;
  readonly terms: SpanTerms;
  readonly symbols: ContinuousSymbols;
  /** Names of its supports. */
  readonly points: readonly [string, string];
}

/** The spans from left to right. */
export function spansOf(setting: ContinuousSetting): readonly OneSpan[] {
  return setting.beam.spans.flatMap((span, index): readonly OneSpan[] => {
    const state = setting.work.spans[index];
    const terms = setting.terms[index];
    if (state === undefined || terms === undefined) return [];
    const [a, b] = endsOf(setting, state);
    const points = [a.point, b.point] as const;
    return [
      {
        state,
        span,
        terms,
        points,
        symbols: symbolsOf(setting, { state, terms, points }),
      },
    ];
  });
}

function symbolsOf(
  setting: ContinuousSetting,
  { state, terms, points }: Pick<OneSpan, 'state' | 'terms' | 'points'>,
): ContinuousSymbols {
  const own = spanSymbols(setting, state);
  const pair = (end: End): string => own.moment(end).subscript ?? '';
  const whole = `the span ${points[0]} to ${points[1]}`;
  return {
    ...own,
    counted:
      terms.ratio === 1
        ? own.length
        : {
            letter: 'λ',
            subscript: pair(0),
            meaning: `length of ${whole} times E I₀ over its E I`,
          },
    direct: (end) => ({
      letter: 'h',
      subscript: pair(end),
      meaning: `factor of the moment at ${points[end]}, from ${whole}`,
    }),
    cross: {
      letter: 'g',
      subscript: pair(0),
      meaning: `factor of the moment at the other end of ${whole}`,
    },
    term: (end, load) => ({
      letter: 'T',
      subscript: load === undefined ? pair(end) : `${pair(end)},${load}`,
      meaning: `load term of ${whole} at ${points[end]}${load === undefined ? '' : `, by load ${load}`}`,
    }),
    warmTurn: (end) => ({
      letter: 'ψ',
      subscript: pair(end),
      meaning: `turn that free curvature gives ${points[end]} of ${whole}`,
    }),
  };
}

/** The bending moment at a support: where the support gives a moment of its own, just inside it. */
export function supportMoment(
  { beam, work }: ContinuousSetting,
  support: number,
): Symbol {
  const point = beam.supports[support]?.point ?? '';
  const isFixed = (work.joints[support]?.restraints ?? []).some(
    ({ kind }) => kind === 'moment',
  );
  return isFixed
    ? {
        letter: 'M',
        subscript: `${point},in`,
        meaning: `bending moment just inside the built-in end ${point}`,
      }
    : { letter: 'M', subscript: point, meaning: `bending moment at ${point}` };
}

/** How far a support sinks. */
export function sinkSymbol(point: string): Symbol {
  return {
    letter: 'δ',
    subscript: point,
    meaning: `settlement of the support at ${point}`,
  };
}

/**
 * A couple at an inner support, the right one of a span, counterclockwise: the moment leaps there. It counts
 * on the span's own end, and the moment of the support is the one just right of it.
 */
export function coupleAtRight(
  { beam, work }: ContinuousSetting,
  span: number,
): { readonly couple: number; readonly point: string } {
  const point = beam.supports[span + 1]?.point ?? '';
  const at = work.joints[span + 1]?.couple;
  if (at === undefined || span === beam.spans.length - 1) return { couple: 0, point };
  return { couple: at.left + at.right, point };
}
