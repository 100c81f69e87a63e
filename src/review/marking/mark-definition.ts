import { linearForm } from '../reading/linear-form.ts';
import { readLine } from '../reading/read-line.ts';
import type { WrittenLine } from '../reading/written.ts';
import { isClose } from '../matching/closeness.ts';
import type { Finding } from '../verdict.ts';
import { markConclusions } from './mark-conclusions.ts';
import { displayOf, showAs } from './mark-equation.ts';
import { meaningsFor, symbolsOf } from './meanings.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';

/**
 * Marks a step that is neither a sum nor a value: `W = 0.25 kip/ft * 21 ft`. Its arithmetic and its
 * units are judged, and a declared symbol against what the member has for it.
 */
export function markDefinition(request: StepRequest): StepMark {
  const { step, worker, context } = request;
  const texts = step.so.map(({ text }) => text);
  if (step.write === undefined) {
    if (texts.length === 0)
      return step.note === undefined
        ? unread(
            'step',
            'The step says neither a sum nor a value, and nothing is written.',
          )
        : { verdict: 'right', findings: [], remarks: [] };
    const concluded = markConclusions(request, texts, {
      equations: [],
      takesMagnitude: false,
    });
    return { ...concluded, verdict: concluded.standing };
  }
  const read = readLine(step.write.text, symbolsOf(worker));
  if (read.fault !== undefined)
    return unread(read.fault.kind, faultWords(step.write.text, read.fault));
  const [line] = read.readings;
  if (line === undefined) return unread('syntax', 'Nothing is written.');
  const worked = workLinks(line, request);
  if ('verdict' in worked) return worked;
  const { findings, value, name } = worked;
  if (
    name !== undefined &&
    value !== undefined &&
    meaningsFor(context, worker)(name) === undefined
  )
    worker.values.set(name, value);
  const concluded = markConclusions(request, texts, {
    equations: [],
    takesMagnitude: false,
  });
  const isWrong = findings.length > 0 || concluded.standing === 'wrong';
  return {
    verdict:
      concluded.standing === 'unread'
        ? 'unread'
        : isWrong
          ? 'wrong'
          : concluded.standing,
    findings: [...findings, ...concluded.findings],
    remarks: concluded.remarks,
  };
}

interface WorkedLinks {
  readonly findings: readonly Finding[];
  /** What the line comes to. */
  readonly value?: {
    readonly si: number;
    readonly dimension: NonNullable<
      ReturnType<typeof linearForm>['form']
    >['dimension'] &
      object;
  };
  /** The symbol that it defines. */
  readonly name?: string;
}

/** Every link against the one before, and the symbol against the member. */
function workLinks(line: WrittenLine, request: StepRequest): WorkedLinks | StepMark {
  const { context, worker } = request;
  const meanings = meaningsFor(context, worker);
  const [first] = line.links;
  const defines =
    first?.kind === 'name' && line.links.length > 1 ? first.name : undefined;
  const declared = defines === undefined ? undefined : meanings(defines);
  const findings: Finding[] = [];
  let before:
    | { si: number; dimension: object & Parameters<typeof displayOf>[0]['dimension'] }
    | undefined = declared?.kind === 'known' ? declared : undefined;
  for (const [index, link] of line.links.entries()) {
    if (index === 0 && defines !== undefined) continue;
    const { form, fault } = linearForm(link, meanings);
    if (fault !== undefined) return unread(fault.kind, faultWords(line.text, fault));
    if (form.unknowns.size > 0 || form.dimension === undefined) continue;
    const here = { si: form.constant, dimension: form.dimension };
    const term = line.text.slice(link.start, link.end);
    const isFirst = index === (defines === undefined ? 0 : 1);
    if (before !== undefined && displayOf(before) !== displayOf(here))
      findings.push({
        kind: 'unit',
        term,
        message: 'This does not measure what stands before it.',
      });
    else if (before !== undefined && !isClose(here.si, before.si)) {
      const right = showAs(request, displayOf(before))(before.si);
      findings.push(
        isFirst
          ? {
              kind: 'magnitude',
              term,
              message: `The member has ${right} for ${defines ?? 'it'}.`,
            }
          : {
              kind: 'arithmetic',
              term,
              message: `What stands before it comes to ${right}.`,
            },
      );
    }
    before = here;
  }
  return {
    findings,
    ...(before === undefined ? {} : { value: before }),
    ...(defines === undefined ? {} : { name: defines }),
  };
}
