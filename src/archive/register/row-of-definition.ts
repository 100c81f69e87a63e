import type { Person, ProjectDefinition } from '../../project/index.ts';
import { readResults, type Results } from '../../results/index.ts';
import { governingOf } from '../figures-of.ts';
import type { BoundState, ReadRow, RegisteredPerson } from './register-row.ts';

/** What is known of a folder or PDF besides its definition. */
export interface Found {
  readonly path: string;
  readonly kind: 'folder' | 'pdf';
  readonly bound: BoundState;
  readonly sheets: number | null;
  readonly results: Results | undefined;
  readonly sha256: string | null;
}

/** A row from a project's own words and the figures that were bound. */
export function rowOfDefinition(definition: ProjectDefinition, found: Found): ReadRow {
  const { people, revisions, supersedes } = definition;
  const last = revisions.at(-1);
  const { path, kind, bound, sheets, results, sha256 } = found;
  return {
    marks: revisions.map(({ mark }) => mark),
    row: {
      path,
      kind,
      number: definition.number ?? null,
      title: definition.title,
      revision: last?.mark ?? null,
      status: definition.status.value,
      date: last?.date ?? null,
      prepared: registered(people.prepared),
      checked: registered(people.checked),
      approved: registered(people.approved),
      bound,
      sheets,
      governing: results === undefined ? null : governingOf(results),
      sha256,
      supersedes:
        supersedes === undefined
          ? null
          : {
              number: supersedes.number ?? null,
              revision: supersedes.revision ?? null,
              bag: supersedes.bag ?? null,
              sha256: null,
            },
      supersededBy: [],
      hasTwin: false,
      remarks: [],
    },
  };
}

function registered(person: Person | undefined): RegisteredPerson | null {
  return person === undefined ? null : { name: person.name, initials: person.initials };
}

/** The figures of a results.json; undefined where the text is none. */
export function figuresIn(text: string | undefined): Results | undefined {
  const reading = text === undefined ? undefined : readResults(text);
  return reading?.kind === 'results' ? reading.results : undefined;
}
