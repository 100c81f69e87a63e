import { dropNoise } from '../tolerances.ts';

/** A value that hangs on unknowns: constant + Σ factor · unknown. */
export interface LinearForm {
  readonly constant: number;
  /** One factor an unknown. */
  readonly factors: readonly number[];
}

/** A form that hangs on no unknown. */
export function constantForm(constant: number, count: number): LinearForm {
  return { constant, factors: new Array<number>(count).fill(0) };
}

/** One unknown itself. */
export function unknownForm(index: number, count: number): LinearForm {
  return {
    constant: 0,
    factors: Array.from({ length: count }, (_, i) => (i === index ? 1 : 0)),
  };
}

/** Σ times · form, exactly 0 where only rounding is left; forms must be over the same unknowns, and there must be one at least. */
export function sumOfForms(
  terms: readonly (readonly [times: number, form: LinearForm])[],
): LinearForm {
  const count = terms[0]?.[1].factors.length ?? 0;
  return {
    constant: settledSum(terms.map(([times, { constant }]) => times * constant)),
    factors: Array.from({ length: count }, (_, i) =>
      settledSum(terms.map(([times, { factors }]) => times * (factors[i] ?? 0))),
    ),
  };
}

/** A sum, exactly 0 where only the rounding of its terms is left. */
export function settledSum(terms: readonly number[]): number {
  const size = terms.reduce((sum, term) => sum + Math.abs(term), 0);
  return (
    dropNoise(
      terms.reduce((sum, term) => sum + term, 0),
      size,
    ) + 0
  );
}

/** The value of a form for values of its unknowns. */
export function valueOfForm(
  { constant, factors }: LinearForm,
  values: readonly number[],
): number {
  return factors.reduce((sum, factor, i) => sum + factor * (values[i] ?? 0), constant);
}
