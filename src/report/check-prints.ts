import type { DerivedMember } from '../derivation/index.ts';
import type { Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';
import { checkWorked, type MarkedFile } from '../review/index.ts';

/** Worked files with their marks. Where only some members were asked for, theirs. */
export function checkPrints(
  project: Project,
  members: readonly DerivedMember[],
  marks?: readonly string[],
): readonly MarkedFile[] {
  const isAskedFor = (mark: string | undefined): boolean =>
    marks === undefined || (mark !== undefined && marks.includes(mark));
  const worked = project.worked.filter(({ member }) => isAskedFor(member?.text));
  return worked.length === 0 ? [] : checkWorked({ ...project, worked }, members);
}

/**
 * Whether check prints are bound with the sheets, as long as the package is one to be commented on; of
 * an issued, superseded or void one they are a file of their own.
 */
export function bindsCheckPrints({ definition }: Project): boolean {
  const status = definition.status.value;
  return status === 'preliminary' || status === 'for review';
}

/** A remark where the check prints of a package are not in it, and where they are. */
export function workedLeftOut(
  project: Project,
  marked: readonly MarkedFile[],
): readonly Diagnostic[] {
  const count = marked.length;
  if (count === 0 || bindsCheckPrints(project)) return [];
  const what = count === 1 ? 'one file' : `${count} files`;
  return [
    {
      severity: 'remark',
      code: 'worked-left-out',
      message: `the package is ${project.definition.status.value}: the check prints of ${what} are no part of it, and bound on their own`,
      hints: ['keep check-prints.pdf beside the package'],
    },
  ];
}

/** A remark for each worked file that could not be marked, with its place: it stops nothing else. */
export function unmarkedFiles(marked: readonly MarkedFile[]): readonly Diagnostic[] {
  return marked.flatMap(({ fault }) =>
    fault === undefined
      ? []
      : [
          {
            ...fault,
            severity: 'remark' as const,
            message: `the steps are not marked: ${fault.message}`,
          },
        ],
  );
}
