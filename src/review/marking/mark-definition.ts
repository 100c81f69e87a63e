import { readLine } from '../reading/read-line.ts';
import type { Written, WrittenLine } from '../reading/written.ts';
import { isClose, isCloseIn } from '../matching/closeness.ts';
import { termsOfLine } from '../matching/worker-terms.ts';
import type { Meaning } from '../reading/linear-form.ts';
import type { Finding } from '../verdict.ts';
import type { Drawn } from './drawn.ts';
import { unitOf } from './chain-findings.ts';
import { markConclusions, type Conclusions } from './mark-conclusions.ts';
import { displayOf, showAs } from './shown-as.ts';
import { meaningsFor, ownMeaningsFor, symbolsOf } from './meanings.ts';
import { ownEquation } from './solve-for.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';
import type { OwnValue } from './worker.ts';
import { worthsOf } from './worths.ts';

/**
 * Marks a step that is neither a sum nor a value: `W = 0.25 kip/ft * 21 ft`. Its arithmetic and its
 * units are judged, and a declared symbol against what the member has for it.
 */
export function markDefinition(request: StepRequest): StepMark {
  const { step, worker, context } = request;
  if (step.write === undefined) return markWords(request);
  const read = readLine(step.write.text, symbolsOf(worker));
  if (read.fault !== undefined)
    return unread(read.fault.kind, faultWords(step.write.text, read.fault));
  const marks = read.readings.map((line) => workLinks(line, request));
  const worked =
    marks.find((one) => !('verdict' in one) && one.findings.length === 0) ?? marks[0];
  if (worked === undefined) return unread('syntax', 'Nothing is written.');
  if ('verdict' in worked) return worked;
  const { line, findings, value, name, isCarried } = worked;
  const known =
    name !== undefined && meaningsFor(context, worker)(name)?.kind !== 'unknown';
  if (known && value !== undefined) worker.values.set(name, value);
  const concluded = concludedBy(request, {
    equations: equationsIn(line, request),
    ...(value === undefined ? {} : { comesTo: value }),
  });
  return {
    verdict: verdictOf(concluded.standing, findings, isCarried),
    findings: [...findings, ...concluded.findings],
    remarks: concluded.remarks,
  };
}

function verdictOf(
  standing: Conclusions['standing'],
  findings: readonly Finding[],
  isCarried: boolean,
): StepMark['verdict'] {
  if (standing === 'unread') return 'unread';
  if (findings.length > 0 || standing === 'wrong') return 'wrong';
  return isCarried ? 'follows' : standing;
}

/** A step with nothing written: its conclusions alone, or a note. */
function markWords(request: StepRequest): StepMark {
  const { so, note } = request.step;
  if (so.length > 0) {
    const concluded = concludedBy(request, { equations: [] });
    return { ...concluded, verdict: concluded.standing };
  }
  return note === undefined
    ? unread('step', 'The step says neither a sum nor a value, and nothing is written.')
    : { verdict: 'right', findings: [], remarks: [] };
}

function concludedBy(
  request: StepRequest,
  drawn: Pick<Drawn, 'equations' | 'comesTo'>,
): Conclusions {
  const texts = request.step.so.map(({ text }) => text);
  return markConclusions(request, texts, {
    ...drawn,
    takesMagnitude: false,
    isLineRight: true,
  });
}

/** The line as an equation where it holds an unknown: `2 MB (40 ft) = -6000 kip ft^2`. */
function equationsIn(
  line: WrittenLine,
  { context, worker }: StepRequest,
): Drawn['equations'] {
  const { terms } = termsOfLine(line, ownMeaningsFor(context, worker));
  const equation = terms === undefined ? undefined : ownEquation(terms);
  return equation === undefined || equation.shares.size === 0 ? [] : [equation];
}

interface WorkedLinks {
  readonly line: WrittenLine;
  readonly findings: readonly Finding[];
  /** What the line comes to. */
  readonly value?: OwnValue;
  /** The symbol that it defines. */
  readonly name?: string;
  /** True where it goes on from a value that an earlier step got wrong. */
  readonly isCarried: boolean;
}

/** Every link against the one before, and the symbol against the member. */
function workLinks(line: WrittenLine, request: StepRequest): WorkedLinks | StepMark {
  const name = definedName(line);
  const declared =
    name === undefined ? undefined : meaningsFor(request.context, request.worker)(name);
  let before = declaredValue(declared);
  let isFirst = before !== undefined;
  let [first, isCarried]: [OwnValue | undefined, boolean] = [undefined, false];
  const findings: Finding[] = [];
  for (const link of line.links.slice(name === undefined ? 0 : 1)) {
    const { worths: here, fault } = worthsOf(link, request);
    if (fault !== undefined) return unread(fault.kind, faultWords(line.text, fault));
    if (here === undefined) continue;
    isCarried ||= here.isCarried;
    const term = line.text.slice(link.start, link.end).trim();
    const said = compared(request, { before, here, isFirst, unit: unitOf(link) });
    findings.push(...said.map((finding) => ({ ...finding, term })));
    first ??= before ?? here;
    before = here;
    isFirst = false;
  }
  const base = { line, findings, isCarried, ...(name === undefined ? {} : { name }) };
  // What it truly comes to is what stands first: the last link may have a slip.
  return before === undefined
    ? base
    : { ...base, value: { ...before, truth: (first ?? before).truth } };
}

/** The symbol that a line defines: `W = …`. */
function definedName({ links }: WrittenLine): string | undefined {
  const first: Written | undefined = links[0];
  return first?.kind === 'name' && links.length > 1 ? first.name : undefined;
}

/** What the member has for a declared symbol. */
function declaredValue(
  declared: (Meaning & { readonly truth?: number }) | undefined,
): OwnValue | undefined {
  if (declared === undefined || declared.kind === 'unclear') return undefined;
  const { dimension } = declared;
  const truth = declared.kind === 'known' ? declared.si : declared.truth;
  return truth === undefined ? undefined : { own: truth, truth, dimension };
}

/** What is said of a link beside the one before it, or beside what the member has; nothing where they agree by the truth or by the worker's own figures. */
function compared(
  request: StepRequest,
  of: {
    readonly before: OwnValue | undefined;
    readonly here: OwnValue;
    readonly isFirst: boolean;
    readonly unit: number;
  },
): readonly Finding[] {
  const { before, here, isFirst, unit } = of;
  if (before === undefined) return [];
  if (displayOf(before) !== displayOf(here))
    return [{ kind: 'unit', message: 'This does not measure what stands before it.' }];
  const isSame = (one: number, other: number): boolean =>
    isClose(one, other) || isCloseIn(unit, one, other);
  if (isSame(here.own, before.own) || isSame(here.truth, before.truth)) return [];
  const show = showAs(request, displayOf(before));
  return isFirst
    ? [{ kind: 'magnitude', message: `The member has ${show(before.truth)} for this.` }]
    : [
        {
          kind: 'arithmetic',
          message: `What stands before it comes to ${show(before.own)}.`,
        },
      ];
}
