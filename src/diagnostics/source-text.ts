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

/** Where every line of a text begins, so that many offsets of one file are found quickly. */
export interface LineIndex {
  readonly text: string;
  /** Offsets of the first character of each line, the first 0, strictly increasing. */
  readonly starts: readonly number[];
}

/** The line index of a text; lines end with `\n`, with `\r\n` or with a lone `\r`, as in YAML 1.2.2 §5.4. */
export function indexLines(text: string): LineIndex {
  const starts = [0];
  const breaks = /\r\n|\r|\n/g;
  for (let found = breaks.exec(text); found !== null; found = breaks.exec(text))
    starts.push(found.index + found[0].length);
  return { text, starts };
}

/** The line, column and line text at an offset; offsets past the end count as the end. */
export function placeIn(lines: LineIndex, offset: number): Place {
  const at = Math.max(0, Math.min(offset, lines.text.length));
  let low = 0;
  let high = lines.starts.length - 1;
  // Binary search for the last line that begins at or before the offset.
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((lines.starts[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  const start = lines.starts[low] ?? 0;
  const lineText = lines.text
    .slice(start, lines.starts[low + 1])
    .replace(/[\r\n]+$/, '');
  return { line: low + 1, column: at - start + 1, lineText };
}

/** The place of one offset; for many offsets of one file index its lines once and ask `placeIn`. */
export function placeAt(source: SourceText, offset: number): Place {
  return placeIn(indexLines(source.text), offset);
}
