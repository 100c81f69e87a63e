import type { ReadPicture } from './picture.ts';
import { readJpeg } from './read-jpeg.ts';
import { readPng } from './read-png.ts';

/** Reads a picture, told apart by its first bytes. */
export function readPicture(bytes: Uint8Array): ReadPicture {
  if (beginsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))
    return readPng(bytes);
  if (beginsWith(bytes, [0xff, 0xd8, 0xff])) return readJpeg(bytes);
  return { problem: 'is no PNG or JPEG picture' };
}

/**
 * Why a picture cannot stand in a package, as words that follow its name (`is a JPEG in CMYK
 * colours`); undefined where it can. To be asked before writing, which throws.
 */
export function imageProblem(bytes: Uint8Array): string | undefined {
  const picture = readPicture(bytes);
  return 'problem' in picture ? picture.problem : undefined;
}

const beginsWith = (bytes: Uint8Array, head: readonly number[]): boolean =>
  head.every((byte, index) => bytes[index] === byte);
