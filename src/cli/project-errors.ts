import { placeIn, sortDiagnostics, type Diagnostic } from '../diagnostics/index.ts';
import type { ProjectError, ProjectErrors } from '../index.ts';
import type { SourceReader } from './source-reader.ts';

/** What stands in place of results where there can be none: every error with its place. */
export function projectErrors(
  diagnostics: readonly Diagnostic[],
  source: SourceReader,
): ProjectErrors {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  return {
    format: 1,
    errors: sortDiagnostics(errors).map((error) => projectError(error, source)),
  };
}

function projectError(
  { code, message, span }: Diagnostic,
  source: SourceReader,
): ProjectError {
  if (span === undefined) return { code, message };
  const lines = source(span.file);
  if (lines === undefined) return { code, message, file: span.file };
  const { line, column } = placeIn(lines, span.start);
  return { code, message, file: span.file, line, column };
}
