import { readFileSync } from 'node:fs';
import { placeAt, type Diagnostic } from '../../src/diagnostics/index.ts';

/** Diagnostics as lines of text: severity, code, place, member, message, and the hints below it. */
export function printDiagnostics(
  diagnostics: readonly Diagnostic[],
  pathOf: (file: string) => string,
): string {
  return diagnostics
    .map((diagnostic) => {
      const { severity, code, message, hints, member } = diagnostic;
      const whose = member === undefined ? '' : ` (${member})`;
      const head = `${severity} ${code} ${placeOf(diagnostic, pathOf)}${whose}\n  ${message}\n`;
      return head + hints.map((hint) => `  try: ${hint}\n`).join('');
    })
    .join('');
}

function placeOf({ span }: Diagnostic, pathOf: (file: string) => string): string {
  if (span === undefined) return '-';
  const text = new TextDecoder().decode(readFileSync(pathOf(span.file)));
  const start = placeAt({ path: span.file, text }, span.start);
  const end = placeAt({ path: span.file, text }, span.end);
  const until =
    end.line === start.line ? `-${end.column}` : `-${end.line}:${end.column}`;
  return `${span.file}:${start.line}:${start.column}${until}`;
}
