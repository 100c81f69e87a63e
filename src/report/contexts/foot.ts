import type { Person, ProjectDefinition } from '../../project/index.ts';
import type { RunningFoot } from '../blocks.ts';

/** What the strip at the foot of every sheet says; open where nothing is given. */
export function footOf(definition: ProjectDefinition, subject: string): RunningFoot {
  const revision = definition.revisions.at(-1);
  return {
    project: definition.title,
    ...(definition.number === undefined ? {} : { number: definition.number }),
    subject,
    ...(revision === undefined ? {} : { revision: revision.mark }),
    ...(revision?.date === undefined ? {} : { revisionDate: revision.date }),
    prepared: initialsOf(definition.people.prepared),
    checked: initialsOf(definition.people.checked),
    status: definition.status.value,
  };
}

/** Initials and date, only where that person's own date stands: a program's mark is no signature. */
export function initialsOf(person: Person | undefined): string {
  return person?.date === undefined ? '' : `${person.initials} ${person.date}`;
}
