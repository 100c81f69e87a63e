import {
  add,
  exact,
  multiply,
  negative,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { BandRow } from '../linear/banded-lu.ts';
import type { SimpleSpan } from './simple-span.ts';

/** What a state knows before anything is solved. */
export interface KnownOfState {
  /** The loads' part, bar by bar. */
  readonly spans: readonly SimpleSpan[];
  /** The deflection of each joint where a rigid restraint prescribes it. */
  readonly lifts: readonly DoubleDouble[];
}

/** A quantity that is linear in the unknowns, in prescribed deflections and in what loads do to a simple span. */
export interface LinearForm {
  readonly unknowns: readonly Term[];
  /** Prescribed deflections, by joint. */
  readonly lifts: readonly Term[];
  /** Figures of simple spans, by bar. */
  readonly spans: readonly (Term & { readonly name: keyof SimpleSpan })[];
}

/** A factor and what it multiplies. */
interface Term {
  readonly index: number;
  readonly factor: DoubleDouble;
}

/** Σ factor · form. */
export function sumOfForms(
  ...parts: readonly (readonly [factor: DoubleDouble, form: LinearForm])[]
): LinearForm {
  const sum = {
    unknowns: [] as Term[],
    lifts: [] as Term[],
    spans: [] as LinearForm['spans'][number][],
  };
  for (const [factor, form] of parts) {
    const scale = (of: DoubleDouble): DoubleDouble =>
      factor === plus ? of : multiply(factor, of);
    for (const { index, factor: of } of form.unknowns)
      sum.unknowns.push({ index, factor: scale(of) });
    for (const { index, factor: of } of form.lifts)
      sum.lifts.push({ index, factor: scale(of) });
    for (const { index, factor: of, name } of form.spans)
      sum.spans.push({ index, factor: scale(of), name });
  }
  return sum;
}

/** The part of a form that a state knows beforehand. */
export function knownPart(form: LinearForm, known: KnownOfState): DoubleDouble {
  let sum = zero;
  for (const { index, factor } of form.lifts)
    sum = add(sum, multiply(factor, known.lifts[index] ?? zero));
  for (const { index, factor, name } of form.spans)
    sum = add(sum, multiply(factor, known.spans[index]?.[name] ?? zero));
  return sum;
}

/** The value of a form once the unknowns are found. */
export function valueOfForm(
  form: LinearForm,
  known: KnownOfState,
  x: readonly DoubleDouble[],
): DoubleDouble {
  return form.unknowns.reduce(
    (sum, { index, factor }) => add(sum, multiply(factor, x[index] ?? zero)),
    knownPart(form, known),
  );
}

/** The row of the equation `form = 0`, each unknown measured in its unit. */
export function rowOfForm(form: LinearForm, units: readonly number[]): BandRow {
  const columns = form.unknowns.map(({ index }) => index);
  const first = Math.min(...columns);
  const entries = new Array<DoubleDouble>(Math.max(...columns) - first + 1).fill(zero);
  for (const { index, factor } of form.unknowns) {
    const here = entries[index - first] ?? zero;
    entries[index - first] = add(here, times(units[index] ?? 1, factor));
  }
  return { first, entries };
}

/** 1 and −1 as factors. */
export const plus: DoubleDouble = exact(1);
export const minus: DoubleDouble = negative(plus);
