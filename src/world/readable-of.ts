import { Readable } from 'node:stream';
import type { OpenFile } from './world.ts';

/** Bytes that one piece of a stream holds at most: large enough to be quick, small enough to hold many. */
const pieceSize = 262_144;

/** The bytes of an open file from `start` to `end`, `end` not included, as a stream of pieces. Ends early where the file does. */
export function readableOf(file: OpenFile, start: number, end: number): Readable {
  return Readable.from(piecesBetween(file, start, end), { objectMode: false });
}

/** The bytes of an open file from `start` to `end`, `end` not included, piece by piece. Ends early where the file does. */
export function* piecesBetween(
  file: Pick<OpenFile, 'readAt'>,
  start: number,
  end: number,
): Iterable<Uint8Array> {
  for (let at = start; at < end;) {
    const piece = file.readAt(at, Math.min(pieceSize, end - at));
    if (piece.length === 0) return;
    yield piece;
    at += piece.length;
  }
}
