import type { ReadPicture } from './picture.ts';

/** Markers of frames that a DCT filter reads: baseline, extended, progressive, Huffman coded (ITU-T T.81, table B.1). */
const readableFrames: ReadonlySet<number> = new Set([0xc0, 0xc1, 0xc2]);
const startOfScan = 0xda;
const endOfImage = 0xd9;

/** Reads the size and colours of a JPEG (ITU-T T.81, annex B); its samples stay as they are. */
export function readJpeg(bytes: Uint8Array): ReadPicture {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return { problem: 'is a damaged JPEG' };
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1; // a fill byte before the marker
      continue;
    }
    const length = view.getUint16(at + 2);
    if (at + 2 + length > bytes.length) break;
    if (readableFrames.has(marker)) return readFrame(bytes, view, at + 4, length - 2);
    if (isOtherFrame(marker)) return { problem: 'is a JPEG of a rare kind' };
    if (marker === startOfScan) return { problem: 'is a damaged JPEG' };
    at += 2 + length;
  }
  return { problem: 'is a JPEG cut short' };
}

/** Lossless, hierarchical and arithmetically coded frames; C4, C8 and CC are no frames. */
function isOtherFrame(marker: number): boolean {
  return (
    marker >= 0xc3 &&
    marker <= 0xcf &&
    marker !== 0xc4 &&
    marker !== 0xc8 &&
    marker !== 0xcc
  );
}

function readFrame(
  bytes: Uint8Array,
  view: DataView,
  at: number,
  length: number,
): ReadPicture {
  if (length < 6) return { problem: 'is a damaged JPEG' };
  const bits = view.getUint8(at);
  const height = view.getUint16(at + 1);
  const width = view.getUint16(at + 3);
  const channels = view.getUint8(at + 5);
  if (bits !== 8) return { problem: `is a JPEG of ${bits} bits a colour` };
  if (width === 0 || height === 0) return { problem: 'is a JPEG without a size' };
  if (channels === 4) return { problem: 'is a JPEG in CMYK colours' };
  if (channels !== 1 && channels !== 3) return { problem: 'is a damaged JPEG' };
  if (!endsWhole(bytes)) return { problem: 'is a JPEG cut short' };
  const colours = channels === 1 ? 'DeviceGray' : 'DeviceRGB';
  return { width, height, bits, colours, data: bytes, packing: { kind: 'jpeg' } };
}

/** True where an end-of-image marker stands near the end; some cameras write a few bytes behind it. */
function endsWhole(bytes: Uint8Array): boolean {
  const last = bytes.lastIndexOf(endOfImage);
  return last > 0 && bytes[last - 1] === 0xff;
}
