import type { BeamWork } from '../../derivation/index.ts';
import type { Project, WorkedDefinition, WorkedStep } from '../../project/index.ts';
import type { StatementLine } from '../../equation/index.ts';
import type { MarkedStep } from '../marked.ts';
import {
  casesOf,
  loadingsOf,
  markingContext,
  type MarkingContext,
} from '../marking-context.ts';
import { freshEffort, shareOf, sheetEffort, type Effort } from '../matching/effort.ts';
import { asEquation } from '../reading/as-equation.ts';
import { lineReader, type LineReader } from '../reading/line-reader.ts';
import { readLine } from '../reading/read-line.ts';
import { rememberConclusions } from './own-symbols.ts';
import { markDefinition } from './mark-definition.ts';
import { markSum } from './mark-sum.ts';
import { markValue } from './mark-value.ts';
import { symbolsOf } from './meanings.ts';
import type { OwnEquation } from './solve-for.ts';
import { unread, type StepMark, type StepRequest } from './step-mark.ts';
import { withRepeats, type StepWithSlips } from './with-repeats.ts';
import { openWorker, type Worker } from './worker.ts';

/** What marking needs besides the file. */
export interface FileSetting {
  readonly project: Project;
  readonly work: BeamWork;
  /** The line of an offset in the file, counted from 1. */
  readonly lineOf: (offset: number) => number;
}

/** The steps of a file marked under one loading. */
export interface MarkedUnder {
  readonly mark: string;
  readonly steps: readonly MarkedStep[];
}

/**
 * Marks the steps of a file: under the loading that it names, else under the only case, else under
 * the one that leaves the fewest slips. Undefined where it names one that does not exist. All
 * lines draw on one effort, under all loadings that are tried.
 */
export function markFile(
  file: WorkedDefinition,
  setting: FileSetting,
  effort: Effort = freshEffort(sheetEffort),
): MarkedUnder | undefined {
  const { work } = setting;
  const read = lineReader();
  const [only, ...others] = casesOf(work);
  const stated = file.loads?.text ?? (others.length === 0 ? only : undefined);
  if (stated !== undefined)
    return closed(markUnder(file, { ...setting, effort, read }, stated));
  const marks = loadingsOf(work);
  const all = marks.flatMap((mark, index) => {
    // Each loading that is tried has as much as the next: which one fits is not known yet.
    const share = shareOf(effort, marks.length - index);
    return markUnder(file, { ...setting, effort: share, read }, mark) ?? [];
  });
  const best = all.reduce<OpenMarks | undefined>(
    (least, one) =>
      least === undefined || slipsIn(one) < slipsIn(least) ? one : least,
    undefined,
  );
  return closed(best);
}

/** The steps under one loading, before it is known whether that one is taken. */
interface OpenMarks {
  readonly mark: string;
  readonly steps: readonly StepWithSlips[];
}

function closed(open: OpenMarks | undefined): MarkedUnder | undefined {
  return open === undefined ? undefined : { ...open, steps: withRepeats(open.steps) };
}

function slipsIn({ steps }: OpenMarks): number {
  return steps.reduce(
    (sum, { verdict, findings }) =>
      sum + (verdict === 'right' ? 0 : 1) + (verdict === 'right' ? 0 : findings.length),
    0,
  );
}

function markUnder(
  file: WorkedDefinition,
  setting: FileSetting & { readonly effort: Effort; readonly read: LineReader },
  mark: string,
): OpenMarks | undefined {
  const contexts = new Map<string, MarkingContext | undefined>();
  const contextFor = (name: string): MarkingContext | undefined => {
    if (!contexts.has(name))
      contexts.set(name, markingContext(setting.project, setting.work, name));
    return contexts.get(name);
  };
  if (contextFor(mark) === undefined) return undefined;
  // What is known of the worker under one loading is nothing to another.
  const workers = new Map<string, { worker: Worker; pending: OwnEquation[] }>();
  const steps = file.steps.map((step, index): StepWithSlips => {
    const loads = step.loads?.text ?? mark;
    const context = contextFor(loads);
    const base = { step: index + 1, line: setting.lineOf(step.span.start), loads };
    if (context === undefined)
      return describe(
        step,
        undefined,
        base,
        unread('step', `There is no case or combination ${loads}.`),
      );
    const open = workers.get(loads) ?? {
      worker: openWorker(context, file),
      pending: [],
    };
    workers.set(loads, open);
    const request = {
      context,
      worker: open.worker,
      step,
      number: index + 1,
      also: new Map(),
      effort: setting.effort,
      read: setting.read,
    };
    return describe(step, open.worker, base, markStep(request, open.pending));
  });
  return { mark, steps };
}

function markStep(request: StepRequest, pending: OwnEquation[]): StepMark {
  const marked = markKind(request, pending);
  rememberConclusions(request);
  return marked;
}

function markKind(request: StepRequest, pending: OwnEquation[]): StepMark {
  const { step } = request;
  const [fault] = step.faults;
  if (fault !== undefined) return unread('step', `${fault.message}.`);
  if (step.sum !== undefined && step.value !== undefined)
    return unread('step', '`sum` and `value` cannot stand together: write two steps.');
  if (step.sum !== undefined) return markSum(request, step.sum, pending);
  if (step.value !== undefined) return markValue(request, step.value);
  return markDefinition(request);
}

type Base = Pick<MarkedStep, 'step' | 'line' | 'loads'>;

function describe(
  step: WorkedStep,
  worker: Worker | undefined,
  base: Base,
  { verdict, findings, remarks, expected }: StepMark,
): StepWithSlips {
  const symbols = worker === undefined ? undefined : symbolsOf(worker);
  const claim = step.sum?.text ?? step.value?.text;
  const texts = [step.write, ...step.so].flatMap((one) =>
    one === undefined ? [] : [one.text],
  );
  return {
    ...base,
    ...(claim === undefined ? {} : { claim }),
    ...(step.part === undefined ? {} : { part: step.part.text }),
    ...(step.write === undefined ? {} : { written: step.write.text }),
    concluded: step.so.map(({ text }) => text),
    ...(step.note === undefined ? {} : { note: step.note }),
    readLines: () =>
      symbols === undefined ? [] : texts.flatMap((text) => equationOf(text, symbols)),
    verdict,
    findings,
    remarks,
    ...(expected === undefined ? {} : { expected }),
  };
}

function equationOf(
  text: string,
  symbols: readonly string[],
): readonly StatementLine[] {
  const [line] = readLine(text, symbols).readings ?? [];
  const equation = line === undefined ? undefined : asEquation(line);
  return equation === undefined ? [] : [equation];
}
