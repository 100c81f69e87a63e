import type { Diagnostic } from '../../diagnostics/index.ts';
import type { Person, ProjectDefinition } from '../../project/index.ts';

type Signed = Pick<ProjectDefinition, 'people' | 'revisions'>;

/**
 * The people of a package, a date beside a name only where it is one for the present revision. People
 * sign before a revision is dated as often as on that day, so what counts is that the date is later
 * than the revision before; one that stood beside the same name there is left over from it. A
 * date on or after the present revision's own always counts.
 */
export function peopleOfThisRevision(
  { people, revisions }: Signed,
  before?: Signed,
): ProjectDefinition['people'] {
  const own = revisions.at(-1)?.date;
  const past = [...revisions.slice(0, -1), ...(before?.revisions ?? [])].flatMap(
    ({ date }) => date ?? [],
  );
  const counts = ({ date }: Person, then: Person | undefined): boolean => {
    if (date === undefined || (own !== undefined && date >= own)) return true;
    return date !== then?.date && past.every((earlier) => date > earlier);
  };
  const present = (person: Person | undefined, then: Person | undefined) =>
    person === undefined || counts(person, then) ? person : undated(person);
  const { prepared, checked, approved } = people;
  return {
    ...given('prepared', present(prepared, before?.people.prepared)),
    ...given('checked', present(checked, before?.people.checked)),
    ...given('approved', present(approved, before?.people.approved)),
  };
}

function undated({ name, initials, licence }: Person): Person {
  return { name, initials, ...(licence === undefined ? {} : { licence }) };
}

function given(
  role: keyof ProjectDefinition['people'],
  person: Person | undefined,
): ProjectDefinition['people'] {
  return person === undefined ? {} : { [role]: person };
}

/** A remark for each date beside a name that does not count, so that a box left open surprises nobody. */
export function datesLeftOver(
  { people, revisions }: Signed,
  counting: ProjectDefinition['people'],
): readonly Diagnostic[] {
  const mark = revisions.at(-1)?.mark;
  const roles = ['prepared', 'checked', 'approved'] as const;
  return roles.flatMap((role): readonly Diagnostic[] => {
    const person = people[role];
    if (person?.date === undefined || counting[role]?.date !== undefined) return [];
    const of = mark === undefined ? 'this revision' : `revision ${mark}`;
    return [
      {
        severity: 'remark',
        code: 'date-left-over',
        message: `the date ${person.date} beside ${person.name} (${role}) is from the revision before, and does not count for ${of}`,
        hints: [
          'write the person’s own date for this revision, or take the date out until there is one',
        ],
      },
    ];
  });
}
