import { decodeStream } from './decode-stream.ts';
import type { PdfObject } from './pdf-object.ts';
import { isKind, itemsOf, numberOf, numberOr } from './pdf-object.ts';
import { readIndirect } from './read-indirect.ts';
import { scanObjects } from './scan-objects.ts';
import { isKeyword } from './scan-words.ts';

/** Where an object stands: at an offset of the file, or as one of those packed into a stream. */
export type ObjectPlace =
  | { readonly kind: 'offset'; readonly offset: number }
  | { readonly kind: 'packed'; readonly stream: number; readonly index: number };

/** The cross-reference table of a file with its trailer. */
export interface CrossReference {
  readonly places: ReadonlyMap<number, ObjectPlace>;
  readonly trailer: ReadonlyMap<string, PdfObject>;
}

/**
 * Reads the cross-reference table and those that it adds to, classic tables and streams alike
 * (ISO 32000-1, 7.5.4 and 7.5.8); later ones win. Throws RangeError where there is none.
 */
export function readXref(bytes: Uint8Array): CrossReference {
  const places = new Map<number, ObjectPlace>();
  let trailer: ReadonlyMap<string, PdfObject> | undefined;
  const seen = new Set<number>();
  const next = [startOfXref(bytes)];
  for (let offset = next.shift(); offset !== undefined; offset = next.shift()) {
    if (seen.has(offset)) continue;
    seen.add(offset);
    const section = readSection(bytes, offset);
    for (const [number, place] of section.places)
      if (!places.has(number)) places.set(number, place);
    trailer ??= section.trailer;
    for (const key of ['XRefStm', 'Prev']) {
      const before = numberOf(section.trailer.get(key) ?? null);
      if (before !== undefined) next.push(before);
    }
  }
  return { places, trailer: trailer ?? new Map() };
}

function startOfXref(bytes: Uint8Array): number {
  const from = Math.max(0, bytes.length - 1024);
  const tail = Array.from(bytes.subarray(from), (byte) =>
    String.fromCharCode(byte),
  ).join('');
  const match = /startxref\s+(\d+)\s+%%EOF(?![^]*startxref)/u.exec(tail);
  if (match === null) throw new RangeError('the file has no startxref at its end');
  return Number(match[1]);
}

function readSection(bytes: Uint8Array, offset: number): CrossReference {
  const scanner = scanObjects(bytes, offset);
  const first = scanner.next();
  if (isKeyword(first) && first.word === 'xref') return readTable(bytes, scanner.at());
  if (typeof first !== 'number')
    throw new RangeError('the cross-reference table is not where it should be');
  return readXrefStream(bytes, offset);
}

function readTable(bytes: Uint8Array, from: number): CrossReference {
  const scanner = scanObjects(bytes, from);
  const places = new Map<number, ObjectPlace>();
  for (;;) {
    const start = scanner.next();
    if (typeof start !== 'number') break;
    const count = scanner.next();
    if (typeof count !== 'number')
      throw new RangeError('a section of the table has no count');
    for (let index = 0; index < count; index += 1) {
      const offset = scanner.next();
      scanner.next();
      const use = scanner.next();
      if (typeof offset !== 'number' || !isKeyword(use))
        throw new RangeError(`entry ${start + index} of the table is broken`);
      if (use.word === 'n') places.set(start + index, { kind: 'offset', offset });
    }
  }
  const trailer = scanner.next();
  if (trailer === undefined || isKeyword(trailer) || !isKind(trailer, 'dictionary'))
    throw new RangeError('the table has no trailer');
  return { places, trailer: trailer.entries };
}

function readXrefStream(bytes: Uint8Array, offset: number): CrossReference {
  const asIs = (value: PdfObject): PdfObject => value;
  const { object } = readIndirect(bytes, offset, asIs);
  if (!isKind(object, 'stream')) throw new RangeError('the table is no stream');
  const { entries } = object;
  const numbers = (key: string): readonly number[] =>
    itemsOf(entries.get(key) ?? null).map((item) => numberOr(item, 0));
  const [first = 0, second = 0, third = 0] = numbers('W');
  const data = decodeStream(object, asIs);
  const perEntry = first + second + third;
  if (!(perEntry > 0 && perEntry < 24)) throw new RangeError('the table has no fields');
  const readField = openFields(data);
  const readPlace = (): ObjectPlace | undefined => {
    const kind = readField(first, 1);
    const one = readField(second, 0);
    const other = readField(third, 0);
    if (kind === 1) return { kind: 'offset', offset: one };
    return kind === 2 ? { kind: 'packed', stream: one, index: other } : undefined;
  };
  const index = numbers('Index');
  const ranges = index.length > 0 ? index : [0, numberOr(entries.get('Size'), 0)];
  const listed = numbersIn(ranges, Math.floor(data.length / perEntry));
  const places = new Map<number, ObjectPlace>();
  for (const number of listed) {
    const place = readPlace();
    if (place !== undefined) places.set(number, place);
  }
  return { places, trailer: entries };
}

/** The numbers of ranges that are given as a first number and a count, so many at most. */
function numbersIn(ranges: readonly number[], most: number): readonly number[] {
  const numbers: number[] = [];
  for (let at = 0; at + 1 < ranges.length; at += 2) {
    const count = Math.min(ranges[at + 1] ?? 0, most - numbers.length);
    for (let next = 0; next < count; next += 1) numbers.push((ranges[at] ?? 0) + next);
  }
  return numbers;
}

/** Reads whole numbers of so many bytes, high byte first; a field without bytes has a fixed value. */
function openFields(data: Uint8Array): (width: number, fixed: number) => number {
  let at = 0;
  return (width, fixed) => {
    if (width === 0) return fixed;
    let value = 0;
    for (const end = at + width; at < end; at += 1)
      value = value * 256 + (data[at] ?? 0);
    return value;
  };
}
