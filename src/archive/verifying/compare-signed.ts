import { startDigest } from '../../world/index.ts';
import type { OpenBag } from '../../bag/index.ts';
import { payload } from '../payload-paths.ts';
import type { ArchiveRecord } from '../record.ts';
import type { Verification } from '../verification.ts';

/** Holds the signed PDF against the bound one as the record says; undefined where there is none. */
export async function compareSigned(
  bag: OpenBag,
  { signed }: ArchiveRecord,
): Promise<Verification['signed']> {
  const sizeOf = (path: string): number | undefined =>
    bag.files.find((file) => file.path === path)?.size;
  const [size, bound] = [sizeOf(payload.signed), sizeOf(payload.package) ?? 0];
  if (size === undefined) return undefined;
  const name = payload.signed.replace('data/', '');
  if (signed === null)
    return {
      comparison: 'not as recorded',
      message: `${name} lies in the bag, and the record does not tell of it`,
    };
  if (signed.comparison === 'not compared')
    return {
      comparison: 'not compared',
      message: `${name} is not the bound PDF with something added at its end; whether it shows the same cannot be told here`,
    };
  const isSame =
    size >= bound &&
    (await digestOfStart(bag, payload.signed, bound)) ===
      (await bag.digestOf(payload.package));
  return isSame
    ? {
        comparison: 'same start',
        message: `${name} is the bound PDF with ${size - bound} bytes added at its end; the signature itself is for a PDF reader to check`,
      }
    : {
        comparison: 'not as recorded',
        message: `${name} does not begin with the bound PDF, though the record says so`,
      };
}

/** SHA-256 of the first bytes of a file of a bag. */
async function digestOfStart(
  bag: OpenBag,
  path: string,
  length: number,
): Promise<string> {
  const digesting = startDigest();
  let left = length;
  for await (const piece of bag.piecesOf(path) ?? []) {
    digesting.add(piece.subarray(0, left));
    left -= Math.min(left, piece.length);
    if (left === 0) break;
  }
  return digesting.end();
}
