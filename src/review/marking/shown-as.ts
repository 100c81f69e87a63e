import type { Dimension, Display } from '../../units/index.ts';
import { words } from './phrases.ts';
import type { StepRequest } from './step-mark.ts';

/** What a value measures, by its dimension, for the unit that findings speak in. */
export function displayOf(of: {
  readonly dimension: Dimension;
  readonly shownAs?: Display;
}): Display {
  if (of.shownAs !== undefined) return of.shownAs;
  const { force, length } = of.dimension;
  if (force === 1 && length === 1) return 'moment';
  if (force === 1 && length === 0) return 'force';
  if (force === 1 && length === -1) return 'force-per-length';
  if (force === 0 && length === 1) return 'length';
  return 'pure';
}

/** A value in words, in the project's unit for what it measures. */
export function showAs(
  { context }: StepRequest,
  what: Display,
): (si: number) => string {
  return (si) => words(context, what, si);
}
