import { unfilterLines } from './unfilter-lines.ts';

/** How the lines of a PNG are made. */
export interface LineForm {
  readonly width: number;
  readonly height: number;
  /** Bits a sample. */
  readonly bits: number;
  readonly channels: number;
  readonly isInterlaced: boolean;
}

/** The seven passes of an interlaced picture (ISO/IEC 15948, 8.2): first column and line, and the steps to the next. */
const passes = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

interface Pass {
  readonly left: number;
  readonly top: number;
  readonly across: number;
  readonly down: number;
  readonly width: number;
  readonly height: number;
}

/** Bytes that the pixels of one line take, each of so many bits. */
export function bytesOfLine(pixels: number, bitsOfPixel: number): number {
  return Math.ceil((pixels * bitsOfPixel) / 8);
}

/** Bytes that the unpacked lines must have, a byte of filter before each. */
export function dataLength(form: LineForm): number {
  return passesOf(form).reduce(
    (sum, { width, height }) =>
      sum + height * (1 + bytesOfLine(width, form.bits * form.channels)),
    0,
  );
}

/** The lines of a picture from top to bottom, filters undone; undefined where a filter is unknown. */
export function plainLines(data: Uint8Array, form: LineForm): Uint8Array | undefined {
  const bitsOfPixel = form.bits * form.channels;
  const perLine = bytesOfLine(form.width, bitsOfPixel);
  const picture = new Uint8Array(perLine * form.height);
  let at = 0;
  for (const pass of passesOf(form)) {
    const perPassLine = bytesOfLine(pass.width, bitsOfPixel);
    const end = at + pass.height * (1 + perPassLine);
    const step = Math.max(1, bitsOfPixel / 8);
    const lines = unfilterLines(data.subarray(at, end), perPassLine, step);
    if (lines === undefined) return undefined;
    if (!form.isInterlaced) return lines;
    for (let y = 0; y < pass.height; y += 1) {
      const from = lines.subarray(y * perPassLine, (y + 1) * perPassLine);
      const line = (pass.top + y * pass.down) * perLine;
      spread(from, picture.subarray(line, line + perLine), pass, bitsOfPixel);
    }
    at = end;
  }
  return picture;
}

/** Puts the pixels of a pass's line where they belong in the picture's line. */
function spread(
  from: Uint8Array,
  to: Uint8Array,
  pass: Pass,
  bitsOfPixel: number,
): void {
  for (let x = 0; x < pass.width; x += 1) {
    const target = (pass.left + x * pass.across) * bitsOfPixel;
    const source = x * bitsOfPixel;
    if (bitsOfPixel >= 8) {
      const length = bitsOfPixel / 8;
      to.set(from.subarray(source / 8, source / 8 + length), target / 8);
    } else {
      const value =
        ((from[source >> 3] ?? 0) >> (8 - bitsOfPixel - (source & 7))) &
        (2 ** bitsOfPixel - 1);
      const place = 8 - bitsOfPixel - (target & 7);
      to[target >> 3] = (to[target >> 3] ?? 0) | (value << place);
    }
  }
}

function passesOf({ width, height, isInterlaced }: LineForm): readonly Pass[] {
  if (!isInterlaced) return [{ left: 0, top: 0, across: 1, down: 1, width, height }];
  return passes
    .map(([left, top, across, down]) => ({
      left,
      top,
      across,
      down,
      width: Math.max(0, Math.ceil((width - left) / across)),
      height: Math.max(0, Math.ceil((height - top) / down)),
    }))
    .filter((pass) => pass.width > 0 && pass.height > 0);
}
