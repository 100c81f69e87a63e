import type { RegisteredPerson, RegisterRow } from './register-row.ts';

/** Columns of the table, in their order. */
const columns: readonly (readonly [string, (row: RegisterRow) => string])[] = [
  ['number', ({ number }) => number ?? ''],
  ['title', ({ title }) => title],
  ['revision', ({ revision }) => revision ?? ''],
  ['status', ({ status }) => status],
  ['date', ({ date }) => date ?? ''],
  ['prepared', ({ prepared }) => named(prepared)],
  ['checked', ({ checked }) => named(checked)],
  ['approved', ({ approved }) => named(approved)],
  ['sheets', ({ sheets }) => (sheets === null ? '' : String(sheets))],
  [
    'governing ratio',
    ({ governing }) => (governing === null ? '' : String(governing.ratio)),
  ],
  ['governing member', ({ governing }) => governing?.member ?? ''],
  ['governing check', ({ governing }) => governing?.check ?? ''],
  [
    'passes',
    ({ governing }) => (governing === null ? '' : governing.passes ? 'yes' : 'no'),
  ],
  ['sha256', ({ sha256 }) => sha256 ?? ''],
  ['superseded by', ({ supersededBy }) => supersededBy.join('; ')],
  ['kind', ({ kind }) => kind],
  ['bound', ({ bound }) => bound],
  ['path', ({ path }) => path],
  ['remarks', ({ remarks }) => remarks.join('; ')],
];

/** A register as CSV (RFC 4180): a line of names, then a line a package; ratios at full precision. */
export function registerCsv(rows: readonly RegisterRow[]): string {
  const lines = [
    columns.map(([name]) => name),
    ...rows.map((row) => columns.map(([, valueOf]) => valueOf(row))),
  ];
  return lines.map((cells) => `${cells.map(quoted).join(',')}\r\n`).join('');
}

function named(person: RegisteredPerson | null): string {
  return person === null ? '' : `${person.name} (${person.initials})`;
}

function quoted(text: string): string {
  return /[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
