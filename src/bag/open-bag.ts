import type { ZipFile } from 'yauzl';
import type { Diagnostic, Outcome } from '../diagnostics/index.ts';
import {
  piecesBetween,
  startDigest,
  type OpenFile,
  type World,
} from '../world/index.ts';
import type { BagLine, OpenBag } from './bag.ts';
import { readInfo } from './bag-info.ts';
import { refusal, thrownFault, unreadable, type BagFault } from './bag-fault.ts';
import { collected } from './joined.ts';
import { judgeEntries } from './judge-entries.ts';
import { greatestBag, greatestFile, greatestTagFile } from './limits.ts';
import { shown } from './safe-paths.ts';
import { declarationPath, infoPath } from './tag-files.ts';
import { zipEntries, type ZipEntry } from './zip-entries.ts';
import { openZip } from './zip-reader.ts';

/**
 * Opens a bag that somebody hands over, and trusts nothing in it: what could do harm is refused before
 * a byte of any file is read. The caller closes the bag. Whether it is whole is for `proveBag` to say.
 */
export async function openBag(world: World, path: string): Promise<Outcome<OpenBag>> {
  const answer = world.open(path);
  if (!('file' in answer)) {
    const reason = 'missing' in answer ? 'there is no such file' : answer.refused;
    return { diagnostics: [told(path, unreadable(reason))] };
  }
  const bag = await lookInto(answer.file).catch(thrownFault);
  if (!('code' in bag)) return { value: bag, diagnostics: [] };
  answer.file.close();
  return { diagnostics: [told(path, bag)] };
}

/** The diagnostic of a file that was not opened, or not read on. */
export function told(path: string, { code, reason }: BagFault): Diagnostic {
  const verdict = {
    'bag-unreadable': 'cannot be read',
    'not-a-bag': 'is no bag',
    'bag-refused': 'is refused',
  }[code];
  return {
    severity: 'error',
    code,
    message: `${shown(path)} ${verdict}: ${reason}`,
    hints: [],
  };
}

async function lookInto(file: OpenFile): Promise<OpenBag | BagFault> {
  if (file.size > greatestBag)
    return refusal(
      `it has ${file.size} bytes, and more than ${greatestBag} are refused`,
    );
  const zip = await openZip(file).catch((thrown: unknown) =>
    beginsAsZip(file)
      ? thrownFault(thrown)
      : ({ code: 'not-a-bag', reason: 'it is no zip' } as const),
  );
  if ('code' in zip) return zip;
  const found = await zipEntries(zip);
  if ('code' in found) return found;
  const fault = judgeEntries(found.entries, found.directory);
  if (fault !== undefined) return fault;
  const files = found.entries.filter((entry) => !entry.isFolder);
  if (!files.some((entry) => entry.path === declarationPath))
    return {
      code: 'not-a-bag',
      reason: `its zip has no ${declarationPath} at its root`,
    };
  return bagOf(file, zip, files);
}

/** `PK`, with which every part of a zip begins (PKWARE APPNOTE 4.3). */
function beginsAsZip(file: OpenFile): boolean {
  const [p, k] = file.readAt(0, 2);
  return p === 0x50 && k === 0x4b;
}

async function bagOf(
  file: OpenFile,
  zip: ZipFile,
  entries: readonly ZipEntry[],
): Promise<OpenBag | BagFault> {
  const byPath = new Map(entries.map((entry) => [entry.path, entry]));
  const piecesOf = (path: string): AsyncIterable<Uint8Array> | undefined => {
    const entry = byPath.get(path);
    return entry === undefined ? undefined : unpacked(file, zip, entry);
  };
  const read = async (path: string): Promise<Uint8Array | undefined> => {
    const size = byPath.get(path)?.listed.uncompressedSize ?? 0;
    if (size > greatestFile)
      throw new RangeError(
        `${shown(path)} holds ${size} bytes, too many to be read whole`,
      );
    const pieces = piecesOf(path);
    return pieces === undefined ? undefined : collected(pieces);
  };
  const info = await infoOf(byPath.get(infoPath), read);
  if ('code' in info) return info;
  return {
    files: entries.map(({ path, listed }) => ({ path, size: listed.uncompressedSize })),
    info,
    read,
    digestOf: async (path) => {
      const pieces = piecesOf(path);
      if (pieces === undefined) return undefined;
      const digesting = startDigest();
      for await (const piece of pieces) digesting.add(piece);
      return digesting.end();
    },
    piecesOf,
    zip: file,
    close: file.close,
  };
}

async function* unpacked(
  file: OpenFile,
  zip: ZipFile,
  { listed, local }: ZipEntry,
): AsyncGenerator<Uint8Array, void, undefined> {
  if (listed.compressionMethod !== 0) {
    const stream: AsyncIterable<Uint8Array> = await zip.openReadStreamPromise(listed);
    yield* stream;
    return;
  }
  const end = local.fileDataStart + listed.compressedSize;
  let left = listed.compressedSize;
  for (const piece of piecesBetween(file, local.fileDataStart, end)) {
    left -= piece.length;
    yield piece;
  }
  if (left > 0) throw new Error('unexpected EOF');
}

async function infoOf(
  entry: ZipEntry | undefined,
  read: OpenBag['read'],
): Promise<readonly BagLine[] | BagFault> {
  if (entry === undefined) return [];
  if (entry.listed.uncompressedSize > greatestTagFile)
    return refusal(`its ${infoPath} holds more than ${greatestTagFile} bytes`);
  return readInfo(new TextDecoder().decode(await read(infoPath)));
}
