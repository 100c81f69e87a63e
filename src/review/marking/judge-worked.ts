import { isClose, isCloseIn } from '../matching/closeness.ts';
import { displayUnit, sameButAngle } from '../../units/index.ts';
import type { Written, WrittenLine } from '../reading/written.ts';
import type { Finding } from '../verdict.ts';
import { conversionOf } from './judge-value.ts';
import { bareNumbers } from './lacking-units.ts';
import { markEquation, type MarkedEquation } from './mark-equation.ts';
import { displayOf } from './shown-as.ts';
import { meaningsFor } from './meanings.ts';
import { words } from './phrases.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';
import type { ValueReading } from './value-claims.ts';
import { worthsOf, type Worths } from './worths.ts';

/** How the line of a value step stands, as far as it can be worked. */
export interface JudgedWork extends Omit<MarkedEquation, 'explained'> {
  /** As it was read, without a name for the value in front. */
  readonly line: WrittenLine;
  /** What it comes to by the worker's own figures. */
  readonly own?: number;
}

/** The symbol that stands for the value in the sum that it is compared with; no worker can write it. */
const valueSymbol = '\u0000value';

/**
 * Judges what is written for a value: right where it comes to the true value, by whatever way; else
 * the sums that would give it say which term went wrong, and where it is like none of them, or no
 * sum gives it, its size is told.
 */
export function judgeWorked(
  request: StepRequest,
  lines: readonly WrittenLine[],
  reading: ValueReading,
): JudgedWork | StepMark {
  const worked = lines.map((line) => ({ line, ...workedOut(line, request) }));
  const right = worked.find(({ worths }) => isTrueOf(request, worths, reading));
  if (right !== undefined)
    return {
      line: right.line,
      ...(right.worths === undefined ? {} : { own: right.worths.own }),
      isRight: true,
      isFollowing: false,
      findings: [],
    };
  const first = worked.find((one) => one.worths !== undefined) ?? worked[0];
  if (first === undefined) return unread('syntax', 'Nothing is written.');
  const { line, worths } = first;
  const marked = bySums(request, lines, reading);
  if (worths === undefined) return withoutWorth(first, marked);
  const isUnread = marked !== undefined && 'verdict' in marked;
  if (isUnread && lacksUnit(line, worths, reading)) return marked;
  const { own } = worths;
  if (marked !== undefined && !isUnread && !isUnlike(request, marked, worths))
    return { ...marked, line, own };
  const findings = [sizeFinding(request, reading, worths)];
  return { line, own, isRight: false, isFollowing: false, findings };
}

type WorkedOut = ReturnType<typeof worthsOf> & { readonly line: WrittenLine };

/** A line that comes to no value: what its sums say of it, else where it cannot be worked. */
function withoutWorth(
  { line, fault }: WorkedOut,
  marked: MarkedEquation | StepMark | undefined,
): JudgedWork | StepMark {
  if (marked !== undefined) return 'verdict' in marked ? marked : { ...marked, line };
  if (fault === undefined)
    return unread('syntax', 'What is written comes to no value.');
  return unread(fault.kind, faultWords(line.text, fault));
}

function workedOut(
  line: WrittenLine,
  request: StepRequest,
): ReturnType<typeof worthsOf> {
  const [first] = line.links;
  return first === undefined ? {} : worthsOf(first, request);
}

function isTrueOf(
  { context }: StepRequest,
  worths: Worths | undefined,
  { meaning, takesMagnitude }: ValueReading,
): boolean {
  if (worths === undefined) return false;
  const { truth, dimension } = worths;
  if (!sameButAngle(dimension, meaning.dimension)) return false;
  const unit = displayUnit(context.system, displayOf(meaning)).inSi;
  const isIt = (one: number): boolean =>
    isClose(truth, one) || isCloseIn(unit, truth, one);
  return isIt(meaning.truth) || (takesMagnitude && isIt(-meaning.truth));
}

/** The line less the value, in both senses, against the sums that would give it; undefined where none would. */
function bySums(
  request: StepRequest,
  lines: readonly WrittenLine[],
  { meaning, candidates }: ValueReading,
): MarkedEquation | StepMark | undefined {
  if (candidates.length === 0) return undefined;
  const also = new Map([...request.also, [valueSymbol, meaning] as const]);
  const own = { ...request, also };
  const { context, worker } = request;
  return markEquation(
    own,
    lines.flatMap(lessValue),
    candidates,
    meaningsFor(context, worker, also),
  );
}

function lessValue(line: WrittenLine): readonly WrittenLine[] {
  const [expression] = line.links;
  if (expression === undefined) return [];
  const extent = { start: 0, end: 0 };
  const name: Written = { kind: 'name', name: valueSymbol, ...extent };
  const opposite: Written = { kind: 'sum', terms: [{ sign: -1, of: name }], ...extent };
  return [name, opposite].map((value) => ({ ...line, links: [expression, value] }));
}

/**
 * True where the slips say less than the size alone: a force that nobody knows is missing and
 * something else is wrong too, or a formula for a member that its sums do not solve lacks a force.
 */
function isUnlike(
  { context }: StepRequest,
  { isRight, explained }: MarkedEquation,
  worths: Worths | undefined,
): boolean {
  const [match] = explained.matches;
  if (isRight || worths === undefined) return false;
  if (match === undefined) return true;
  const missing = match.slips.filter(({ kind }) => kind === 'missing-term');
  const isFormula =
    context.redundants > 0 &&
    explained.terms.filter(({ unknown }) => unknown !== undefined).length < 2;
  const lacksUnknown = missing.some(({ atoms }) =>
    atoms.some(({ key }) => key !== undefined),
  );
  return (isFormula && missing.length > 0) || (lacksUnknown && match.slips.length > 1);
}

/** True where a number without a unit may be why the line does not measure what it should. */
function lacksUnit(
  { links }: WrittenLine,
  { dimension }: Worths,
  { meaning }: ValueReading,
): boolean {
  return (
    !sameButAngle(dimension, meaning.dimension) &&
    links.some((link) => bareNumbers(link).length > 0)
  );
}

/** What a value of the wrong size comes to beside the true one. */
function sizeFinding(
  { context, step }: StepRequest,
  { meaning }: ValueReading,
  { own, dimension }: Worths,
): Finding {
  const { truth } = meaning;
  const asked = step.value?.text ?? 'value';
  if (!sameButAngle(dimension, meaning.dimension))
    return { kind: 'unit', message: `What is written does not measure the ${asked}.` };
  const show = (si: number): string => words(context, displayOf(meaning), si);
  const factor = conversionOf(own, truth);
  if (factor !== undefined)
    return {
      kind: 'unit',
      message: `This comes to ${show(own)}, out by a factor of ${factor}: the ${asked} is ${show(truth)}.`,
    };
  const kind = isClose(own, -truth) ? 'sign' : 'magnitude';
  return {
    kind,
    message: `This comes to ${show(own)}; the ${asked} is ${show(truth)}.`,
  };
}
