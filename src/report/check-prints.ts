import type { DerivedMember } from '../derivation/index.ts';
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
export function bindsCheckPrints({ definition }: Project): boolean {
  const status = definition.status.value;
  return status === 'preliminary' || status === 'for review';
}
