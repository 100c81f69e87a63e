import { readSum } from '../../project/index.ts';
import type { BeamWork } from '../beam-work.ts';

/** What a limit is judged on: cases with their factors, or why it is not judged. */
export type LimitEntry =
  | {
      readonly kind: 'sum';
      readonly terms: readonly { readonly case: string; readonly factor: number }[];
    }
  /** The mark of a combination for strength: deflections are not judged on those. */
  | { readonly kind: 'strength' };

/** Reads the key of a limit: a case, the mark of a combination, or a sum of cases with factors. */
export function limitEntry(
  { solution, combinations }: Pick<BeamWork, 'solution' | 'combinations'>,
  key: string,
): LimitEntry {
  if (solution.results.some(({ mark }) => mark === key))
    return { kind: 'sum', terms: [{ case: key, factor: 1 }] };
  const named = combinations.find(({ mark }) => mark === key);
  if (named !== undefined)
    return named.for === 'strength'
      ? { kind: 'strength' }
      : { kind: 'sum', terms: named.factors };
  return { kind: 'sum', terms: readSum(key) ?? [] };
}
