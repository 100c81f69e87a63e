import type { DerivedMember } from '../derivation/index.ts';
import { nearest, type Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';

/** One error for each mark that was asked for and is no member's; none where the project cannot be read. */
export function unknownMarks(
  {
    project,
    members,
  }: { readonly project?: Project; readonly members: readonly DerivedMember[] },
  marks: readonly string[],
): readonly Diagnostic[] {
  if (project === undefined) return [];
  const known = members.map(markOf);
  return marks
    .filter((mark) => !known.includes(mark))
    .map((mark) => {
      const near = nearest(mark, known);
      return {
        severity: 'error',
        code: 'unknown-member',
        message: `the project has no member ${mark}`,
        hints: [
          near === undefined ? `its members: ${known.join(', ')}` : `write ${near}`,
        ],
      };
    });
}

/**
 * The diagnostics that concern the members asked for and the project as a whole; all of them where
 * one of those members leans on another that could not be solved, or where no marks are given.
 */
export function concerning(
  diagnostics: readonly Diagnostic[],
  marks: readonly string[] | undefined,
): readonly Diagnostic[] {
  if (marks === undefined) return diagnostics;
  const chosen = diagnostics.filter(
    ({ member }) => member === undefined || marks.includes(member),
  );
  return chosen.some(({ code }) => code === 'depends-on-unsolved')
    ? diagnostics
    : chosen;
}

/** The members asked for, in sheet order; all where no marks are given. */
export function chosenMembers(
  members: readonly DerivedMember[],
  marks: readonly string[] | undefined,
): readonly DerivedMember[] {
  return marks === undefined
    ? members
    : members.filter((member) => marks.includes(markOf(member)));
}

/** The mark of a member, narrated or not. */
export function markOf(member: DerivedMember): string {
  return member.kind === 'derived' ? member.derivation.mark : member.mark;
}
