import { sameButAngle, type Dimension } from '../../units/index.ts';
import type { CutPart } from '../../statics/index.ts';
import { atomsOf, type Atom, type Taking } from '../matching/atoms.ts';
import { isSame } from '../matching/closeness.ts';
import { matchTerms, type Match } from '../matching/match-terms.ts';
import { mostTerms, termsOfLine, type WorkerTerm } from '../matching/worker-terms.ts';
import type { MarkingContext } from '../marking-context.ts';
import type { Meanings, WorkingFault } from '../reading/linear-form.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { SumClaim } from './read-claim.ts';

/** What a line is judged with. */
export interface LineRequest {
  readonly context: MarkingContext;
  readonly claim: SumClaim;
  readonly parts: readonly CutPart[];
  readonly readings: readonly WrittenLine[];
  readonly meanings: Meanings;
  /** What was concluded of unknowns before, by key. */
  readonly concluded: ReadonlyMap<string, number>;
  /** True values of all unknowns, by key. */
  readonly truths: (key: string) => number | undefined;
  /** 1 where the worker's positive sense is the solver's. */
  readonly sense: 1 | -1;
}

/** How a line is best explained. */
export interface Explained {
  readonly reading: WrittenLine;
  readonly terms: readonly WorkerTerm[];
  /** What belongs in the sum, as the best explanation takes it. */
  readonly atoms: readonly Atom[];
  readonly scale: number;
  readonly matches: readonly Match[];
  /** True where the line holds of the member, however it is written. */
  readonly isTrue: boolean;
}

/** The best explanation of a line, or why it cannot be worked. */
export type Explanation =
  | { readonly explained: Explained; readonly fault?: undefined }
  | { readonly fault: WorkingFault; readonly explained?: undefined };

/** Explanations cheaper than this hold no slip. */
const noSlip = 0.5;

/**
 * Explains a line of a sum. A line that holds for the true values, or term by term for what the
 * worker found before, is right; otherwise every way of reading it, of taking its part, its
 * distributed loads and its scale is tried, and the cheapest set of slips is the explanation.
 */
export function explainLine(request: LineRequest): Explanation {
  let firstFault: WorkingFault | undefined;
  let best: Explained | undefined;
  for (const reading of request.readings) {
    const read = termsOfLine(reading, request.meanings);
    const fault = read.fault ?? faultOf(read.terms, reading);
    if (fault !== undefined || read.terms === undefined) {
      firstFault ??= fault;
      continue;
    }
    const found = explainReading(request, reading, read.terms);
    if (found.isTrue) return { explained: found };
    if (best === undefined || costOf(found) < costOf(best)) best = found;
  }
  if (best !== undefined) return { explained: best };
  return {
    fault: firstFault ?? {
      kind: 'syntax',
      message: 'nothing is written',
      start: 0,
      end: 0,
    },
  };
}

function costOf({ matches }: Explained): number {
  return matches[0]?.cost ?? Infinity;
}

/** Terms that do not measure the same cannot be added; a line may only be so long. */
export function faultOf(
  terms: readonly WorkerTerm[],
  reading: WrittenLine,
): WorkingFault | undefined {
  if (terms.length > mostTerms) {
    const message = `the line has ${terms.length} terms, and ${mostTerms} are compared: split it`;
    return { kind: 'syntax', message, start: 0, end: reading.text.length };
  }
  let first: Dimension | undefined;
  for (const term of terms) {
    if (term.dimension === undefined) continue;
    first ??= term.dimension;
    if (!sameButAngle(first, term.dimension)) {
      const message = `\`${term.text}\` does not measure what the terms before it do`;
      return { kind: 'unit', message, start: term.start, end: term.end };
    }
  }
  return undefined;
}

function explainReading(
  request: LineRequest,
  reading: WrittenLine,
  terms: readonly WorkerTerm[],
): Explained {
  const { context, claim, parts, concluded } = request;
  const isTrue = holds(terms, request.truths);
  let best: Explained | undefined;
  for (const part of parts) {
    for (const taking of takingsOf(context)) {
      const atoms = atomsOf(context, { sum: claim.sum, part }, taking);
      for (const { scale, cost } of scalesOf(terms, atoms, request.sense)) {
        const matching = { terms, atoms, sum: claim.sum, scale, concluded };
        const matches = matchTerms(matching).map((match) => ({
          ...match,
          cost: match.cost + cost,
        }));
        const found = { reading, terms, atoms, scale, matches, isTrue: false };
        if (best === undefined || costOf(found) < costOf(best) - 1e-9) best = found;
        if (costOf(best) < noSlip) return { ...best, isTrue: true };
      }
    }
  }
  const none = { reading, terms, atoms: [], scale: 1, matches: [], isTrue };
  return { ...(best ?? none), isTrue };
}

/** True where the terms add up to nothing when every unknown has its true value. */
export function holds(
  terms: readonly WorkerTerm[],
  truths: (key: string) => number | undefined,
): boolean {
  if (terms.length === 0) return false;
  let [sum, size] = [0, 0];
  for (const { constant, unknown } of terms) {
    const truth = unknown === undefined ? 0 : truths(unknown.key);
    if (truth === undefined) return false;
    const worth = constant + (unknown?.share ?? 0) * truth;
    sum += worth;
    size = Math.max(size, Math.abs(worth));
  }
  return Math.abs(sum) <= 1e-6 * size && size > 0;
}

/** Distributed loads taken whole and by stretches; trapezoids also as two triangles. */
function takingsOf({ structure }: MarkingContext): readonly Taking[] {
  const spread = structure.loads.filter((load) => load.kind === 'distributed');
  const isTrapezoid = spread.some(({ y1, y2 }) => y1 * y2 > 0 && y1 !== y2);
  if (spread.length === 0) return ['whole'];
  return isTrapezoid ? ['whole', 'stretches', 'triangles'] : ['whole', 'stretches'];
}

/**
 * What a line may be multiplied by. Turned against the stated convention costs next to nothing, so
 * that where one of two terms is wrong the convention says which.
 */
function scalesOf(
  terms: readonly WorkerTerm[],
  atoms: readonly Atom[],
  sense: 1 | -1,
): readonly { readonly scale: number; readonly cost: number }[] {
  const found: { scale: number; cost: number }[] = [];
  const add = (scale: number, cost: number): void => {
    const isNew = found.every((one) => !isSame(one.scale, scale));
    if (Number.isFinite(scale) && scale !== 0 && isNew) found.push({ scale, cost });
  };
  const turned = (scale: number): number => (Math.sign(scale) === sense ? 0 : 0.05);
  add(sense, 0);
  add(-sense, 0.05);
  for (const { unknown } of terms) {
    const atom = atoms.find(({ key }) => key !== undefined && key === unknown?.key);
    if (unknown === undefined || atom === undefined || atom.factor === 0) continue;
    const scale = unknown.share / atom.factor;
    add(scale, 0.01 + turned(scale));
    add(-scale, 0.01 + turned(-scale));
  }
  // `R = … / 15 ft`: the arm that divides everything is the unknown's.
  for (const { parts } of terms)
    for (const { size, dimension, power } of parts)
      if (power < 0 && dimension?.length === 1 && dimension.force === 0)
        for (const scale of [1 / size, -1 / size]) add(scale, 0.02 + turned(scale));
  return found;
}
