import type { Dimension } from '../../units/index.ts';
import { linearForm, type LinearForm } from '../reading/linear-form.ts';
import { readLine } from '../reading/read-line.ts';
import type { WrittenLine } from '../reading/written.ts';
import { isClose } from '../matching/closeness.ts';
import type { Finding } from '../verdict.ts';
import { markConclusions, type Conclusions } from './mark-conclusions.ts';
import { displayOf, showAs } from './mark-equation.ts';
import { meaningsFor, symbolsOf } from './meanings.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';

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
  const [line] = read.readings;
  if (line === undefined) return unread('syntax', 'Nothing is written.');
  const worked = workLinks(line, request);
  if ('verdict' in worked) return worked;
  const { findings, value, name } = worked;
  const isOwn = name !== undefined && meaningsFor(context, worker)(name) === undefined;
  if (isOwn && value !== undefined) worker.values.set(name, value);
  const concluded = concludedBy(request, value);
  const isWrong = findings.length > 0 || concluded.standing === 'wrong';
  const isUnread = concluded.standing === 'unread';
  return {
    verdict: isWrong && !isUnread ? 'wrong' : concluded.standing,
    findings: [...findings, ...concluded.findings],
    remarks: concluded.remarks,
  };
}

/** A step with nothing written: its conclusions alone, or a note. */
function markWords(request: StepRequest): StepMark {
  const { so, note } = request.step;
  if (so.length > 0) {
    const concluded = concludedBy(request);
    return { ...concluded, verdict: concluded.standing };
  }
  return note === undefined
    ? unread('step', 'The step says neither a sum nor a value, and nothing is written.')
    : { verdict: 'right', findings: [], remarks: [] };
}

function concludedBy(request: StepRequest, comesTo?: Worth): Conclusions {
  const texts = request.step.so.map(({ text }) => text);
  return markConclusions(request, texts, {
    equations: [],
    takesMagnitude: false,
    ...(comesTo === undefined ? {} : { comesTo }),
  });
}

/** A value with what it measures. */
interface Worth {
  readonly si: number;
  readonly dimension: Dimension;
}

interface WorkedLinks {
  readonly findings: readonly Finding[];
  /** What the line comes to. */
  readonly value?: Worth;
  /** The symbol that it defines. */
  readonly name?: string;
}

/** Every link against the one before, and the symbol against the member. */
function workLinks(line: WrittenLine, request: StepRequest): WorkedLinks | StepMark {
  const meanings = meaningsFor(request.context, request.worker);
  const name = definedName(line);
  const declared = name === undefined ? undefined : meanings(name);
  const findings: Finding[] = [];
  let before: Worth | undefined = declared?.kind === 'known' ? declared : undefined;
  const links = line.links.slice(name === undefined ? 0 : 1);
  for (const [index, link] of links.entries()) {
    const { form, fault } = linearForm(link, meanings);
    if (fault !== undefined) return unread(fault.kind, faultWords(line.text, fault));
    const here = worthOfForm(form);
    if (here === undefined) continue;
    const term = line.text.slice(link.start, link.end);
    const said = compared(request, { before, here, isFirst: index === 0 });
    findings.push(...said.map((finding) => ({ ...finding, term })));
    before = here;
  }
  const value = before === undefined ? {} : { value: before };
  return { findings, ...value, ...(name === undefined ? {} : { name }) };
}

/** The symbol that a line defines: `W = …`. */
function definedName({ links }: WrittenLine): string | undefined {
  const [first] = links;
  return first?.kind === 'name' && links.length > 1 ? first.name : undefined;
}

/** The value of a form that is a number with a dimension; undefined for any other. */
function worthOfForm({ constant, dimension, unknowns }: LinearForm): Worth | undefined {
  return unknowns.size > 0 || dimension === undefined
    ? undefined
    : { si: constant, dimension };
}

/** What is said of a link beside the one before it, or beside what the member has; nothing where they agree. */
function compared(
  request: StepRequest,
  of: {
    readonly before: Worth | undefined;
    readonly here: Worth;
    readonly isFirst: boolean;
  },
): readonly Finding[] {
  const { before, here, isFirst } = of;
  if (before === undefined) return [];
  if (displayOf(before) !== displayOf(here))
    return [{ kind: 'unit', message: 'This does not measure what stands before it.' }];
  if (isClose(here.si, before.si)) return [];
  const right = showAs(request, displayOf(before))(before.si);
  return isFirst
    ? [{ kind: 'magnitude', message: `The member has ${right} for this.` }]
    : [{ kind: 'arithmetic', message: `What stands before it comes to ${right}.` }];
}
