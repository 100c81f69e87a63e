import type { RegisteredPerson, RegisterRow } from '../index.ts';
import { printable, type Paint } from './paint.ts';

/** How wide the lines may be, in columns. */
const width = 100;

/** Digits of a checksum that the table shows; CSV and JSON hold all 64. */
const shownDigits = 12;

const heads = ['Number', 'Rev', 'Status', 'Date', 'By', 'Sheets', 'Ratio', 'SHA-256'];

/** What showing a register takes. */
export interface RegisterShowing {
  readonly paint: Paint;
  /** Writes a ratio of demand to capacity. */
  readonly writeRatio: (ratio: number) => string;
}

/** A register as a table: a line a package set in columns, below it what it is and what is to be known of it. */
export function registerLines(
  rows: readonly RegisterRow[],
  { paint, writeRatio }: RegisterShowing,
): readonly string[] {
  if (rows.length === 0) return [];
  const cells = rows.map((row) => cellsOf(row, writeRatio).map(printable));
  const widths = heads.map((head, at) =>
    Math.max(head.length, ...cells.map((line) => (line[at] ?? '').length)),
  );
  const inColumns = (line: readonly string[]): string =>
    line
      .map((text, at) => text.padEnd(widths[at] ?? 0))
      .join('  ')
      .trimEnd();
  return [
    paint('strong', inColumns(heads)),
    ...rows.flatMap((row, index) => [
      inColumns(cells[index] ?? []),
      ...wrapped(`${row.title}: ${row.path}`).map((line) => paint('quiet', line)),
      ...notesOn(row).flatMap(wrapped),
    ]),
  ];
}

function cellsOf(
  row: RegisterRow,
  writeRatio: RegisterShowing['writeRatio'],
): readonly string[] {
  const { governing, sha256 } = row;
  const ratio =
    governing === null
      ? '–'
      : `${writeRatio(governing.ratio)}${governing.passes ? '' : ' NOT OK'}`;
  return [
    row.number ?? '–',
    row.revision ?? '–',
    row.status,
    row.date ?? '–',
    [row.prepared, row.checked, row.approved].map(initials).join('/'),
    row.sheets === null ? row.bound : `${row.sheets}`,
    ratio,
    sha256 === null ? row.kind : sha256.slice(0, shownDigits),
  ];
}

const initials = (person: RegisteredPerson | null): string => person?.initials ?? '–';

function notesOn({
  supersededBy,
  remarks,
  bound,
  sheets,
}: RegisterRow): readonly string[] {
  const state: Readonly<Record<RegisterRow['bound'], readonly string[]>> = {
    bound: [],
    'not bound': sheets === null ? [] : ['not bound'],
    'another revision': ['what is bound in it is of another revision'],
    'changed since': ['changed since it was bound'],
  };
  return [
    ...(supersededBy.length === 0 ? [] : [`superseded by ${supersededBy.join(', ')}`]),
    ...state[bound],
    ...remarks,
  ];
}

/** A text in lines, indented; a word that is longer than a line stands on its own. */
function wrapped(text: string): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of printable(text).split(/\s+/u)) {
    const longer = line === '' ? `    ${word}` : `${line} ${word}`;
    if (line !== '' && longer.length > width) {
      lines.push(line);
      line = `      ${word}`;
    } else line = longer;
  }
  return [...lines, line];
}
