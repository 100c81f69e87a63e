import { readLine } from './read-line.ts';
import type { ReadLine } from './written.ts';

/** Reads a line as somebody wrote it, given the symbols that are declared. */
export type LineReader = (text: string, names: readonly string[]) => ReadLine;

/** A reader that reads each line once, however many loadings it is tried under. */
export function lineReader(): LineReader {
  const known = new Map<string, ReadLine>();
  return (text, names) => {
    const key = JSON.stringify([text, ...names]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const read = readLine(text, names);
    known.set(key, read);
    return read;
  };
}
