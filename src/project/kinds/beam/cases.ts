import { nearest, type Span } from '../../../diagnostics/index.ts';
import type { LoadCase } from '../../definitions.ts';
import type { Premises } from '../../premises.ts';
import type { Reading } from '../../reading.ts';
import type { Placed } from '../../shape/shape.ts';
import type { PerCase } from './load-line.ts';
import { listed } from '../../shape/listed.ts';

/** One value and the case that it belongs to; undefined where the value or the case is at fault, which has been reported. */
export interface OfCase<T> {
  readonly case: string;
  readonly value: T | undefined;
}

/** The case that a load names, or the only one there is; undefined with a report where neither, without one where the cases are not known. `at` is the place of the load. */
export function theCase(
  own: Placed<string> | undefined,
  at: Span,
  premises: Premises,
  reading: Reading,
): string | undefined {
  if (own !== undefined)
    return knownCase(own, premises, reading) ? own.value : undefined;
  const { cases } = premises;
  if (cases === undefined) return undefined;
  const [only, second] = cases;
  if (only !== undefined && second === undefined) return only.mark;
  reading.report({
    code: 'case-missing',
    message: 'the load case is missing, and there are several',
    span: at,
    hints: [`add \`case\`, one of ${marksOf(cases)}`],
  });
  return undefined;
}

/** True where the project has a case of this mark (or its cases are not known); reports otherwise. */
export function knownCase(
  mark: Placed<string>,
  premises: Premises,
  reading: Reading,
): boolean {
  const { cases } = premises;
  if (cases === undefined || cases.some((one) => one.mark === mark.value)) return true;
  const near = nearest(
    mark.value,
    cases.map((one) => one.mark),
  );
  reading.report({
    code: 'unknown-case',
    message: `loads.yaml lists no case \`${mark.value}\``,
    span: mark.span,
    hints: [
      near === undefined
        ? `write one of ${marksOf(cases)}, or add the case to loads.yaml`
        : `write \`${near}\`, or add the case to loads.yaml`,
    ],
  });
  return false;
}

/** Spreads a value over its cases, in file order. `own` is the line's `case`, which goes with a single value only. */
export function spreadCases<T>(
  sizes: PerCase<T>,
  own: Placed<string> | undefined,
  premises: Premises,
  reading: Reading,
): readonly OfCase<T>[] {
  if (sizes.kind === 'single') {
    const mark = theCase(own, sizes.span, premises, reading);
    return mark === undefined ? [] : [{ case: mark, value: sizes.value }];
  }
  if (own !== undefined)
    reading.report({
      code: 'keys-together',
      message: '`case` cannot stand beside sizes that are given by case',
      span: own.span,
      hints: ['take `case` out'],
    });
  return sizes.cases.map(({ name, value }) => {
    const known = knownCase(name, premises, reading);
    return { case: name.value, value: known ? value : undefined };
  });
}

const marksOf = (cases: readonly LoadCase[]): string =>
  listed(cases.map((one) => one.mark));
