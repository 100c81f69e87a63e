import { spansOf, type LoadCase } from '../../project/index.ts';
import type { MemberContext } from '../case-context.ts';
import type { CautionStep } from '../steps.ts';

/** Live load that stands on a beam of several spans, and is worked only as it is placed: a caution a case. */
export function patternCautions(
  { structure }: Pick<MemberContext, 'structure'>,
  cases: readonly LoadCase[],
): readonly CautionStep[] {
  if (spansOf(structure).length < 2) return [];
  return cases
    .filter(
      ({ mark, kind, pattern }) =>
        kind === 'live' &&
        !pattern &&
        structure.loads.some((load) => load.case === mark),
    )
    .map(({ mark }) => ({
      kind: 'caution',
      caution: 'pattern',
      facts: { case: mark },
    }));
}
