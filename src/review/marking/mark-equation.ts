import type { CutPart } from '../../statics/index.ts';
import type { Meanings, WorkingFault } from '../reading/linear-form.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { Finding } from '../verdict.ts';
import { explainLine, type Explained } from './explain-line.ts';
import { effortOfLine } from '../matching/effort.ts';
import { unitsMeant } from './units-meant.ts';
import { expectedLine, type ExpectedLine } from './expected-line.ts';
import type { SumClaim } from './read-claim.ts';
import { matchFindings } from './match-findings.ts';
import type { SlipFinding } from './same-slip.ts';
import type { Speech } from './speech.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';
import { isTooLong, tooLong } from './too-long.ts';
import { truthOf } from './truth-of.ts';

/** A sum that a line may be: a value step has several, a sum step its own. */
export interface Candidate {
  readonly claim: SumClaim;
  readonly parts: readonly CutPart[];
  readonly sense: 1 | -1;
}

/** An equation of a step judged: right or not, with what was found and its terms. */
export interface MarkedEquation {
  readonly isRight: boolean;
  /** True where it is right only with a value that an earlier step got wrong. */
  readonly isFollowing: boolean;
  readonly findings: readonly SlipFinding[];
  readonly expected?: ExpectedLine;
  readonly explained: Explained;
}

/**
 * Judges a line as one of several sums: right where it holds, else by the cheapest set of slips
 * over all of them. The answer is a mark by itself where the line cannot be worked.
 */
export function markEquation(
  request: StepRequest,
  readings: readonly WrittenLine[],
  candidates: readonly Candidate[],
  meanings: Meanings,
): MarkedEquation | StepMark {
  const best = bestOf(request, readings, candidates, meanings);
  if ('verdict' in best) {
    const isUnit = best.findings.some(({ kind }) => kind === 'unit');
    const truths = (key: string): number | undefined => truthOf(request, key);
    const effort = effortOfLine(request.effort);
    const meant = isUnit ? unitsMeant(readings, meanings, truths, effort) : undefined;
    return meant === undefined
      ? best
      : { isRight: false, isFollowing: false, ...meant };
  }
  const { explained } = best;
  if (explained.isTrue)
    return {
      isRight: true,
      isFollowing: isFollowing(request, best, meanings),
      findings: matchFindings(explained.matches, speechOf(request, best)),
      explained,
    };
  const wrong = wrongEquation(request, best);
  if (!isTooLong(explained)) return wrong;
  const { isWrong, message } = tooLong(request, explained);
  return isWrong
    ? { ...wrong, findings: [{ kind: 'arithmetic', message }] }
    : unread('step', message);
}

/** True where a line holds for what the worker found before, and not for what is true. */
function isFollowing(
  request: StepRequest,
  { explained, candidate }: Best,
  meanings: Meanings,
): boolean {
  const { context, worker } = request;
  const isAllRight = [...worker.concluded.values()].every(({ isRight }) => isRight);
  if (isAllRight || explained.matches.length === 0) return false;
  const truths = (key: string): number | undefined => truthOf(request, key);
  const again = explainLine({
    context,
    readings: [explained.reading],
    meanings,
    concluded: new Map(),
    truths,
    effort: effortOfLine(request.effort),
    ...candidate,
  });
  return again.explained?.isTrue !== true;
}

/** An explanation, and the sum that it takes the line for. */
interface Best {
  readonly explained: Explained;
  readonly candidate: Candidate;
}

function bestOf(
  request: StepRequest,
  readings: readonly WrittenLine[],
  candidates: readonly Candidate[],
  meanings: Meanings,
): Best | StepMark {
  const { context, worker } = request;
  const concluded = new Map(
    [...worker.concluded].map(([key, { value }]) => [key, value]),
  );
  const truths = (key: string): number | undefined => truthOf(request, key);
  const effort = effortOfLine(request.effort);
  let fault: WorkingFault | undefined;
  let best: Best | undefined;
  for (const candidate of candidates) {
    const asked = { context, readings, meanings, concluded, truths, effort };
    const found = explainLine({ ...asked, ...candidate });
    fault ??= found.fault;
    if (found.explained === undefined) continue;
    const isBetter =
      best === undefined || costOf(found.explained) < costOf(best.explained);
    if (isBetter) best = { explained: found.explained, candidate };
    if (found.explained.isTrue) break;
  }
  if (best !== undefined) return best;
  const { kind, ...place } = fault ?? emptyLine;
  return unread(kind, faultWords(readings[0]?.text ?? '', place));
}

const emptyLine: WorkingFault = {
  kind: 'syntax',
  message: 'nothing is written',
  start: 0,
  end: 0,
};

function wrongEquation(
  request: StepRequest,
  { explained, candidate }: Best,
): MarkedEquation {
  const { context, worker } = request;
  const { claim } = candidate;
  const slips = explained.matches[0]?.slips ?? [];
  const speech = speechOf(request, { explained, candidate });
  const findings = matchFindings(explained.matches, speech);
  // The right line keeps the side on which the worker counts positive.
  const written = explained.scale < 0 ? -1 : 1;
  return {
    isRight: false,
    isFollowing: false,
    findings: findings.length > 0 ? findings : [doesNotHold],
    expected: expectedLine(context, claim, explained.atoms, {
      worker,
      sense: written,
      slips,
    }),
    explained,
  };
}

function speechOf(
  { context, worker }: StepRequest,
  { candidate, explained }: Best,
): Speech {
  const { claim, parts } = candidate;
  const isWhole = parts.every(({ from, to }) => from === undefined && to === undefined);
  // A line that is turned as a whole counts the other sense positive.
  const sense = explained.scale < 0 ? -1 : 1;
  return { context, claim, sense, isWhole, concluded: worker.concluded };
}

const doesNotHold: Finding = {
  kind: 'arithmetic',
  message: 'This equation does not hold for the member.',
};

function costOf({ isTrue, matches }: Explained): number {
  return isTrue ? -1 : (matches[0]?.cost ?? Infinity);
}
