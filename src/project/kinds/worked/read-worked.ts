import type { Diagnostic } from '../../../diagnostics/index.ts';
import type {
  DefinitionFile,
  WorkedDefinition,
  WorkedReply,
  WorkedStep,
  WorkedText,
} from '../../definitions.ts';
import { openReading, type Finding, type Reading } from '../../reading.ts';
import { firstLine } from '../../shape/misfit.ts';
import { present } from '../../shape/present.ts';
import type { Placed } from '../../shape/shape.ts';
import { readYaml } from '../../yaml/read-yaml.ts';
import { entryOf, type MapTree, type Tree } from '../../yaml/tree.ts';
import {
  replyShape,
  stepShape,
  workedFile,
  type ReplyEntry,
  type StepEntry,
} from './worked-file.ts';

/**
 * Reads a file of worked steps. What somebody wrote is never the project's mistake: a step that
 * cannot be read carries its own faults, a file that cannot be read its own, and unknown keys are
 * remarks.
 */
export function readWorked(
  file: DefinitionFile,
  units: 'us' | 'si' = 'us',
): WorkedDefinition {
  const found: Diagnostic[] = [];
  const reading = openReading(file, found, { units });
  const tree = readYaml(reading);
  const base = { file: file.path, text: file.text, sha256: file.sha256 };
  if (tree?.kind !== 'map') {
    if (tree !== undefined) workedFile.read(tree, reading);
    return faulty(base, found[0]);
  }
  const lenient = leniently(reading);
  const { steps: stepTrees, replies: replyTrees, head } = apart(tree);
  const parts = workedFile.readParts(head, lenient.reading) ?? {};
  const remarks = lenient.remarks;
  const steps = stepTrees.map((one) => readStep(one, reading, remarks));
  const replies = replyTrees.flatMap((one) => readReply(one, reading, remarks) ?? []);
  const failed = lenient.faults[0];
  return present<WorkedDefinition>({
    ...base,
    fault: failed === undefined ? undefined : asDiagnostic(failed, 'error'),
    member: textOf(parts.member),
    loads: textOf(parts.loads),
    prepared: parts.prepared,
    signs: parts.signs ?? {},
    names: (parts.names ?? []).flatMap(({ name, value, at }) =>
      value === undefined ? [] : [{ name: name.value, means: value, span: at }],
    ),
    steps,
    replies,
    remarks: remarks.map((finding) => asDiagnostic(finding, 'remark')),
  });
}

/** A file of which nothing can be marked. */
export function faulty(
  base: { readonly file: string; readonly text: string; readonly sha256?: string },
  fault: Diagnostic | undefined,
): WorkedDefinition {
  return {
    ...base,
    ...(fault === undefined ? {} : { fault }),
    signs: {},
    names: [],
    steps: [],
    replies: [],
    remarks: [],
  };
}

/** The steps and replies by themselves, so that a broken one spoils no other. */
function apart(tree: MapTree): {
  readonly steps: readonly Tree[];
  readonly replies: readonly Tree[];
  readonly head: MapTree;
} {
  const listed = (key: string): readonly Tree[] => {
    const value = entryOf(tree, key);
    return value?.kind === 'list' ? value.items : [];
  };
  const isListed = (key: string): boolean =>
    (key === 'steps' || key === 'replies') && entryOf(tree, key)?.kind === 'list';
  return {
    steps: listed('steps'),
    replies: listed('replies'),
    head: { ...tree, entries: tree.entries.filter(({ key }) => !isListed(key.text)) },
  };
}

/** A reading that keeps what it is told: unknown keys as remarks, the rest as faults. */
interface Lenient {
  readonly reading: Reading;
  readonly faults: Finding[];
  readonly remarks: Finding[];
}

function leniently(reading: Reading, remarks: Finding[] = []): Lenient {
  const faults: Finding[] = [];
  const report = (finding: Finding): void => {
    const isRemark = finding.code === 'unknown-key' || finding.severity === 'remark';
    (isRemark ? remarks : faults).push(finding);
  };
  return { reading: { ...reading, report }, faults, remarks };
}

function readStep(tree: Tree, reading: Reading, remarks: Finding[]): WorkedStep {
  const lenient = leniently(reading, remarks);
  const parts: Partial<StepEntry> = stepShape.readParts(tree, lenient.reading) ?? {};
  return present<WorkedStep>({
    span: firstLine(tree.span, reading.text),
    sum: textOf(parts.sum),
    value: textOf(parts.value),
    part: textOf(parts.part),
    loads: textOf(parts.loads),
    write: textOf(parts.write),
    so: (parts.so ?? []).flatMap((one) => textOf(one) ?? []),
    note: parts.note,
    faults: lenient.faults.map(({ message, span }) => ({ message, span })),
  });
}

function readReply(
  tree: Tree,
  reading: Reading,
  remarks: Finding[],
): WorkedReply | undefined {
  const lenient = leniently(reading, remarks);
  const parts: Partial<ReplyEntry> = replyShape.readParts(tree, lenient.reading) ?? {};
  const { step, line, reply, closed } = parts;
  const { by, date } = closed ?? parts;
  const isSaid = reply !== undefined || closed !== undefined;
  if (!isSaid || [step, line, by, date].includes(undefined)) {
    // A reply without a name and a day is nobody's word: it is left out, and said so.
    remarks.push({
      code: 'missing-key',
      severity: 'remark',
      message: 'this reply is left out: it names no step, line, person or day',
      span: firstLine(tree.span, reading.text),
      hints: ['give step, line, reply, by and date, or step, line and closed'],
    });
    return undefined;
  }
  return present<WorkedReply>({
    step: step ?? 0,
    line: line ?? '',
    reply,
    by: by ?? '',
    date: date ?? '',
    closes: closed !== undefined,
    span: firstLine(tree.span, reading.text),
  });
}

function textOf(placed: Placed<string> | undefined): WorkedText | undefined {
  return placed === undefined ? undefined : { text: placed.value, span: placed.span };
}

function asDiagnostic(finding: Finding, severity: 'error' | 'remark'): Diagnostic {
  return {
    severity,
    code: finding.code,
    message: finding.message,
    span: finding.span,
    hints: finding.hints ?? [],
  };
}
