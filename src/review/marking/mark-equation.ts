import type { CutPart } from '../../statics/index.ts';
import type { Display } from '../../units/index.ts';
import { isClose } from '../matching/closeness.ts';
import {
  linearForm,
  type Meaning,
  type Meanings,
  type WorkingFault,
} from '../reading/linear-form.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { Finding } from '../verdict.ts';
import { explainLine, faultOf, holds, type Explained } from './explain-line.ts';
import { termsOfLine } from '../matching/worker-terms.ts';
import { withUnits } from './lacking-units.ts';
import { expectedLine, type ExpectedLine } from './expected-line.ts';
import { words } from './phrases.ts';
import type { SumClaim } from './read-claim.ts';
import { slipFindings } from './slip-findings.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';

/** A sum that a line may be: a value step has several, a sum step its own. */
export interface Candidate {
  readonly claim: SumClaim;
  readonly parts: readonly CutPart[];
  readonly sense: 1 | -1;
}

/** An equation of a step judged: right or not, with what was found and its terms. */
export interface MarkedEquation {
  readonly isRight: boolean;
  readonly findings: readonly Finding[];
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
    return (isUnit ? withoutUnits(request, readings, meanings) : undefined) ?? best;
  }
  const { explained } = best;
  return explained.isTrue
    ? { isRight: true, findings: [], explained }
    : wrongEquation(request, best);
}

/** A line that would hold if its bare numbers had their units: wrong, and one sees what was meant. */
function withoutUnits(
  request: StepRequest,
  readings: readonly WrittenLine[],
  meanings: Meanings,
): MarkedEquation | undefined {
  const truths = (key: string): number | undefined => truthOf(request, key);
  for (const { line, meant } of readings.flatMap(withUnits)) {
    const { terms } = termsOfLine(line, meanings);
    if (terms === undefined || faultOf(terms, line) !== undefined) continue;
    if (meant.length === 0 || !holds(terms, truths)) continue;
    const findings = meant.map((text): Finding => ({
      kind: 'unit',
      term: text.split(' ')[0] ?? text,
      message: `This number lacks its unit: ${text} is meant.`,
    }));
    const explained = { reading: line, terms, atoms: [], scale: 1, matches: [] };
    return { isRight: false, findings, explained: { ...explained, isTrue: false } };
  }
  return undefined;
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
  let fault: WorkingFault | undefined;
  let best: Best | undefined;
  for (const candidate of candidates) {
    const asked = { context, readings, meanings, concluded, truths };
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
  const { claim, sense } = candidate;
  const speech = { context, claim, sense, concluded: worker.concluded };
  const [first, second] = explained.matches;
  const slips = first?.slips ?? [];
  const findings = [
    ...slipFindings(slips, speech),
    ...slipFindings(second?.slips ?? [], speech).map(orElse),
  ];
  // The right line keeps the side on which the worker counts positive.
  const written = explained.scale < 0 ? -1 : 1;
  return {
    isRight: false,
    findings: findings.length > 0 ? findings : [doesNotHold],
    expected: expectedLine(context, claim, explained.atoms, {
      worker,
      sense: written,
      slips,
    }),
    explained,
  };
}

const doesNotHold: Finding = {
  kind: 'arithmetic',
  message: 'This equation does not hold for the member.',
};

function costOf({ isTrue, matches }: Explained): number {
  return isTrue ? -1 : (matches[0]?.cost ?? Infinity);
}

function orElse(finding: Finding): Finding {
  const { message } = finding;
  return { ...finding, message: `Or else: ${message}` };
}

/** What an unknown truly is, in its own sense. */
export function truthOf(
  { context, worker, also }: StepRequest,
  key: string,
): number | undefined {
  for (const meaning of [...also.values(), ...worker.names.values()])
    if (
      typeof meaning !== 'string' &&
      meaning.kind === 'unknown' &&
      meaning.key === key
    )
      return meaning.truth / meaning.share;
  return context.truths(key) ?? worker.concluded.get(key)?.truth;
}

/** The links of a chain after the first equation must each equal the one before. */
export function chainFindings(
  line: WrittenLine,
  meanings: Meanings,
  value: (key: string) => number | undefined,
  show: (si: number, like: number) => string,
): readonly Finding[] {
  const numbers = line.links.map((link) => {
    const { form } = linearForm(link, meanings);
    if (form === undefined) return undefined;
    let sum = form.constant;
    for (const [key, share] of form.unknowns) {
      const known = value(key);
      if (known === undefined) return undefined;
      sum += share * known;
    }
    return sum;
  });
  return line.links.flatMap((link, index): readonly Finding[] => {
    const [before, here] = [numbers[index - 1], numbers[index]];
    if (index < 2 || before === undefined || here === undefined) return [];
    if (isClose(here, before)) return [];
    const term = line.text.slice(link.start, link.end);
    return [
      {
        kind: 'arithmetic',
        term,
        message: `What stands before it comes to ${show(before, here)}.`,
      },
    ];
  });
}

/** What a value measures, by its dimension, for the unit that findings speak in. */
export function displayOf(meaning: Pick<Meaning, 'dimension'>): Display {
  const { force, length } = meaning.dimension;
  if (force === 1 && length === 1) return 'moment';
  if (force === 1 && length === 0) return 'force';
  if (force === 1 && length === -1) return 'force-per-length';
  if (force === 0 && length === 1) return 'length';
  return 'pure';
}

/** A value in words, in the project's unit for what it measures. */
export function showAs(
  { context }: StepRequest,
  what: Display,
): (si: number) => string {
  return (si) => words(context, what, si);
}
