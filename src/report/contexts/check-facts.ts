import type { Statement, StatementLine } from '../../equation/index.ts';
import type { WorkedDefinition } from '../../project/index.ts';
import type { MarkedFile, MarkedStep, Verdict } from '../../review/index.ts';
import type { ReportInput } from '../report-input.ts';
import { inQuotes, registerOf } from './register-facts.ts';
import { anchorOf, nameOf } from './package-facts.ts';

/** The anchor of a worked file's check print. */
export function checkAnchorOf({ file }: Pick<MarkedFile, 'file'>): string {
  return `check-${stemOf(file)}`;
}

/** The anchor of a step on a check print; no name of a file holds a slash. */
export function stepAnchorOf(file: Pick<MarkedFile, 'file'>, step: number): string {
  return `${checkAnchorOf(file)}/${step}`;
}

/** What the index and the foot call a check print. */
export function checkTitleOf({ file, member }: MarkedFile): string {
  const stem = stemOf(file);
  return member === undefined
    ? `Check print of ${stem}`
    : `Check print of ${stem}, member ${member}`;
}

const stemOf = (file: string): string =>
  (file.split('/').at(-1) ?? file).replace(/\.ya?ml$/, '');

/** Marks in words, as they stand in the margin. */
const words: Readonly<Record<Verdict, string>> = {
  right: 'right',
  wrong: 'wrong',
  follows: 'follows',
  unread: 'not read',
};

/** Facts of a check print: whose work it is, what it was marked against, and each step with its mark. */
export function checkFacts(file: MarkedFile, input: ReportInput): object {
  const { project } = input;
  const own = project.worked.find((one) => one.file === file.file);
  return {
    ...file,
    ...memberFacts(file, input),
    ...countFacts(file),
    fault: file.fault === undefined ? undefined : saidPlainly(file.fault),
    remarks: file.remarks.map(saidPlainly),
    anchor: checkAnchorOf(file),
    title: checkTitleOf(file),
    by: file.prepared?.name ?? file.prepared?.initials,
    revision: project.definition.revisions.at(-1)?.mark,
    sha256: own?.sha256,
    names: own?.names,
    signs: signsOf(own),
    loadsTitle: project.loads.cases.find(({ mark }) => mark === file.loads)?.title,
    steps: file.steps.map((step) => stepFacts(step, file, input)),
  };
}

/** Facts of the first sheet of check prints that are bound on their own: which package, which files. */
export function checkCoverFacts(
  { project, worked }: ReportInput,
  prints: readonly { readonly anchor: string; readonly title: string }[],
): object {
  const { definition, files } = project;
  const revision = definition.revisions.at(-1);
  return {
    number: definition.number,
    title: definition.title,
    status: definition.status.value,
    revision: revision?.mark,
    date: revision?.date,
    count: worked.length,
    prints,
    files: files.map(({ path, sha256 }) => ({ path, sha256 })),
  };
}

/** The member that the steps are for; nothing where the file names none. */
function memberFacts({ member }: MarkedFile, { project }: ReportInput): object {
  if (member === undefined) return {};
  const title = project.members.find(({ mark }) => mark === member)?.title;
  return { memberName: nameOf(member, title), memberAnchor: anchorOf(member) };
}

/** How many steps got which mark, and which marks the sheet has to explain. */
function countFacts({ steps, summary }: MarkedFile): object {
  return {
    count: steps.length,
    isAllRight: steps.length > 0 && summary.right === steps.length,
    marks: (['right', 'wrong', 'follows', 'unread'] as const)
      .filter((verdict) => summary[verdict] > 0)
      .map((verdict) => `${summary[verdict]} ${words[verdict]}`),
    hasMark: {
      follows: summary.follows > 0,
      setOff: steps.some(({ expected }) => (expected?.differing.length ?? 0) > 0),
    },
  };
}

/** The worker's own positive senses, where the file states some. */
function signsOf(own: WorkedDefinition | undefined): readonly object[] {
  const { moments, vertical, horizontal } = own?.signs ?? {};
  const all = [
    { what: 'moments', positive: moments },
    { what: 'vertical', positive: vertical },
    { what: 'horizontal', positive: horizontal },
  ];
  return all.filter(({ positive }) => positive !== undefined);
}

const saidPlainly = <T extends { readonly message: string }>(one: T): T => ({
  ...one,
  message: inQuotes(one.message),
});

function stepFacts(step: MarkedStep, file: MarkedFile, input: ReportInput): object {
  const comment = registerOf(input).find(
    (row) => row.file === file.file && row.step === step.step,
  );
  const { lines, written, concluded } = step;
  const texts = [...(written === undefined ? [] : [written]), ...concluded];
  // Each text that can be read gives one line; where one cannot, all stand as they were written.
  const isTypeset = lines.length === texts.length;
  return {
    ...step,
    findings: step.findings.map(saidPlainly),
    mark: words[step.verdict],
    isRight: step.verdict === 'right',
    otherLoads: step.loads === file.loads ? undefined : step.loads,
    anchor: stepAnchorOf(file, step.step),
    statements: isTypeset ? statementsOf(lines) : [],
    texts: isTypeset ? [] : texts,
    belongs: belongsOf(step),
    comment: comment?.number,
  };
}

/** A statement for each line that stands by itself, so that a short conclusion is not pushed under the equals sign of a long equation. */
function statementsOf(lines: readonly StatementLine[]): readonly Statement[] {
  return lines.reduce<readonly Statement[]>((all, line) => {
    const last = all.at(-1);
    return line.left === undefined && last !== undefined
      ? [...all.slice(0, -1), { lines: [...last.lines, line] }]
      : [...all, { lines: [line] }];
  }, []);
}

/** The right line with the terms underlined that differ from what was written. */
function belongsOf({ expected }: MarkedStep): Statement | undefined {
  if (expected === undefined) return undefined;
  const { line, differing } = expected;
  const { left } = line;
  if (left?.kind !== 'sum') return { lines: [line] };
  const terms = left.terms.map((term, index) =>
    differing.includes(index) ? { ...term, isSetOff: true } : term,
  );
  return { lines: [{ ...line, left: { ...left, terms } }] };
}
