import type { PdfObject } from './pdf-object.ts';
import { entriesOf, isKind, numberOf } from './pdf-object.ts';
import { scanObjects } from './scan-objects.ts';
import type { Scanner } from './scan-objects.ts';
import { isKeyword } from './scan-words.ts';

/** An object with its number, as it stands in the file. */
export interface IndirectObject {
  readonly number: number;
  readonly object: PdfObject;
}

/**
 * Reads `12 0 obj … endobj` at an offset (ISO 32000-1, 7.3.10). `resolve` looks up the length of a
 * stream where that is a reference. Throws RangeError where no object stands there.
 */
export function readIndirect(
  bytes: Uint8Array,
  offset: number,
  resolve: (value: PdfObject) => PdfObject,
): IndirectObject {
  const scanner = scanObjects(bytes, offset);
  const number = readNumber(scanner, offset);
  const object = scanner.next();
  if (object === undefined || isKeyword(object))
    throw new RangeError(`object ${number} has no content`);
  const after = scanner.next();
  if (typeof object === 'number' && typeof after === 'number')
    return { number, object: { kind: 'reference', number: object } };
  const word = isKeyword(after) ? after.word : '';
  if (word === 'endobj') return { number, object };
  if (word !== 'stream' || !isKind(object, 'dictionary'))
    throw new RangeError(`object ${number} has no end`);
  const packed = readPacked(bytes, scanner.at(), lengthOf(object, resolve));
  if (packed === undefined)
    throw new RangeError(`stream ${number} has not the length it says`);
  return { number, object: { kind: 'stream', entries: object.entries, packed } };
}

/** Reads `12 0 obj`. */
function readNumber(scanner: Scanner, offset: number): number {
  const number = scanner.next();
  const generation = scanner.next();
  const word = scanner.next();
  const isHead =
    typeof generation === 'number' && isKeyword(word) && word.word === 'obj';
  if (typeof number === 'number' && isHead) return number;
  throw new RangeError(`no object stands at offset ${offset}`);
}

function lengthOf(
  dictionary: PdfObject,
  resolve: (value: PdfObject) => PdfObject,
): number {
  return numberOf(resolve(entriesOf(dictionary).get('Length') ?? null)) ?? -1;
}

/** The bytes between `stream` and `endstream`; undefined where the length does not lead to its end. */
function readPacked(
  bytes: Uint8Array,
  at: number,
  length: number,
): Uint8Array | undefined {
  if (length < 0) return undefined;
  const start = at + (bytes[at] === 13 ? 2 : 1);
  const end = scanObjects(bytes, start + length).next();
  const isWhole = isKeyword(end) && end.word === 'endstream';
  return isWhole ? bytes.subarray(start, start + length) : undefined;
}
