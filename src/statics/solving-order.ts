import { candidateSums, type CandidateSum } from './candidate-sums.ts';
import { worked, type WorkedSum } from './worked-sum.ts';
import { checkSums } from './check-sums.ts';
import { coupledSums } from './coupled-sums.ts';
import { actsAlongBeam, determinacy } from './determinacy.ts';
import type { Part } from './parts.ts';
import type { BeamStructure } from './structure.ts';
import { tidyStructure } from './tidy-structure.ts';
import { keyOfUnknown, type Unknown } from './unknowns.ts';

/** One step of the hand calculation. */
export type SolvingStep =
  /** One sum that leaves one unknown. */
  | (WorkedSum & { readonly kind: 'single'; readonly finds: Unknown })
  /** As many sums as unknowns, to be solved together because no sum holds one of them alone. */
  | {
      readonly kind: 'coupled';
      readonly sums: readonly WorkedSum[];
      readonly finds: readonly Unknown[];
    }
  /** Forces along x on several restraints: the sum tells what they hold together, the bar's EA how they share it. */
  | (WorkedSum & {
      readonly kind: 'axial-sharing';
      readonly finds: readonly Unknown[];
    });

/** The steps that find every unknown once, and sums not used by any of them that must close. */
export interface SolvingOrder {
  readonly steps: readonly SolvingStep[];
  readonly checks: readonly WorkedSum[];
}

/**
 * An order in which the unknowns of a beam can be found by hand: every restraint of every support
 * and both forces through every hinge. A step looks for a sum with one unknown left: on the piece in hand
 * before another, on a piece before several together, so that a suspended piece comes before the
 * one that carries it; forces up where they tell something, else moments about the point
 * through which most unknown forces pass. Forces along the beam come last, but first where nothing stops
 * the three sums from standing in their plain order (a cantilever).
 *
 * @throws RangeError where statics cannot solve the beam: see `determinacy`.
 */
export function solvingOrder(structure: BeamStructure): SolvingOrder {
  const { stable, redundants, axialOnly } = determinacy(structure);
  if (!stable || (redundants > 0 && !axialOnly)) {
    throw new RangeError('statics alone cannot solve this beam');
  }
  const tidy = tidyStructure(structure);
  const candidates = candidateSums(tidy);
  const alongBeam = axialOnly ? keysAlongBeam(tidy) : [];
  const known = new Set<string>();
  const steps: SolvingStep[] = [];
  let place: Place | undefined;
  for (;;) {
    const remaining = remainingKeys(candidates, known);
    if (remaining.length === 0) break;
    place = nextPlace(candidates, known, place);
    const step =
      place === undefined
        ? stepTogether(candidates, { known, remaining, alongBeam })
        : singleStep(candidates, known, place);
    for (const unknown of step.kind === 'single' ? [step.finds] : step.finds) {
      known.add(keyOfUnknown(unknown));
    }
    steps.push(step);
  }
  return { steps, checks: checkSums(tidy, candidates, steps.flatMap(sumsOfStep)) };
}

/** The part in hand, and whether its sums run in their plain order: forces right, forces up, moments. */
interface Place {
  readonly part: Part;
  readonly isPlain: boolean;
}

/** The sums that a step works. */
export function sumsOfStep(step: SolvingStep): readonly WorkedSum[] {
  return step.kind === 'coupled' ? step.sums : [step];
}

function keysAlongBeam(structure: BeamStructure): readonly string[] {
  return structure.supports.flatMap(({ point, restraints }) =>
    restraints.flatMap((restraint, index) =>
      actsAlongBeam(restraint)
        ? [keyOfUnknown({ kind: 'reaction', point, index })]
        : [],
    ),
  );
}

function remainingKeys(
  candidates: readonly CandidateSum[],
  known: ReadonlySet<string>,
): readonly string[] {
  const all = candidates.flatMap(({ entries }) => entries.map(({ key }) => key));
  return [...new Set(all)].filter((key) => !known.has(key));
}

function unknownsIn(
  candidate: CandidateSum,
  known: ReadonlySet<string>,
): readonly { readonly key: string; readonly unknown: Unknown }[] {
  return candidate.entries.filter(({ key, factor }) => factor !== 0 && !known.has(key));
}

function isAlongX({ sum }: CandidateSum): boolean {
  return sum.kind === 'forces' && sum.along === 'x';
}

/** Stays on the part in hand while it has a sum with one unknown, else goes to the first part that has one. */
function nextPlace(
  candidates: readonly CandidateSum[],
  known: ReadonlySet<string>,
  place: Place | undefined,
): Place | undefined {
  const single = candidates.filter(
    (candidate) => unknownsIn(candidate, known).length === 1,
  );
  if (place !== undefined && single.some(({ part }) => isSamePart(part, place.part)))
    return place;
  const next = single.find((candidate) => !isAlongX(candidate)) ?? single[0];
  if (next === undefined) return undefined;
  const isPlain = single.some(
    ({ part, sum }) =>
      isSamePart(part, next.part) && sum.kind === 'forces' && sum.along === 'y',
  );
  return { part: next.part, isPlain };
}

function isSamePart(a: Part, b: Part): boolean {
  return a.from === b.from && a.to === b.to;
}

function singleStep(
  candidates: readonly CandidateSum[],
  known: ReadonlySet<string>,
  { part, isPlain }: Place,
): SolvingStep {
  const rank = ({ sum, through }: CandidateSum): number => {
    if (sum.kind === 'moments') return 2 - through / 1000;
    if (sum.along === 'y') return 1;
    return isPlain ? 0 : 3;
  };
  const [best] = candidates
    .filter((candidate) => isSamePart(candidate.part, part))
    .filter((candidate) => unknownsIn(candidate, known).length === 1)
    .sort((a, b) => rank(a) - rank(b));
  const finds = best === undefined ? undefined : unknownsIn(best, known)[0]?.unknown;
  if (best === undefined || finds === undefined)
    throw new RangeError('no sum with one unknown');
  return { kind: 'single', ...worked(best, known, [keyOfUnknown(finds)]), finds };
}

/** Where no sum leaves one unknown: sharing along the beam if all else in its sum is known, else coupled sums. */
function stepTogether(
  candidates: readonly CandidateSum[],
  state: {
    readonly known: ReadonlySet<string>;
    readonly remaining: readonly string[];
    readonly alongBeam: readonly string[];
  },
): SolvingStep {
  const { known, remaining, alongBeam } = state;
  const slide = candidates.findLast(isAlongX);
  if (slide !== undefined && alongBeam.some((key) => !known.has(key))) {
    const open = unknownsIn(slide, known);
    if (open.every(({ key }) => alongBeam.includes(key))) {
      const finds = open.map(({ unknown }) => unknown);
      return { kind: 'axial-sharing', ...worked(slide, known, alongBeam), finds };
    }
  }
  const count = (candidate: CandidateSum): number =>
    unknownsIn(candidate, known).length;
  const preferred = [...candidates].sort(
    (a, b) => a.pieces - b.pieces || count(a) - count(b) || b.through - a.through,
  );
  const coupled = coupledSums(preferred, remaining);
  if (coupled === undefined) throw new RangeError('the sums do not find every unknown');
  const all = candidates.flatMap(({ entries }) => entries);
  const finds = coupled.finds.flatMap(
    (key) => all.find((entry) => entry.key === key)?.unknown ?? [],
  );
  const sums = coupled.sums.map((candidate) => worked(candidate, known, coupled.finds));
  return { kind: 'coupled', sums, finds };
}
