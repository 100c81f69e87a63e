import type { Piecewise } from '../piecewise.ts';
import { mergeBreakpoints, polynomialFrom } from '../piecewise/combine.ts';
import type { ContinuousSpan, SpanStretch } from './continuous-spans.ts';
import { simpleMoment } from './simple-moment.ts';
import { loadTerm, mirrored } from './span-loads.ts';
import { integralOf, productOf } from './stretches.ts';

/** What one end of a span puts into the equation of its support. */
export interface EndTerms {
  /** Factor of the moment at this end, m: 2 L EI₀/EI where the stiffness is one. */
  readonly direct: number;
  /** 6Aā/L times EI₀/EI: the load term, N·m². */
  readonly load: number;
  /** EI₀ apart, the turn that free curvature gives this end of the span on simple supports; both ends bend the same way positive. */
  readonly turn: number;
  /** What the sinking of supports turns the chord by, positive where this end sinks more. */
  readonly chord: number;
  /** Right side: −load − 6 EI₀ turn + 6 EI₀ chord. */
  readonly known: number;
}

/** A share of a load term from a stretch of a stepped span. */
export interface StretchShare extends SpanStretch {
  /** The moment on simple supports in powers of the distance from the stretch's start, N·m. */
  readonly moment: readonly number[];
  /** Area of the simple span's moment diagram over the stretch, N·m². */
  readonly area: number;
  /** The area times the distance of its centroid from the left support and from the right one, N·m³. */
  readonly firstMoment: { readonly left: number; readonly right: number };
}

/** What a span puts into the equations of its two supports. */
export interface SpanTerms {
  /** Factor of the moment at the far end, m: L EI₀/EI where the stiffness is one. */
  readonly cross: number;
  readonly left: EndTerms;
  readonly right: EndTerms;
  /** EI₀/EI of a span of one stiffness. */
  readonly ratio?: number;
  /** Of a stepped span: its stretches, cut where the moment changes its law too. */
  readonly shares: readonly StretchShare[];
}

/** Works the terms of a span, in closed form where its stiffness is one, else by integrals over its stretches. */
export function spanTerms(span: ContinuousSpan, EI: number): SpanTerms {
  const { length, loads, stretches, left, right, curvatures } = span;
  const [only] = stretches;
  const ratio = stretches.length === 1 ? only?.ratio : undefined;
  const shares = ratio === undefined ? sharesOf(span) : [];
  const settle = (left.sinks - right.sinks) / length;
  const opening = curvatures.reduce(
    (sum, { from, to, curvature }) => {
      const area = curvature * (to - from);
      const arm = (from + to) / 2;
      return {
        left: sum.left + (area * (length - arm)) / length,
        right: sum.right + (area * arm) / length,
      };
    },
    { left: 0, right: 0 },
  );
  const end = (side: 'left' | 'right'): EndTerms => {
    const load =
      ratio === undefined
        ? loadTermOfShares(shares, length, side)
        : ratio *
          loads.reduce(
            (sum, one) =>
              sum + loadTerm(side === 'right' ? one : mirrored(one, length), length),
            0,
          );
    const chord = side === 'left' ? settle : 0 - settle;
    const turn = opening[side];
    return {
      direct: directFactor(stretches, length, side),
      load,
      turn,
      chord,
      known: 6 * EI * (chord - turn) - load,
    };
  };
  return {
    cross: crossFactor(stretches, length),
    left: end('left'),
    right: end('right'),
    ...(ratio === undefined ? {} : { ratio }),
    shares,
  };
}

/** 6 ∫ (s/L)² EI₀/EI ds, s from the other end. */
function directFactor(
  stretches: readonly SpanStretch[],
  length: number,
  side: 'left' | 'right',
): number {
  const [only] = stretches;
  if (stretches.length === 1 && only !== undefined) return 2 * only.ratio * length;
  return stretches.reduce((sum, { from, to, ratio }) => {
    const [c, d] = side === 'right' ? [from, to] : [length - to, length - from];
    return sum + (2 * ratio * (d ** 3 - c ** 3)) / length ** 2;
  }, 0);
}

/** 6 ∫ (s/L) (1 − s/L) EI₀/EI ds. */
function crossFactor(stretches: readonly SpanStretch[], length: number): number {
  const [only] = stretches;
  if (stretches.length === 1 && only !== undefined) return only.ratio * length;
  return stretches.reduce(
    (sum, { from: c, to: d, ratio }) =>
      sum +
      ratio *
        ((3 * (d ** 2 - c ** 2)) / length - (2 * (d ** 3 - c ** 3)) / length ** 2),
    0,
  );
}

function loadTermOfShares(
  shares: readonly StretchShare[],
  length: number,
  side: 'left' | 'right',
): number {
  // The term at an end takes the arm from the other.
  const arm = side === 'right' ? 'left' : 'right';
  return shares.reduce(
    (sum, { ratio, firstMoment }) => sum + (6 * ratio * firstMoment[arm]) / length,
    0,
  );
}

function sharesOf({
  loads,
  length,
  stretches,
}: ContinuousSpan): readonly StretchShare[] {
  const moment = simpleMoment(loads, length);
  const steps: Piecewise = {
    pieces: stretches.map(({ from, to }) => ({
      start: from,
      end: to,
      coefficients: [0],
    })),
  };
  const stations = mergeBreakpoints([moment, steps]);
  return stations.slice(1).map((to, index): StretchShare => {
    const from = stations[index] ?? to;
    const middle = (from + to) / 2;
    const ratio = stretches.find((stretch) => middle < stretch.to)?.ratio ?? 1;
    const local = polynomialFrom(moment, from, to);
    const base = to - from;
    return {
      from,
      to,
      ratio,
      moment: local,
      area: integralOf(local, base),
      firstMoment: {
        left: integralOf(productOf(local, [from, 1]), base),
        right: integralOf(productOf(local, [length - from, -1]), base),
      },
    };
  });
}
