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

/** Remarks, a line each, then errors with their lines, each kind in reading order. */
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
    ...remarks.map((remark) => showRemark(remark, showing)),
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

function showRemark(remark: Diagnostic, { paint, ...showing }: Showing): string {
  const place = placeOf(remark, showing);
  const where = place === '' ? '' : ` in ${place}`;
  const { message, code } = remark;
  return `${paint('remark', `Remark${where}:`)} ${printable(message)}  ${paint('quiet', `[${code}]`)}\n`;
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
