import {
  indexLines,
  placeIn,
  type Code,
  type Diagnostic,
  type LineIndex,
  type Span,
} from '../diagnostics/index.ts';

/** What a reader says about a place: a diagnostic without its file's and member's particulars. */
export interface Finding {
  readonly code: Code;
  /** One sentence, lower case at the start, no full stop. */
  readonly message: string;
  readonly span: Span;
  /** Default: none. */
  readonly hints?: readonly string[];
  /** Default: `error`. */
  readonly severity?: 'error' | 'remark';
}

/**
 * The reading of one file: its text, and where findings go. Readers report and go on, so that
 * all mistakes of a file come to light at once.
 */
export interface Reading {
  readonly file: string;
  readonly text: string;
  /** The project's units: a bare 0 takes its unit from them. */
  readonly units: 'us' | 'si';
  /** The line of an offset, counted from 1. */
  readonly lineOf: (offset: number) => number;
  readonly report: (finding: Finding) => void;
  /** True where an error has been reported so far, remarks not counted. */
  readonly hasFailed: () => boolean;
}

/** A file of the folder that was parsed: what it says, and where its findings go. */
export interface OpenFile<T> {
  readonly parts: Partial<T>;
  readonly reading: Reading;
}

/** A reading that collects its findings into `into`, each with the mark of `member` where there is one. `units` default to us. */
export function openReading(
  file: { readonly path: string; readonly text: string },
  into: Diagnostic[],
  about: { readonly member?: string; readonly units?: 'us' | 'si' } = {},
): Reading {
  const { member, units = 'us' } = about;
  let failed = false;
  let lines: LineIndex | undefined;
  return {
    file: file.path,
    text: file.text,
    units,
    lineOf: (offset) => {
      lines ??= indexLines(file.text);
      return placeIn(lines, offset).line;
    },
    hasFailed: () => failed,
    report: (finding) => {
      if (finding.severity !== 'remark') failed = true;
      into.push({
        severity: finding.severity ?? 'error',
        code: finding.code,
        message: finding.message,
        span: finding.span,
        hints: finding.hints ?? [],
        ...(member === undefined ? {} : { member }),
      });
    },
  };
}
