import type { WorkedText } from '../../project/index.ts';
import { readLine } from '../reading/read-line.ts';
import type { Written, WrittenLine } from '../reading/written.ts';
import type { Finding } from '../verdict.ts';
import { markConclusions, type Conclusions } from './mark-conclusions.ts';
import { chainFindings } from './chain-findings.ts';
import { displayOf } from './shown-as.ts';
import { truthOf } from './truth-of.ts';
import { meaningsFor, ownMeaningsFor, symbolsOf } from './meanings.ts';
import { words } from './phrases.ts';
import { together } from './mark-sum.ts';
import type { OwnEquation } from './solve-for.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';
import { judgeWorked, type JudgedWork } from './judge-worked.ts';
import { readValueClaim, type ValueReading } from './value-claims.ts';
import { adopt, copyOfWorker } from './worker.ts';

/** Marks a step that works a value: an internal force, a reaction, a deflection, a station, a resultant. */
export function markValue(request: StepRequest, value: WorkedText): StepMark {
  const { context, worker, step } = request;
  const claim = readValueClaim(context, value.text.trim().replace(/\s+/gu, ' '));
  if (typeof claim === 'string') return unread('step', `${claim}.`);
  if (step.write === undefined && step.so.length === 0)
    return unread('step', 'Nothing is written for this value.');
  const senses = step.so.map(({ text }) => directionOf(text, request));
  const trials = claim
    .filter(({ sense }) => sense === undefined || senses.includes(sense))
    .map((reading) => {
      // Each reading is tried on a copy of the worker, and the best one stands.
      const trial = { ...request, worker: copyOfWorker(worker) };
      return { worker: trial.worker, mark: markReading(trial, reading) };
    });
  const best = bestOf(trials);
  if (best === undefined) return unread('step', 'Nothing is written for this value.');
  adopt(worker, best.worker);
  return best.mark;
}

const order = ['right', 'follows', 'wrong', 'unread'] as const;

function bestOf<Trial extends { readonly mark: StepMark }>(
  trials: readonly Trial[],
): Trial | undefined {
  return order
    .flatMap((verdict) => trials.filter(({ mark }) => mark.verdict === verdict))
    .at(0);
}

function directionOf(text: string, { worker }: StepRequest): string | undefined {
  return readLine(text, symbolsOf(worker)).readings?.[0]?.direction;
}

function markReading(request: StepRequest, reading: ValueReading): StepMark {
  const { worker, step } = request;
  const texts = step.so.map(({ text }) => text);
  const conclude = (said: readonly string[], judged?: JudgedWork): Conclusions =>
    markConclusions(request, said, {
      target: reading.meaning,
      takesMagnitude: reading.takesMagnitude,
      equations: judged?.own === undefined ? [] : [ownEquationOf(reading, judged.own)],
      isLineRight: judged?.isRight === true,
    });
  const alone = step.write === undefined ? texts : saidAlone(step.write.text, request);
  if (alone !== undefined) {
    const concluded = conclude(alone);
    return { ...concluded, verdict: concluded.standing };
  }
  const { text } = step.write ?? { text: '' };
  const read = request.read(text, symbolsOf(worker, request.also.keys()));
  if (read.fault !== undefined)
    return unread(read.fault.kind, faultWords(text, read.fault));
  const lines = read.readings.map((line) => withoutOwnName(line, request));
  const judged = judgeWorked(request, lines, reading);
  if ('verdict' in judged) return judged;
  const { line } = judged;
  const chain = chainOf(request, line, reading);
  const said = texts.length > 0 ? texts : lastNumber(line);
  return together(judged, chain, conclude(said, judged));
}

/** A line that is nothing but a number is a conclusion, where the step has no other. */
function saidAlone(
  text: string,
  { step, worker }: StepRequest,
): readonly string[] | undefined {
  const [link, ...others] =
    readLine(text, symbolsOf(worker)).readings?.[0]?.links ?? [];
  const isAlone = link?.kind === 'number' && others.length === 0;
  return isAlone && step.so.length === 0 ? [text] : undefined;
}

/** The value as the worker's line gives it, as an equation of one unknown. */
function ownEquationOf(
  { meaning, takesMagnitude }: ValueReading,
  worked: number,
): OwnEquation {
  // A line that gives a size says nothing of the sense, which is then the true one.
  const sense = meaning.truth < 0 ? -1 : 1;
  const own = takesMagnitude ? sense * Math.abs(worked) : worked;
  const [key, share] =
    meaning.kind === 'unknown' ? [meaning.key, meaning.share] : ['', 1];
  return { constant: -own, shares: new Map([[key, share]]) };
}

/** Every link of `RA * a = 36 kip ft` against the one before. */
function chainOf(
  request: StepRequest,
  line: WrittenLine,
  { meaning }: ValueReading,
): readonly Finding[] {
  const { context, worker, also } = request;
  const [first] = line.links;
  // A chain is compared from its second link on: the first stands twice.
  const links = first === undefined ? [] : [first, ...line.links];
  return chainFindings(
    { ...line, links },
    ownMeaningsFor(context, worker, also),
    (key) => worker.concluded.get(key)?.value ?? truthOf(request, key),
    (si) => words(context, displayOf(meaning), si),
  );
}

/** `RA * a = 36 kip ft` concludes by itself. */
function lastNumber({ links, text }: WrittenLine): readonly string[] {
  const last = links.at(-1);
  const isConclusion = links.length > 1 && last?.kind === 'number' && !last.isBare;
  return isConclusion ? [text.slice(last.start)] : [];
}

/** `M = RA * a` as `RA * a`: a symbol that is not declared, or stands for an unknown, names the value. */
function withoutOwnName(line: WrittenLine, request: StepRequest): WrittenLine {
  const [first, ...others] = line.links;
  const isNamed = others.length > 0 && first !== undefined && isOwn(first, request);
  return isNamed ? { ...line, links: others } : line;
}

function isOwn(of: Written, { worker, context, also }: StepRequest): boolean {
  if (of.kind !== 'name') return false;
  const meaning = meaningsFor(context, worker, also)(of.name);
  return (
    meaning === undefined || meaning.kind === 'unknown' || worker.values.has(of.name)
  );
}
