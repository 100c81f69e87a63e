import type { Archived } from '../index.ts';
import { printable } from './paint.ts';

/** What the run of `archive` kept, a line a matter, their names in a column. */
export function archiveLines({
  sha256,
  record,
  files,
}: Pick<Archived, 'sha256' | 'record' | 'files'>): readonly string[] {
  const { revision, status, totals, supersedes, signed, asIs } = record;
  const rows: readonly (readonly [string, string | undefined])[] = [
    ['SHA-256', sha256],
    [
      'revision',
      [revision?.mark ?? 'none', status, revision?.date ?? undefined]
        .filter((one) => one !== undefined)
        .join(', '),
    ],
    ['sheets', `${totals.sheets}`],
    ['holds', holdings(files)],
    [
      'signed',
      signed === null
        ? undefined
        : signed.comparison === 'same start'
          ? 'begins with the bytes of package.pdf'
          : 'not compared with package.pdf',
    ],
    ['supersedes', supersedes === null ? undefined : replaced(supersedes)],
    ...asIs.map((reason) => ['as it is', reason] as const),
  ];
  return rows.flatMap(([name, words]) =>
    words === undefined ? [] : [`  ${name.padEnd(10)}  ${printable(words)}`],
  );
}

/** Files at the root of the payload by name, folders by how many files they hold. */
function holdings(files: readonly string[]): string {
  const folders = new Map<string, number>();
  const single = files.filter((path) => {
    const [folder = '', inside] = path.split('/');
    if (inside !== undefined) folders.set(folder, (folders.get(folder) ?? 0) + 1);
    return inside === undefined;
  });
  const counted = [...folders].map(
    ([folder, count]) => `${folder}/ (${count} ${count === 1 ? 'file' : 'files'})`,
  );
  return [...single, ...counted].join(', ');
}

function replaced({
  number,
  revision,
  bag,
  sha256,
}: NonNullable<Archived['record']['supersedes']>): string {
  return [
    ...(number === null ? [] : [number]),
    ...(revision === null ? [] : [`revision ${revision}`]),
    ...(bag === null ? [] : [bag]),
    ...(sha256 === null ? [] : [`SHA-256 ${sha256}`]),
  ].join(', ');
}
