/** A file's text, which turns an offset into a line and a column (both counted from 1). */
export interface SourceText {
  /** Path relative to the project folder, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** A place in a text as people count it: line and column from 1, and the line itself. */
export interface Place {
  readonly line: number;
  readonly column: number;
  /** The whole line, without its line break. */
  readonly lineText: string;
}

/** The line, column and line text at an offset; offsets past the end count as the end. */
export function placeAt(source: SourceText, offset: number): Place {
  const at = Math.max(0, Math.min(offset, source.text.length));
  const before = source.text.slice(0, at);
  const line = before.split('\n').length;
  const start = before.lastIndexOf('\n') + 1;
  const end = source.text.indexOf('\n', at);
  const lineText = source.text.slice(start, end < 0 ? undefined : end).replace(/\r$/, '');
  return { line, column: at - start + 1, lineText };
}
