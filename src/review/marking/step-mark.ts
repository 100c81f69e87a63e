import type { Verdict } from '../verdict.ts';
import type { ExpectedLine } from './expected-line.ts';
import type { WorkedStep } from '../../project/index.ts';
import type { Effort } from '../matching/effort.ts';
import type { LineReader } from '../reading/line-reader.ts';
import type { MarkingContext } from '../marking-context.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import type { SlipFinding } from './same-slip.ts';
import type { Worker } from './worker.ts';

/** A step to be marked, with all that was found before it. */
export interface StepRequest {
  readonly context: MarkingContext;
  readonly worker: Worker;
  readonly step: WorkedStep;
  /** Counted from 1. */
  readonly number: number;
  /** Symbols of this step alone, such as the value that it works. */
  readonly also: ReadonlyMap<string, NameMeaning>;
  /** What all lines of the file may still spend on being explained, together. */
  readonly effort: Effort;
  /** Reads a written line, as `readLine` does. */
  readonly read: LineReader;
}

/** What marking a step comes to. */
export interface StepMark {
  readonly verdict: Verdict;
  readonly findings: readonly SlipFinding[];
  readonly remarks: readonly string[];
  readonly expected?: ExpectedLine;
}

/** A step that cannot be evaluated, with where and why. */
export function unread(
  kind: 'syntax' | 'symbol' | 'step' | 'unit',
  message: string,
): StepMark {
  return { verdict: 'unread', findings: [{ kind, message }], remarks: [] };
}

/** A fault of reading in words, with its place in what was written. */
export function faultWords(
  text: string,
  fault: { readonly message: string; readonly start: number; readonly end: number },
): string {
  const { message, start, end } = fault;
  const piece = text.slice(start, Math.max(end, start + 1)).trim();
  const shown = piece.length > 30 ? `${piece.slice(0, 30)}…` : piece;
  const where =
    piece === '' ? 'at the end' : `at character ${start + 1}, \`${printable(shown)}\``;
  return `${message.charAt(0).toUpperCase()}${message.slice(1)} (${where}).`;
}

/** Control characters as their numbers, so that a message never turns a terminal upside down. */
export function printable(text: string): string {
  return text.replace(/\p{C}/gu, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
  });
}
