import type { Person, ProjectDefinition, Worker } from '../../project/index.ts';
import type { RunningFoot } from '../blocks.ts';

/** Who prepared and checked what stands on a sheet, as the foot prints it; open where empty. */
export type Initials = Pick<RunningFoot, 'prepared' | 'checked'>;

/** What the strip at the foot of every sheet says; open where nothing is given. The package's own people unless others are named. */
export function footOf(
  definition: ProjectDefinition,
  subject: string,
  initials: Initials = {
    prepared: initialsOf(definition.people.prepared),
    checked: initialsOf(definition.people.checked),
  },
): RunningFoot {
  const revision = definition.revisions.at(-1);
  return {
    project: definition.title,
    ...(definition.number === undefined ? {} : { number: definition.number }),
    subject,
    ...(revision === undefined ? {} : { revision: revision.mark }),
    ...(revision?.date === undefined ? {} : { revisionDate: revision.date }),
    ...initials,
    status: definition.status.value,
  };
}

/** Initials and date, only where that person's own date stands: a program's mark is no signature. */
export function initialsOf(person: Person | Worker | undefined): string {
  return person?.date === undefined || person.initials === undefined
    ? ''
    : `${person.initials} ${person.date}`;
}
