import type { ContinuousSpan } from './continuous-spans.ts';
import { fixedEndMoment, mirrored } from './span-loads.ts';
import type { SpanTerms } from './span-terms.ts';

/** A span between two fixed ends; moments on its ends, counterclockwise positive. */
export interface FixedSpan {
  /** Moment for a unit turn of the end itself, by EI₀, 1/m: 4/L of a span of stiffness EI₀. */
  readonly stiffness: { readonly left: number; readonly right: number };
  /** The share of a moment at this end that comes to the other: 1/2 of a span of one stiffness. */
  readonly carryOver: { readonly left: number; readonly right: number };
  /** Under the loads, N·m. */
  readonly loads: { readonly left: number; readonly right: number };
  /** Under supports that sink and free curvature, N·m. */
  readonly movements: { readonly left: number; readonly right: number };
}

/**
 * Stiffness, carry-over and fixed-end moments of a span: those of tables for one stiffness throughout,
 * else from the flexibility of the simple span, `[direct −cross; −cross direct] / 6 EI₀`.
 */
export function fixedSpan(
  span: ContinuousSpan,
  terms: SpanTerms,
  EI: number,
): FixedSpan {
  const { cross, left, right } = terms;
  const determinant = left.direct * right.direct - cross * cross;
  // Bending moments with both ends held, from two three-moment equations; hogging turns a left end counterclockwise.
  const held = (
    knownLeft: number,
    knownRight: number,
  ): { readonly left: number; readonly right: number } => ({
    left: 0 - (right.direct * knownLeft - cross * knownRight) / determinant,
    right: (left.direct * knownRight - cross * knownLeft) / determinant,
  });
  const { loads, length } = span;
  return {
    stiffness: {
      left: (6 * right.direct) / determinant,
      right: (6 * left.direct) / determinant,
    },
    carryOver: { left: cross / right.direct, right: cross / left.direct },
    loads:
      terms.ratio === undefined
        ? held(0 - left.load, 0 - right.load)
        : {
            left: loads.reduce(
              (sum, load) => sum + fixedEndMoment(mirrored(load, length), length),
              0,
            ),
            right: loads.reduce((sum, load) => sum - fixedEndMoment(load, length), 0),
          },
    movements: held(
      6 * EI * (left.chord - left.turn),
      6 * EI * (right.chord - right.turn),
    ),
  };
}
