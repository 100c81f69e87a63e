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
  const supersededBy = successorOf(definition);
  return {
    project: definition.title,
    ...(definition.number === undefined ? {} : { number: definition.number }),
    subject,
    ...(revision === undefined ? {} : { revision: revision.mark }),
    ...(revision?.date === undefined ? {} : { revisionDate: revision.date }),
    ...initials,
    status: definition.status.value,
    ...(supersededBy === undefined ? {} : { supersededBy }),
  };
}

/** The word across each sheet of a package that is not to be used. */
export function stampOf({ status }: ProjectDefinition): { readonly stamp?: string } {
  const { value } = status;
  return value === 'void' || value === 'superseded' ? { stamp: value } : {};
}

/** What replaces a superseded package, as one names it: `2031-014 B`; nothing where it is not named or the status is another. */
export function successorOf({
  status,
  number: own,
  supersededBy,
}: ProjectDefinition): string | undefined {
  if (status.value !== 'superseded' || supersededBy === undefined) return undefined;
  const { number = own, revision } = supersededBy;
  const isNamed = supersededBy.number !== undefined || revision !== undefined;
  return isNamed ? [number, revision].filter(isGiven).join(' ') : undefined;
}

const isGiven = (text: string | undefined): text is string => text !== undefined;

/** Initials and date, only where that person's own date stands: a program's mark is no signature. */
export function initialsOf(person: Person | Worker | undefined): string {
  return person?.date === undefined || person.initials === undefined
    ? ''
    : `${person.initials} ${person.date}`;
}
