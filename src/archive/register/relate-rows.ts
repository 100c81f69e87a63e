import { naturalOrder } from '../../project/index.ts';
import type { ReadRow, RegisterRow } from './register-row.ts';

/**
 * Holds the rows of a register against each other: which is superseded by which, which share a number and revision
 * and yet differ; and sets them in order, by number and then revision by revision.
 */
export function relateRows(read: readonly ReadRow[]): readonly RegisterRow[] {
  const rows = read.map(({ row }) => row);
  const places = revisionPlaces(read);
  return rows
    .map((row) => {
      const twins = twinsOf(row, rows);
      return {
        ...row,
        supersededBy: successorsOf(row, rows),
        hasTwin: twins.length > 0,
        remarks: [...row.remarks, ...twins],
      };
    })
    .toSorted((one, other) => inOrder(one, other, places));
}

/** Number and revision of a package, as people name it. */
export function nameOf({
  number,
  title,
  revision,
}: Pick<RegisterRow, 'number' | 'title' | 'revision'>): string {
  return `${number ?? title}${revision === null ? '' : ` revision ${revision}`}`;
}

function successorsOf(
  row: RegisterRow,
  rows: readonly RegisterRow[],
): readonly string[] {
  const names = rows
    .filter((other) => other !== row && isReplacedBy(row, other))
    .map(nameOf)
    .filter((name) => name !== nameOf(row));
  return [...new Set(names)].toSorted(naturalOrder);
}

/** By the checksum of the bag where both sides have one, else by its file's name, else by number and revision. */
function isReplacedBy(row: RegisterRow, by: RegisterRow): boolean {
  const { supersedes } = by;
  if (supersedes === null) return false;
  if (row.kind === 'bag' && supersedes.sha256 !== null && row.sha256 !== null)
    return supersedes.sha256 === row.sha256;
  const number = supersedes.number ?? by.number;
  if (number !== row.number) return false;
  return row.kind === 'bag' && supersedes.bag !== null
    ? fileName(supersedes.bag) === fileName(row.path)
    : number !== null && isOneRevision(supersedes.revision, row.revision);
}

function isOneRevision(one: string | null, other: string | null): boolean {
  return one !== null && one === other;
}

const fileName = (path: string): string => path.split(/[/\\]/u).at(-1) ?? path;

/** A remark where another bag, or another PDF, of the same number and revision has other bytes. */
function twinsOf(row: RegisterRow, rows: readonly RegisterRow[]): readonly string[] {
  if (row.sha256 === null) return [];
  const twins = rows.filter(
    (other) =>
      other.kind === row.kind &&
      nameOf(other) === nameOf(row) &&
      other.sha256 !== row.sha256,
  );
  const what = row.kind === 'bag' ? 'bag' : 'PDF';
  return twins.map(
    ({ path }) => `another ${what} of this number and revision differs: ${path}`,
  );
}

/** Of each number, the marks of its longest record of revisions. */
function revisionPlaces(
  read: readonly ReadRow[],
): ReadonlyMap<string, readonly string[]> {
  const places = new Map<string, readonly string[]>();
  for (const { row, marks } of read) {
    const known = places.get(keyOf(row)) ?? [];
    if (marks.length > known.length) places.set(keyOf(row), marks);
  }
  return places;
}

const keyOf = ({ number, title }: RegisterRow): string => number ?? title;

function inOrder(
  one: RegisterRow,
  other: RegisterRow,
  places: ReadonlyMap<string, readonly string[]>,
): number {
  const place = (row: RegisterRow): number =>
    places.get(keyOf(row))?.indexOf(row.revision ?? '') ?? -1;
  return (
    naturalOrder(keyOf(one), keyOf(other)) ||
    place(one) - place(other) ||
    naturalOrder(one.date ?? '', other.date ?? '') ||
    naturalOrder(one.revision ?? '', other.revision ?? '') ||
    naturalOrder(one.kind, other.kind) ||
    naturalOrder(one.path, other.path)
  );
}
