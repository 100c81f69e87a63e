import type { ProjectDefinition } from '../../project/index.ts';
import { initialsOf } from '../contexts/foot.ts';
import type { RevisionInput } from '../report-input.ts';
import { peopleOfThisRevision } from './own-date.ts';

/** The check of the revision before, where it counts there and none of the present revision's own stands: `RT 2031-03-14, rev A`. */
export function keptCheck(
  definition: ProjectDefinition,
  { earlier }: RevisionInput,
): string | undefined {
  if (peopleOfThisRevision(definition, earlier).checked?.date !== undefined)
    return undefined;
  const initials = initialsOf(peopleOfThisRevision(earlier).checked);
  const mark = earlier.revisions.at(-1)?.mark;
  if (initials === '') return undefined;
  return mark === undefined ? initials : `${initials}, rev ${mark}`;
}
