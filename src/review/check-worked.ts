import type { DerivedMember } from '../derivation/index.ts';
import { indexLines, placeIn, type Diagnostic } from '../diagnostics/index.ts';
import type { Project, WorkedDefinition } from '../project/index.ts';
import { commentsOn } from './comments.ts';
import type { MarkedFile, MarkedStep, MarkSummary } from './marked.ts';
import { casesOf } from './marking-context.ts';
import { markFile } from './marking/mark-file.ts';

/** Marks every file of worked steps of a project, in the order of their names. One that cannot be marked says why, and the others stand. */
export function checkWorked(
  project: Project,
  members: readonly DerivedMember[],
): readonly MarkedFile[] {
  return project.worked.map((file) => checkFile(project, members, file));
}

function checkFile(
  project: Project,
  members: readonly DerivedMember[],
  file: WorkedDefinition,
): MarkedFile {
  const base = {
    file: file.file,
    ...(file.member === undefined ? {} : { member: file.member.text }),
    ...(file.prepared === undefined ? {} : { prepared: file.prepared }),
    isLoadsChosen: false,
    steps: [],
    summary: summaryOf([]),
    comments: [],
    remarks: file.remarks,
  };
  const fault = (diagnostic: Diagnostic): MarkedFile => ({
    ...base,
    fault: diagnostic,
  });
  if (file.fault !== undefined) return fault(file.fault);
  const member = members.find((one) =>
    one.kind === 'derived'
      ? one.work.definition.mark === file.member?.text
      : one.mark === file.member?.text,
  );
  if (member?.kind !== 'derived') return fault(noMember(file, member !== undefined));
  const { work } = member;
  const lines = indexLines(file.text);
  const lineOf = (offset: number): number => placeIn(lines, offset).line;
  const marked = markFile(file, { project, work, lineOf });
  if (marked === undefined) return fault(noLoading(file));
  const { definition } = work;
  const against = project.files.find(({ path }) => path === definition.file);
  return {
    ...base,
    loads: marked.mark,
    isLoadsChosen: file.loads === undefined && casesOf(work).length > 1,
    steps: marked.steps,
    summary: summaryOf(marked.steps),
    comments: commentsOn(file, marked.steps),
    ...(against === undefined
      ? {}
      : { against: { file: against.path, sha256: against.sha256 } }),
  };
}

function summaryOf(steps: readonly MarkedStep[]): MarkSummary {
  const count = (verdict: MarkedStep['verdict']): number =>
    steps.filter((step) => step.verdict === verdict).length;
  return {
    right: count('right'),
    wrong: count('wrong'),
    follows: count('follows'),
    unread: count('unread'),
  };
}

function noMember({ member, file }: WorkedDefinition, isUnsolved: boolean): Diagnostic {
  const mark = member?.text ?? '';
  return {
    severity: 'error',
    code: isUnsolved ? 'depends-on-unsolved' : 'unknown-member',
    message: isUnsolved
      ? `${mark} could not be solved, so nothing of ${file} can be marked`
      : `no member ${mark} is known`,
    ...(member === undefined ? {} : { span: member.span }),
    hints: [isUnsolved ? `mend ${mark} first` : 'name a member of this project'],
  };
}

function noLoading({ loads }: WorkedDefinition): Diagnostic {
  return {
    severity: 'error',
    code: 'unknown-entry',
    message: `no case or combination \`${loads?.text ?? ''}\` is known`,
    ...(loads === undefined ? {} : { span: loads.span }),
    hints: ['name a case, a combination, or all'],
  };
}
