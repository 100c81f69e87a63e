import type { Person, ProjectDefinition, Revision } from '../project/index.ts';
import type { Results } from '../results/index.ts';
import { closureOf, totalsOf } from './figures-of.ts';
import type { ArchiveRecord, RecordedPerson, RecordedRevision } from './record.ts';

/** What a record is made from. */
export interface Recorded {
  readonly definition: ProjectDefinition;
  readonly results: Results;
  /** Sheets of the package. */
  readonly sheets: number;
  readonly program: ArchiveRecord['program'];
  /** SHA-256 of the bag that this one replaces; null where it is not at hand. */
  readonly supersededSha256: string | null;
  readonly asIs: readonly string[];
  readonly signed: ArchiveRecord['signed'];
}

/** The record of a package: whose it is, where it stands, what it replaces, and its figures in short. */
export function recordOf({ definition, results, ...about }: Recorded): ArchiveRecord {
  const { prepared, checked, approved } = definition.people;
  const revisions = definition.revisions.map(recordedRevision);
  return {
    format: 1,
    program: { name: about.program.name, version: about.program.version },
    project: {
      number: definition.number ?? null,
      title: definition.title,
      discipline: definition.discipline.value,
      client: definition.client ?? null,
      location: definition.location ?? null,
      office: definition.office ?? null,
      stage: definition.stage ?? null,
    },
    status: definition.status.value,
    revision: revisions.at(-1) ?? null,
    revisions,
    people: {
      prepared: recordedPerson(prepared),
      checked: recordedPerson(checked),
      approved: recordedPerson(approved),
    },
    supersedes: supersededBy(definition, about.supersededSha256),
    totals: totalsOf(results, about.sheets),
    closure: closureOf(results),
    asIs: about.asIs,
    signed: about.signed,
  };
}

function recordedRevision(revision: Revision): RecordedRevision {
  return {
    mark: revision.mark,
    date: revision.date ?? null,
    note: revision.note ?? null,
    reason: revision.reason ?? null,
    prepared: revision.prepared ?? null,
    checked: revision.checked ?? null,
    sheets: revision.sheets ?? null,
  };
}

function recordedPerson(person: Person | undefined): RecordedPerson | null {
  if (person === undefined) return null;
  const { name, initials, date = null, licence = null } = person;
  return { name, initials, date, licence };
}

function supersededBy(
  { supersedes }: ProjectDefinition,
  sha256: string | null,
): ArchiveRecord['supersedes'] {
  if (supersedes === undefined) return null;
  const { number = null, revision = null, bag = null } = supersedes;
  return { number, revision, bag, sha256 };
}
