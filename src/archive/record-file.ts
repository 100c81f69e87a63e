import { misfitsOf, type Misfit } from '../results/index.ts';
import type { ArchiveRecord } from './record.ts';
import { recordShape } from './record-shape.ts';

/** What came of reading a record.json. */
export type RecordReading =
  | { readonly kind: 'record'; readonly record: ArchiveRecord }
  /** The text is no JSON. */
  | { readonly kind: 'not-json' }
  /** It is JSON, but not of format 1: every place that departs from it. */
  | { readonly kind: 'misshapen'; readonly misfits: readonly Misfit[] };

/** record.json: two blanks a step, a line break at the end; equal records give equal texts. */
export function writeRecord(record: ArchiveRecord): string {
  return `${JSON.stringify(record, null, 2)}\n`;
}

/** Reads a record.json back and holds every field against format 1. Keys that format 1 does not know are passed over. */
export function readRecord(text: string): RecordReading {
  const value = parsed(text);
  if (value === undefined) return { kind: 'not-json' };
  const misfits = misfitsOf(value, recordShape);
  return misfits.length === 0
    ? // The shape has just been checked, key by key.
      { kind: 'record', record: value as ArchiveRecord }
    : { kind: 'misshapen', misfits };
}

// JSON knows no undefined, which so stands for a text that is none.
function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
