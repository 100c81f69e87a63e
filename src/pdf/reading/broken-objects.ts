import { inflate } from './inflate.ts';
import type { PdfObject, PdfStream } from './pdf-object.ts';
import { isKind, itemsOf, nameOf } from './pdf-object.ts';
import type { PdfFile } from './read-pdf.ts';

/** All streams of a file may unpack to so many bytes: 2 GiB. */
const greatestTotal = 2_147_483_648;

/**
 * What is damaged in a file, a sentence each, as far as the file itself can tell: every object in use is read,
 * every stream unpacked, and deflated data are held against the Adler-32 at their end (RFC 1950). That
 * shows accidents; whoever changes a file on purpose can put that right too.
 */
export function brokenObjects(file: PdfFile): readonly string[] {
  let unpacked = 0;
  const broken = file.numbers.flatMap((number) => {
    const object = file.resolve({ kind: 'reference', number });
    if (unpacked > greatestTotal) return [];
    if (!isKind(object, 'stream') || !isDeflated(object, file)) return [];
    unpacked += file.decode(object).length;
    // One small stream after another could keep a reader busy for ever.
    if (unpacked > greatestTotal) return [];
    return isSumRight(object.packed)
      ? []
      : [`the data of object ${number} are not those that were packed`];
  });
  const tooMuch =
    unpacked > greatestTotal
      ? [`its streams unpack to more than ${greatestTotal} bytes`]
      : [];
  return [...tooMuch, ...file.faults(), ...broken];
}

/** Whether deflating is the first filter to be undone. */
function isDeflated(stream: PdfStream, file: PdfFile): boolean {
  const filter: PdfObject = file.entry(stream, 'Filter');
  const first = isKind(filter, 'array') ? (itemsOf(filter)[0] ?? null) : filter;
  return nameOf(file.resolve(first)) === 'FlateDecode';
}

function isSumRight(packed: Uint8Array): boolean {
  try {
    const sum = adler32(inflate(packed));
    // Some programs count the line break behind the data among them.
    return endsOf(packed).some((end) => sumBefore(packed, end) === sum);
  } catch {
    // Told already by whoever decoded it.
    return true;
  }
}

/** Where the data may end: at the end, or before a line break. */
function endsOf({ length }: Uint8Array): readonly number[] {
  return [length, length - 1, length - 2];
}

function sumBefore(packed: Uint8Array, end: number): number {
  return packed
    .subarray(Math.max(0, end - 4), end)
    .reduce((sum, byte) => sum * 256 + byte, 0);
}

/** So many bytes can be summed before the greater of the sums outgrows 32 bits. */
const perRound = 5552;

/** The sum of RFC 1950, 8.2: two sums modulo 65521, one of the bytes and one of the first. */
function adler32(bytes: Uint8Array): number {
  let [low, high] = [1, 0];
  for (let start = 0; start < bytes.length; start += perRound) {
    for (const byte of bytes.subarray(start, start + perRound)) {
      low += byte;
      high += low;
    }
    low %= 65_521;
    high %= 65_521;
  }
  return high * 65_536 + low;
}
