import { checksum, startDigest } from '../world/index.ts';
import type { OpenBag } from './bag.ts';

/** What a file of a bag was found to hold, read once and piece by piece. */
export interface WeighedFile {
  readonly path: string;
  /** In bytes. */
  readonly size: number;
  readonly sha256: string;
  /** CRC-32. */
  readonly crc: number;
}

/** Every file of a bag as found, in the bag's order, and the paths of those that cannot be read. */
export async function weighFiles(bag: OpenBag): Promise<{
  readonly weighed: readonly WeighedFile[];
  readonly unreadable: readonly string[];
}> {
  const weighed: WeighedFile[] = [];
  const unreadable: string[] = [];
  for (const { path } of bag.files) {
    const found = await weigh(bag, path).catch(() => undefined);
    if (found === undefined) unreadable.push(path);
    else weighed.push(found);
  }
  return { weighed, unreadable };
}

async function weigh(bag: OpenBag, path: string): Promise<WeighedFile> {
  const digesting = startDigest();
  let crc = 0;
  let size = 0;
  for await (const piece of bag.piecesOf(path) ?? []) {
    digesting.add(piece);
    crc = checksum(piece, crc);
    size += piece.length;
  }
  return { path, size, sha256: digesting.end(), crc };
}
