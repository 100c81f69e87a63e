import type { DerivedMember } from '../derivation/index.ts';
import type { Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';
import { checkWorked, type MarkedFile } from '../review/index.ts';

/**
 * The worked files that a package holds as check prints: all while it is preliminary or for review,
 * none of an issued, superseded or void one. Where only some members were asked for, theirs.
 */
export function checkPrints(
  project: Project,
  members: readonly DerivedMember[],
  marks?: readonly string[],
): readonly MarkedFile[] {
  if (!bindsCheckPrints(project)) return [];
  const isAskedFor = (mark: string | undefined): boolean =>
    marks === undefined || (mark !== undefined && marks.includes(mark));
  const worked = project.worked.filter(({ member }) => isAskedFor(member?.text));
  return worked.length === 0 ? [] : checkWorked({ ...project, worked }, members);
}

/** Whether the package is still one to be commented on. */
function bindsCheckPrints({ definition }: Project): boolean {
  const status = definition.status.value;
  return status === 'preliminary' || status === 'for review';
}

/** A remark where worked steps lie in the folder of a package that is past commenting on, and are left out of it. */
export function workedLeftOut(project: Project): readonly Diagnostic[] {
  const count = project.worked.length;
  if (count === 0 || bindsCheckPrints(project)) return [];
  const what = count === 1 ? 'one file' : `${count} files`;
  return [
    {
      severity: 'remark',
      code: 'worked-left-out',
      message: `the package is ${project.definition.status.value}: the worked steps of ${what} are left out of it`,
      hints: ['mark them by `sumzero check`'],
    },
  ];
}
