import { decodeStream } from './decode-stream.ts';
import type { PdfObject } from './pdf-object.ts';
import { entriesOf, isKind, numberOr } from './pdf-object.ts';
import { readIndirect } from './read-indirect.ts';
import { readXref } from './read-xref.ts';
import type { CrossReference, ObjectPlace } from './read-xref.ts';
import { scanObjects } from './scan-objects.ts';
import { isKeyword } from './scan-words.ts';

/**
 * A PDF file opened for reading. Objects are read when first asked for; one that cannot be read is
 * null and leaves a sentence in `faults`, so that nothing here throws on account of the file.
 */
export interface PdfFile {
  readonly bytes: Uint8Array;
  /** As in the first line: `1.7`. */
  readonly version: string;
  readonly trailer: PdfObject;
  readonly catalog: PdfObject;
  /** The numbers of all objects in use, ascending. */
  readonly numbers: readonly number[];
  /** What an object is, references followed to their end. */
  readonly resolve: (object: PdfObject) => PdfObject;
  /** An entry of a dictionary or stream, references on both sides followed; null where it has none. */
  readonly entry: (of: PdfObject, key: string) => PdfObject;
  /** The content of a stream with its filters undone; empty where the object is no stream. */
  readonly decode: (stream: PdfObject) => Uint8Array;
  /** What could not be read so far, a sentence each. */
  readonly faults: () => readonly string[];
}

/** Opens a PDF file, or says why it is none. */
export function readPdf(bytes: Uint8Array): PdfFile | { readonly problem: string } {
  const head = String.fromCharCode(...bytes.subarray(0, 16));
  const version = /^%PDF-(\d\.\d)/u.exec(head)?.[1];
  if (version === undefined)
    return { problem: 'the file does not begin as a PDF does' };
  try {
    return openFile(bytes, version, readXref(bytes));
  } catch (fault) {
    return { problem: reasonOf(fault) };
  }
}

const longestChain = 32;

function openFile(bytes: Uint8Array, version: string, xref: CrossReference): PdfFile {
  const faults = new Set<string>();
  const known = new Map<number, PdfObject>();
  const attempt = <T>(read: () => T, fallback: T): T => {
    try {
      return read();
    } catch (fault) {
      faults.add(reasonOf(fault));
      return fallback;
    }
  };
  const objectAt = (number: number): PdfObject => {
    const before = known.get(number);
    if (before !== undefined) return before;
    known.set(number, null); // an object that leads back to itself is none
    const place = xref.places.get(number);
    const read = (): PdfObject =>
      place === undefined ? null : readAt(file, number, { place, packedIn });
    const object = attempt(read, null);
    known.set(number, object);
    return object;
  };
  const resolve = (object: PdfObject): PdfObject => {
    let found = object;
    for (let step = 0; isKind(found, 'reference'); step += 1)
      found = step > longestChain ? null : objectAt(found.number);
    return found;
  };
  const entry = (of: PdfObject, key: string): PdfObject =>
    resolve(entriesOf(resolve(of)).get(key) ?? null);
  const trailer: PdfObject = { kind: 'dictionary', entries: xref.trailer };
  const file: PdfFile = {
    bytes,
    version,
    trailer,
    get catalog() {
      return entry(trailer, 'Root');
    },
    numbers: [...xref.places.keys()].sort((one, other) => one - other),
    resolve,
    entry,
    decode: (stream) => {
      const found = resolve(stream);
      return isKind(found, 'stream')
        ? attempt(() => decodeStream(found, resolve), new Uint8Array())
        : new Uint8Array();
    },
    faults: () => [...faults],
  };
  const packedIn = unpacker(file);
  return file;
}

/** Reads an object where the table says that it stands. */
function readAt(
  file: PdfFile,
  number: number,
  { place, packedIn }: { readonly place: ObjectPlace; readonly packedIn: PackedIn },
): PdfObject {
  if (place.kind === 'packed') return readPacked(packedIn(place.stream), place.index);
  const { number: found, object } = readIndirect(
    file.bytes,
    place.offset,
    file.resolve,
  );
  if (found !== number)
    throw new RangeError(`object ${found} stands where ${number} should`);
  return object;
}

/** A stream of objects, unpacked: its content, and where in it each of its objects begins. */
interface PackedObjects {
  readonly data: Uint8Array;
  readonly offsets: readonly number[];
}

type PackedIn = (stream: number) => PackedObjects;

/** Unpacks streams of objects, each once: hundreds of objects stand in one. */
function unpacker(file: PdfFile): PackedIn {
  const known = new Map<number, PackedObjects>();
  return (number) => {
    const before = known.get(number);
    if (before !== undefined) return before;
    const found = openPacked(file, { kind: 'reference', number });
    known.set(number, found);
    return found;
  };
}

/** Reads the head of a stream of objects: pairs of a number and an offset (ISO 32000-1, 7.5.7). */
function openPacked(file: PdfFile, stream: PdfObject): PackedObjects {
  const data = file.decode(stream);
  const first = numberOr(file.entry(stream, 'First'), 0);
  const scanner = scanObjects(data.subarray(0, first));
  const offsets: number[] = [];
  for (let number = scanner.next(); number !== undefined; number = scanner.next()) {
    const offset = scanner.next();
    if (typeof offset !== 'number') break;
    offsets.push(first + offset);
  }
  return { data, offsets };
}

function readPacked({ data, offsets }: PackedObjects, index: number): PdfObject {
  const offset = offsets[index];
  if (offset === undefined) throw new RangeError('a packed object is missing');
  const object = scanObjects(data, offset).next();
  if (object === undefined || isKeyword(object))
    throw new RangeError('a packed object has no content');
  return object;
}

/** The readers of this room throw RangeErrors with a sentence for what the file does wrong. */
function reasonOf(fault: unknown): string {
  if (fault instanceof RangeError) return fault.message;
  throw fault;
}
