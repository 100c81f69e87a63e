import {
  combine,
  greatestOf,
  leastOf,
  sizeOf,
  valueAt,
  type OptionResults,
  type BeamResult,
  type Piecewise,
} from '../../statics/index.ts';
import type { LimitSpan } from './limit-spans.ts';

/** The greatest and the least of a deflection along a span; one and the same where there is a single state. */
export interface DeflectionBounds {
  readonly max: Piecewise;
  readonly min: Piecewise;
}

/**
 * Deflection along a span from the chord between its displaced supports; along an overhang from its displaced
 * support, whose rotation counts. Linear in the state, so that states and options can be added up.
 */
export function relativeDeflection(deflection: Piecewise, span: LimitSpan): Piecewise {
  const whole = clipped(deflection, span);
  const size = sizeOf(deflection);
  const settled = (value: number): number =>
    Math.abs(value) <= 1e-12 * size ? 0 : value;
  const [start, end] = span.supports.map((x) =>
    settled(valueAt(deflection, x, 'left')),
  );
  const from = start ?? 0;
  const rise = end === undefined ? 0 : (end - from) / (span.to - span.from);
  const chord: Piecewise = {
    pieces: [{ start: span.from, end: span.to, coefficients: [from, rise] }],
  };
  return combine([
    { factor: 1, f: whole },
    { factor: -1, f: chord },
  ]);
}

/** The part of a function over a span. */
function clipped({ pieces }: Piecewise, { from, to }: LimitSpan): Piecewise {
  return {
    pieces: pieces.flatMap(({ start, end, coefficients }) => {
      const [left, right] = [Math.max(start, from), Math.min(end, to)];
      if (right <= left) return [];
      return [
        { start: left, end: right, coefficients: shifted(coefficients, left - start) },
      ];
    }),
  };
}

/** The same polynomial in powers of the distance from a place farther on (Horner, repeated). */
function shifted(coefficients: readonly number[], by: number): readonly number[] {
  if (by === 0) return coefficients;
  const work = [...coefficients];
  for (let low = 0; low < work.length - 1; low += 1) {
    for (let i = work.length - 2; i >= low; i -= 1)
      work[i] = (work[i] ?? 0) + by * (work[i + 1] ?? 0);
  }
  return work;
}

/** The deflection of a result along a span; undefined where E or I is not known. */
export function boundsOfState(
  { displacement }: Pick<BeamResult, 'displacement'>,
  span: LimitSpan,
): DeflectionBounds | undefined {
  if (displacement === undefined) return undefined;
  const f = relativeDeflection(displacement.deflection, span);
  return { max: f, min: f };
}

/**
 * The same of a case whose loads may stand in several ways: what always stands, and of every choice the greatest and
 * the least of its options. Choices are independent and the chord is linear, so the bounds add up.
 */
export function boundsOfOptions(
  { fixed, choices }: OptionResults,
  span: LimitSpan,
): DeflectionBounds | undefined {
  const always = boundsOfState(fixed, span);
  const each = choices.map(({ options }) =>
    options.flatMap(({ result }) => boundsOfState(result, span)?.max ?? []),
  );
  if (always === undefined || each.some((curves) => curves.length === 0))
    return undefined;
  return sumOfBounds([
    { factor: 1, bounds: always },
    ...each.map((curves) => ({
      factor: 1,
      bounds: { max: greatestOf(curves), min: leastOf(curves) },
    })),
  ]);
}

/**
 * The same of bounds along the whole member. Their parts at the supports belong to other arrangements than those
 * along the span, so they tell it only where every support it is measured from has one movement; else undefined.
 */
export function boundsOfRange(
  { max, min }: DeflectionBounds,
  span: LimitSpan,
): DeflectionBounds | undefined {
  const size = Math.max(sizeOf(max), sizeOf(min));
  const stands = span.supports.every(
    (x) => Math.abs(valueAt(max, x, 'left') - valueAt(min, x, 'left')) <= 1e-9 * size,
  );
  return stands
    ? { max: relativeDeflection(max, span), min: relativeDeflection(min, span) }
    : undefined;
}

/** Factored bounds added up; a negative factor turns greatest and least round. */
export function sumOfBounds(
  terms: readonly { readonly factor: number; readonly bounds: DeflectionBounds }[],
): DeflectionBounds {
  const of = (sense: 'max' | 'min'): Piecewise =>
    combine(
      terms.map(({ factor, bounds }) => ({
        factor,
        f: bounds[factor < 0 ? (sense === 'max' ? 'min' : 'max') : sense],
      })),
    );
  return { max: of('max'), min: of('min') };
}
