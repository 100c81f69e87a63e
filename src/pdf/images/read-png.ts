import { unzlibSync } from 'fflate';
import type { Picture, ReadPicture } from './picture.ts';
import { readChunks } from './png-chunks.ts';
import type { PngChunks, PngHeader } from './png-chunks.ts';
import { bytesOfLine, dataLength, plainLines } from './png-lines.ts';
import type { LineForm } from './png-lines.ts';

const grey = 0;
const colour = 2;
const palette = 3;
const greyWithAlpha = 4;
const channelsWithAlpha: ReadonlySet<number> = new Set([4, 6]);
const channelsOf: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };

/**
 * Reads a PNG (ISO/IEC 15948). Where a PDF can hold its lines as they are they stay packed; where
 * opacity is mixed in with the colours, or lines are interlaced, they are unpacked and set apart.
 */
export function readPng(bytes: Uint8Array): ReadPicture {
  const chunks = readChunks(bytes);
  if ('problem' in chunks) return chunks;
  const { header } = chunks;
  const channels = channelsOf[header.colourType];
  if (channels === undefined) return { problem: 'is a PNG of an unknown kind' };
  const form = { ...header, channels };
  const unpacked = inflate(chunks.data);
  if (unpacked?.length !== dataLength(form)) return damaged;
  if (header.colourType === palette && chunks.palette.length < 3)
    return { problem: 'is a PNG without its palette' };
  return setApart(chunks, form, () => plainLines(unpacked, form));
}

const damaged = { problem: 'is a damaged PNG' } as const;

function setApart(
  { header, palette: entries, clear, data: packed }: PngChunks,
  { channels }: LineForm,
  unpack: () => Uint8Array | undefined,
): ReadPicture {
  const { width, height, bits, colourType, isInterlaced } = header;
  const hasClearEntries = colourType === palette && clear.length > 0;
  const clearColour = clearColourOf(header, clear);
  const whole = {
    width,
    height,
    bits,
    colours: coloursOf(header, entries),
    ...(clearColour === undefined ? {} : { clearColour }),
  };
  const isMixed = channelsWithAlpha.has(colourType);
  if (!isMixed && !hasClearEntries && !isInterlaced)
    return { ...whole, data: packed, packing: { kind: 'png', channels } };
  const data = unpack();
  if (data === undefined) return damaged;
  const plain: Picture = { ...whole, data, packing: { kind: 'none' } };
  if (isMixed) return withoutAlpha(plain, channels);
  return hasClearEntries ? withClearEntries(plain, clear) : plain;
}

function inflate(data: Uint8Array): Uint8Array | undefined {
  try {
    return unzlibSync(data);
  } catch {
    return undefined;
  }
}

function coloursOf({ colourType }: PngHeader, entries: Uint8Array): Picture['colours'] {
  if (colourType === palette) return { palette: entries };
  return colourType === grey || colourType === greyWithAlpha
    ? 'DeviceGray'
    : 'DeviceRGB';
}

/** Sets colours and opacity apart; of 16 bits the upper 8 are kept. */
function withoutAlpha(whole: Picture, channels: number): Picture {
  const lines = whole.data;
  const step = whole.bits / 8;
  const pixels = whole.width * whole.height;
  const data = new Uint8Array(pixels * (channels - 1));
  const opacity = new Uint8Array(pixels);
  for (let pixel = 0; pixel < pixels; pixel += 1) {
    const from = pixel * channels * step;
    for (let channel = 0; channel < channels - 1; channel += 1)
      data[pixel * (channels - 1) + channel] = lines[from + channel * step] ?? 0;
    opacity[pixel] = lines[from + (channels - 1) * step] ?? 0;
  }
  return { ...whole, bits: 8, data, opacity };
}

/** Looks up how opaque the palette's entry of each pixel is; entries that are not named are opaque. */
function withClearEntries(whole: Picture, clear: Uint8Array): Picture {
  const { width, height, bits, data: lines } = whole;
  const perLine = bytesOfLine(width, bits);
  const opacity = new Uint8Array(width * height);
  for (let pixel = 0; pixel < opacity.length; pixel += 1) {
    const bit = (pixel % width) * bits;
    const byte = lines[Math.floor(pixel / width) * perLine + (bit >> 3)] ?? 0;
    const entry = (byte >> (8 - bits - (bit & 7))) & (2 ** bits - 1);
    opacity[pixel] = clear[entry] ?? 255;
  }
  return { ...whole, opacity };
}

/** The one clear colour of a grey or coloured picture (two bytes a channel in the file). */
function clearColourOf(
  { colourType }: PngHeader,
  clear: Uint8Array,
): readonly number[] | undefined {
  if (colourType !== grey && colourType !== colour) return undefined;
  const channels = colourType === grey ? 1 : 3;
  if (clear.length < 2 * channels) return undefined;
  return Array.from(
    { length: channels },
    (_, channel) => 256 * (clear[2 * channel] ?? 0) + (clear[2 * channel + 1] ?? 0),
  );
}
