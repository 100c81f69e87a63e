import { candidateSums, type CandidateSum } from './candidate-sums.ts';
import { partsOf, wholeOf, type Part } from './parts.ts';
import type { BeamStructure } from './structure.ts';
import { tidyStructure } from './tidy-structure.ts';
import { worked, type WorkedSum } from './worked-sum.ts';

/**
 * Sums that no step has used and that have to close: of the whole beam, moments about a point not used
 * yet and whichever force sums were worked on pieces only; then, on each piece between hinges,
 * moments about another point of it. They follow from the steps' sums by statics, so they tell
 * nothing new of the beam, but a slip of arithmetic in any step leaves them open.
 */
export function checkSums(
  structure: BeamStructure,
  candidates: readonly CandidateSum[],
  used: readonly WorkedSum[],
): readonly WorkedSum[] {
  const supports = structure.supports.map(({ x }) => x);
  const everything = new Set(
    candidates.flatMap(({ entries }) => entries.map(({ key }) => key)),
  );
  const pieces = partsOf(structure);
  const whole = wholeOf(structure);
  const forces = candidates.filter(
    ({ part, sum }) => isSame(part, whole) && sum.kind === 'forces',
  );
  const unusedForces = forces.filter(
    ({ sum }) =>
      !used.some(
        (other) =>
          isSame(other.part, whole) &&
          other.sum.kind === 'forces' &&
          sum.kind === 'forces' &&
          other.sum.along === sum.along,
      ),
  );
  const parts = pieces.length > 1 ? [whole, ...pieces] : [whole];
  const moments = parts.flatMap((part) =>
    bestMoments(candidates, part, { supports, used }),
  );
  const [first, ...rest] = moments;
  const chosen = [...(first === undefined ? [] : [first]), ...unusedForces, ...rest];
  return chosen.map((candidate) => worked(candidate, everything, []));
}

/** The sums that must close on a beam whose hand calculation uses none of them: every force sum, and moments on each piece. */
export function closingSums(structure: BeamStructure): readonly WorkedSum[] {
  const tidy = tidyStructure(structure);
  return checkSums(tidy, candidateSums(tidy), []);
}

/** The moment sum on a part that is farthest from those used: about a support if one is left, else a point. */
function bestMoments(
  candidates: readonly CandidateSum[],
  part: Part,
  {
    supports,
    used,
  }: { readonly supports: readonly number[]; readonly used: readonly WorkedSum[] },
): readonly CandidateSum[] {
  const centres = used.flatMap((other) =>
    isSame(other.part, part) && other.sum.kind === 'moments' ? [other.sum.about] : [],
  );
  const free = candidates.flatMap((candidate) => {
    const { sum } = candidate;
    if (!isSame(candidate.part, part) || sum.kind !== 'moments') return [];
    if (centres.includes(sum.about)) return [];
    const distance = Math.min(Infinity, ...centres.map((x) => Math.abs(x - sum.about)));
    return [{ candidate, distance, isSupport: supports.includes(sum.about) }];
  });
  free.sort((a, b) => Number(b.isSupport) - Number(a.isSupport) || compare(b, a));
  return free.slice(0, 1).map(({ candidate }) => candidate);
}

function compare(
  a: { readonly distance: number },
  b: { readonly distance: number },
): number {
  return a.distance === b.distance ? 0 : a.distance - b.distance;
}

function isSame(a: Part, b: Part): boolean {
  return a.from === b.from && a.to === b.to;
}
