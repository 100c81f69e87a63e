import { placeIn, sortDiagnostics, type Diagnostic } from '../diagnostics/index.ts';
import { excerptAt } from './excerpt.ts';
import { printable, type Paint } from './paint.ts';
import { pathIn, type SourceReader } from './source-reader.ts';
import type { UsageFault } from './usage-fault.ts';

/** What showing a diagnostic needs to know. */
export interface Showing {
  /** The project folder as the user named it. */
  readonly folder: string;
  readonly source: SourceReader;
  readonly paint: Paint;
}

/** Remarks, briefly, then errors with their lines, each kind in reading order. */
export function showDiagnostics(
  diagnostics: readonly Diagnostic[],
  showing: Showing,
): string {
  const files = diagnostics.flatMap(({ span }) =>
    span === undefined ? [] : [span.file],
  );
  const sorted = sortDiagnostics(diagnostics, [...new Set(files)]);
  const remarks = sorted.filter(({ severity }) => severity === 'remark');
  const errors = sorted.filter(({ severity }) => severity === 'error');
  return [
    ...alike(remarks).map((group) => showRemarks(group, showing)),
    ...(remarks.length > 0 && errors.length > 0 ? ['\n'] : []),
    ...errors.map((error) => `${showError(error, showing)}\n`),
  ].join('');
}

/** `2 errors, 1 remark`; empty for none. */
export function countDiagnostics(diagnostics: readonly Diagnostic[]): string {
  const count = (severity: Diagnostic['severity']): readonly string[] => {
    const of = diagnostics.filter((one) => one.severity === severity).length;
    return of === 0 ? [] : [`${of} ${severity}${of === 1 ? '' : 's'}`];
  };
  return [...count('error'), ...count('remark')].join(', ');
}

/** A mistake in the command line itself. */
export function showUsageFault({ message, hints }: UsageFault, paint: Paint): string {
  return `${paint('error', 'Error:')} ${printable(message)}\n${showHints(hints)}`;
}

/** Remarks of one code and message gathered, in the order of their first. */
function alike(remarks: readonly Diagnostic[]): readonly (readonly Diagnostic[])[] {
  const groups = new Map<string, readonly Diagnostic[]>();
  for (const remark of remarks) {
    const key = `${remark.code} ${remark.message}`;
    groups.set(key, [...(groups.get(key) ?? []), remark]);
  }
  return [...groups.values()];
}

/** One line for a remark; where it holds at several places, a line a file under it. */
function showRemarks(group: readonly Diagnostic[], showing: Showing): string {
  const [remark] = group;
  if (remark === undefined) return '';
  const { paint } = showing;
  const place = group.length === 1 ? placeOf(remark, showing) : '';
  const where = place === '' ? '' : ` in ${place}`;
  const { message, code } = remark;
  const head = `${paint('remark', `Remark${where}:`)} ${printable(message)}  ${paint('quiet', `[${code}]`)}\n`;
  return group.length === 1 ? head : head + linesByFile(group, showing);
}

function linesByFile(
  group: readonly Diagnostic[],
  { folder, source }: Showing,
): string {
  const files = new Map<string, readonly number[]>();
  for (const { span } of group) {
    const lines = span === undefined ? undefined : source(span.file);
    if (span === undefined || lines === undefined) continue;
    const { line } = placeIn(lines, span.start);
    files.set(span.file, [...(files.get(span.file) ?? []), line]);
  }
  return [...files]
    .map(([file, lines]) => {
      const word = lines.length === 1 ? 'line' : 'lines';
      return `    ${printable(pathIn(folder, file))}, ${word} ${lines.join(', ')}\n`;
    })
    .join('');
}

function showError(error: Diagnostic, { paint, ...showing }: Showing): string {
  const { message, code, hints, span } = error;
  const place = placeOf(error, showing);
  const where = place === '' ? '' : ` in ${place}`;
  const head = `${paint('error', `Error${where}:`)} ${printable(message)}  ${paint('quiet', `[${code}]`)}\n`;
  const lines = span === undefined ? undefined : showing.source(span.file);
  if (span === undefined || lines === undefined) return head + showHints(hints);
  const { line, underline } = excerptAt(
    placeIn(lines, span.start),
    span.end - span.start,
  );
  return `${head}\n    ${line}\n    ${paint('error', underline)}\n${showHints(hints)}`;
}

function showHints(hints: readonly string[]): string {
  return hints.map((hint) => `  → ${printable(hint)}\n`).join('');
}

/** `shelter/members/b1.yaml:4:9`; without line and column where the file cannot be shown, empty where there is none. */
function placeOf(
  { span }: Diagnostic,
  { folder, source }: Pick<Showing, 'folder' | 'source'>,
): string {
  if (span === undefined) return '';
  const path = printable(pathIn(folder, span.file));
  const lines = source(span.file);
  if (lines === undefined) return path;
  const { line, column } = placeIn(lines, span.start);
  return `${path}:${line}:${column}`;
}
