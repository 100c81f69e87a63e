import type { World } from '../../world/index.ts';
import { digestOfFile } from '../digest-of-file.ts';
import { payload } from '../payload-paths.ts';
import { readRecord } from '../record-file.ts';
import type { ArchiveRecord, RecordedPerson } from '../record.ts';
import type { ReadRow, RegisteredPerson } from './register-row.ts';

/** The row of a bag, from its record; the checksum is that of the whole zip. */
export async function readBagRow(
  world: World,
  path: string,
): Promise<ReadRow | { readonly problem: string }> {
  const { openBag } = await import('../../bag/index.ts');
  const { value: bag, diagnostics } = await openBag(world, path);
  if (bag === undefined)
    return { problem: diagnostics[0]?.message ?? 'it cannot be read' };
  // What the reader of zips throws at damaged bytes counts as no record.
  const bytes = await bag.read(payload.record).catch(() => undefined);
  bag.close();
  const reading =
    bytes === undefined ? undefined : readRecord(new TextDecoder().decode(bytes));
  return reading?.kind === 'record'
    ? rowOfRecord(reading.record, path, digestOfFile(world, path) ?? null)
    : { problem: 'it is a bag without a record that can be read' };
}

function rowOfRecord(
  record: ArchiveRecord,
  path: string,
  sha256: string | null,
): ReadRow {
  const { project, revision, revisions, status, people, totals, supersedes } = record;
  return {
    marks: revisions.map(({ mark }) => mark),
    row: {
      path,
      kind: 'bag',
      number: project.number,
      title: project.title,
      revision: revision?.mark ?? null,
      status,
      date: revision?.date ?? null,
      prepared: registered(people.prepared),
      checked: registered(people.checked),
      approved: registered(people.approved),
      bound: 'bound',
      sheets: totals.sheets,
      governing: totals.governing,
      sha256,
      supersedes,
      supersededBy: [],
      hasTwin: false,
      remarks: record.asIs.length === 0 ? [] : ['archived as it is'],
    },
  };
}

function registered(person: RecordedPerson | null): RegisteredPerson | null {
  return person === null ? null : { name: person.name, initials: person.initials };
}
