import type { BeamStructure, Load } from './structure.ts';

/** A load case and what a combination multiplies it by. */
export interface CaseFactor {
  /** Mark of the case. */
  readonly case: string;
  readonly factor: number;
}

/** A load with the factor that it takes part with. */
export interface FactoredLoad {
  readonly load: Load;
  readonly factor: number;
}

/**
 * The loads of one case (its mark, factor 1) or of a sum of factored cases, in the order of the
 * structure. A case named twice counts with both factors together.
 *
 * @throws RangeError where a case is not one of the structure's.
 */
export function loadsUnder(
  structure: BeamStructure,
  loading: string | readonly CaseFactor[],
): readonly FactoredLoad[] {
  const terms = typeof loading === 'string' ? [{ case: loading, factor: 1 }] : loading;
  const factors = new Map<string, number>();
  for (const term of terms) {
    if (!structure.cases.includes(term.case))
      throw new RangeError(`no case ${term.case}`);
    factors.set(term.case, (factors.get(term.case) ?? 0) + term.factor);
  }
  return structure.loads.flatMap((load) => {
    const factor = factors.get(load.case);
    return factor === undefined ? [] : [{ load, factor }];
  });
}
