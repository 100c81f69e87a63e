import { sameButAngle, type Dimension } from '../../units/index.ts';
import type { CutPart } from '../../statics/index.ts';
import { atomsOf, type Atom } from '../matching/atoms.ts';
import { takingsOf } from '../matching/takings.ts';
import { isSpent, spend, type Effort } from '../matching/effort.ts';
import {
  matchTerms,
  prepareLine,
  type Match,
  type Matching,
  type PreparedLine,
} from '../matching/match-terms.ts';
import { scalesOf } from '../matching/scales.ts';
import { balanceOf, holds, holdsAsRounded } from '../matching/truth.ts';
import { termsOfLine, type WorkerTerm } from '../matching/worker-terms.ts';
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
  /** What all searches for this line may spend together. */
  readonly effort: Effort;
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
  /** False where the line is too long to try all that it may mean. */
  readonly isComplete: boolean;
}

/** The best explanation of a line, or why it cannot be worked. */
export type Explanation =
  | { readonly explained: Explained; readonly fault?: undefined }
  | { readonly fault: WorkingFault; readonly explained?: undefined };

/** Explanations dearer than this are more than one slip. */
const oneSlip = 2.75;

/**
 * Explains a line of a sum. A line that holds for the true values, or term by term for what the
 * worker found before, is right; otherwise every way of reading it, of taking its part, its
 * distributed loads and its scale is tried, and the cheapest set of slips is the explanation.
 */
export function explainLine(request: LineRequest): Explanation {
  const read = request.readings.map((reading) => {
    const { terms = [], fault } = termsOfLine(reading, request.meanings);
    return { reading, terms, fault: fault ?? faultOf(terms) };
  });
  const sound = read.flatMap(({ reading, terms, fault }) =>
    fault === undefined ? [{ reading, terms }] : [],
  );
  // The truth first: a true line is right however long it is.
  for (const { reading, terms } of sound) {
    const balance = balanceOf(terms, request.truths);
    if (balance !== undefined && holds(balance))
      return { explained: { ...untold(reading, terms), isTrue: true } };
  }
  let best: Explained | undefined;
  for (const { reading, terms } of sound) {
    const found = explainReading(request, reading, terms);
    if (found.isTrue) return { explained: found };
    if (best === undefined || costOf(found) < costOf(best)) best = found;
  }
  if (best !== undefined) return { explained: best };
  const fault = read.find((one) => one.fault !== undefined)?.fault;
  return { fault: fault ?? nothingWritten };
}

const nothingWritten: WorkingFault = {
  kind: 'syntax',
  message: 'nothing is written',
  start: 0,
  end: 0,
};

function untold(reading: WrittenLine, terms: readonly WorkerTerm[]): Explained {
  return {
    reading,
    terms,
    atoms: [],
    scale: 1,
    matches: [],
    isTrue: false,
    isComplete: true,
  };
}

function costOf({ matches }: Explained): number {
  return matches[0]?.cost ?? Infinity;
}

/** Terms that do not measure the same cannot be added. */
export function faultOf(terms: readonly WorkerTerm[]): WorkingFault | undefined {
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
  const best = searched(request, reading, terms);
  const cost = costOf(best);
  if (isWithoutSlip(best)) return { ...best, isTrue: true };
  // Terms lumped beyond what the search puts together still add up as far as their places tell.
  const balance = balanceOf(terms, request.truths);
  const isPlainSlip = best.isComplete && cost < oneSlip;
  const isTrue = balance !== undefined && !isPlainSlip && holdsAsRounded(balance);
  return isTrue ? { ...best, matches: [], isTrue } : best;
}

/** True where a line is explained with nothing amiss but a coarse rounding. */
function isWithoutSlip({ matches: [first] }: Explained): boolean {
  return first?.slips.every(({ kind }) => kind === 'rounding') ?? false;
}

/**
 * What an explanation may cost, tried in turn over all that a line may be taken for: one slip, a
 * term too many, two slips, three, any. Most lines are explained before the search gets wide.
 */
const bounds = [1.8, 2.75, 4.3, 6.5, Infinity];

/** A way to take a line: which things stand in its sum, and what the line is multiplied by. */
interface Taken {
  readonly matching: Matching;
  readonly cost: number;
}

/** The cheapest explanation over all that a line may be taken for. */
function searched(
  request: LineRequest,
  reading: WrittenLine,
  terms: readonly WorkerTerm[],
): Explained {
  const { effort } = request;
  spend(effort, comparisonsATerm * terms.length);
  const all = takenAs(request, terms);
  const lines = new Map<Taken, PreparedLine>();
  let best = untold(reading, terms);
  for (const bound of bounds) {
    for (const taken of all) {
      if (isSpent(effort)) return { ...best, isComplete: false };
      const { matching, cost } = taken;
      const most = Math.min(bound, costOf(best) - 1e-6) - cost;
      const line = lines.get(taken) ?? prepareLine(matching, effort, most);
      if (line === undefined) continue;
      lines.set(taken, line);
      const found = matchTerms(line, effort, most);
      if (found.length === 0) continue;
      const matches = found.map((one) => ({ ...one, cost: one.cost + cost }));
      const { atoms, scale } = matching;
      best = { ...best, atoms, scale, matches };
      if (costOf(best) < cleanEnough) return best;
    }
    if (best.matches.length > 0) break;
  }
  const isTried = [...lines.values()].some(({ puzzle }) => puzzle !== undefined);
  return { ...best, isComplete: isTried && !isSpent(effort) };
}

/** Making a line ready takes about as long as so many comparisons for each of its terms. */
const comparisonsATerm = 150;

/** Finding what acts in a sum takes about as long as so many comparisons for each thing found. */
const comparisonsAnAtom = 15;

function takenAs(
  { context, claim, parts, concluded, sense, effort }: LineRequest,
  terms: readonly WorkerTerm[],
): readonly Taken[] {
  const { sum } = claim;
  return parts.flatMap((part) =>
    takingsOf(context, sum).flatMap((taking) => {
      if (isSpent(effort)) return [];
      const atoms = atomsOf(context, { sum, part }, taking);
      spend(effort, comparisonsAnAtom * (1 + atoms.length));
      return scalesOf(terms, atoms, sense).map(({ scale, cost }): Taken => ({
        matching: { terms, atoms, sum, scale, concluded },
        cost,
      }));
    }),
  );
}

/** Below this no slip is in an explanation, and not even a coarse rounding: nothing better will come. */
const cleanEnough = 0.25;
