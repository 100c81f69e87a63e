import type { LoadFactor } from '../../definitions.ts';
import type { Reading } from '../../reading.ts';
import type { Placed } from '../../shape/shape.ts';
import type { PerCase } from './load-line.ts';
import { listed } from '../../shape/listed.ts';

/** The factor of a load in a case; undefined for none. */
export type FactorOf = (mark: string) => LoadFactor | undefined;

/**
 * Reads `times` and `because`: the reason must be given, and a factor must belong to a case that
 * the load has. A plain number is for all cases.
 */
export function readFactors(
  line: { readonly times?: PerCase<number>; readonly because?: Placed<string> },
  cases: readonly string[],
  reading: Reading,
): FactorOf {
  const { times, because } = line;
  if (times === undefined) {
    if (because !== undefined)
      reading.report({
        code: 'reason-without-factor',
        message: '`because` gives the reason for a factor, and there is none',
        span: because.span,
        hints: ['add `times`, or write the remark as `note`'],
      });
    return () => undefined;
  }
  if (because === undefined) {
    reading.report({
      code: 'factor-without-reason',
      message: 'a factor on a load needs its reason',
      span: times.span,
      hints: ['add `because`, with the clause or the ground for it'],
    });
    return () => undefined;
  }
  const reason = because.value;
  if (times.kind === 'single') return () => ({ factor: times.value, because: reason });
  // A load without any case has been reported for that.
  const strangers = times.cases.filter(({ name }) => !cases.includes(name.value));
  for (const { name } of cases.length === 0 ? [] : strangers)
    reading.report({
      code: 'factor-for-absent-case',
      message: `the load has no case \`${name.value}\` that this factor could act on`,
      span: name.span,
      hints: [`cases of this load: ${listed(cases)}`],
    });
  return (mark) => {
    const value = times.cases.find((entry) => entry.name.value === mark)?.value;
    return value === undefined ? undefined : { factor: value, because: reason };
  };
}
