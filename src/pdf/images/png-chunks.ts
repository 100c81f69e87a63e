import { joinBytes } from '../output.ts';

/** What a PNG's header says (ISO/IEC 15948, 11.2.2). */
export interface PngHeader {
  readonly width: number;
  readonly height: number;
  /** Bits a sample. */
  readonly bits: number;
  readonly colourType: number;
  readonly isInterlaced: boolean;
}

/** The chunks of a PNG that make its picture. */
export interface PngChunks {
  readonly header: PngHeader;
  /** Red, green and blue of each entry; empty where there is no palette. */
  readonly palette: Uint8Array;
  /** The content of the transparency chunk; empty where there is none. */
  readonly clear: Uint8Array;
  /** The deflated lines. */
  readonly data: Uint8Array;
}

const signatureLength = 8;
// ISO/IEC 15948, table 11.1: the bits that each colour type may have.
const bitsAllowed: Readonly<Record<number, readonly number[]>> = {
  0: [1, 2, 4, 8, 16],
  2: [8, 16],
  3: [1, 2, 4, 8],
  4: [8, 16],
  6: [8, 16],
};
const mostPixels = 1e8;

/** Splits a PNG into its chunks. */
export function readChunks(
  bytes: Uint8Array,
): PngChunks | { readonly problem: string } {
  const found = splitChunks(bytes);
  if (!found.has('IEND')) return { problem: 'is a PNG cut short' };
  const header = readHeader(found.get('IHDR')?.[0]);
  if (header === undefined) return { problem: 'is a damaged PNG' };
  const [palette = new Uint8Array()] = found.get('PLTE') ?? [];
  const [clear = new Uint8Array()] = found.get('tRNS') ?? [];
  return { header, palette, clear, data: joinBytes(found.get('IDAT') ?? []) };
}

function splitChunks(bytes: Uint8Array): ReadonlyMap<string, readonly Uint8Array[]> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found = new Map<string, Uint8Array[]>();
  let at = signatureLength;
  while (at + 12 <= bytes.length && !found.has('IEND')) {
    const length = view.getUint32(at);
    if (at + 12 + length > bytes.length) break;
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    const before = found.get(name) ?? [];
    found.set(name, [...before, bytes.subarray(at + 8, at + 8 + length)]);
    at += 12 + length;
  }
  return found;
}

function readHeader(content: Uint8Array | undefined): PngHeader | undefined {
  if (content?.length !== 13) return undefined;
  const view = new DataView(content.buffer, content.byteOffset, content.byteLength);
  const width = view.getUint32(0);
  const height = view.getUint32(4);
  const [bits = 0, colourType = 0, packing, filtering, interlacing] =
    content.subarray(8);
  const isKnown =
    bitsAllowed[colourType]?.includes(bits) === true &&
    packing === 0 &&
    filtering === 0;
  const pixels = width * height;
  return isKnown && pixels > 0 && pixels <= mostPixels
    ? { width, height, bits, colourType, isInterlaced: interlacing === 1 }
    : undefined;
}
