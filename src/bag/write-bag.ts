import { ZipFile } from 'yazl';
import { digest, fixedTime } from '../world/index.ts';
import type { BagContents, KeptFile } from './bag.ts';
import { joined } from './joined.ts';
import { greatestBag, greatestFile, mostFiles } from './limits.ts';
import { byCodeUnit } from './manifest.ts';
import { pathFaults, shown } from './safe-paths.ts';
import { payloadFolder, sumLabel, tagFilesOf } from './tag-files.ts';

/** Mode of every file: an ordinary one, that its owner may write and everybody read. */
const ordinaryFile = 0o100_644;

/**
 * Lays a bag (RFC 8493, version 1.0) at the root of a zip: tag files first, the payload in the order of
 * code units of its paths, nothing deflated. Equal contents give equal bytes. Throws a RangeError for
 * paths that `pathFaults` names, for what is larger than a bag may be, and for a line that is added anyway.
 */
export async function writeBag(contents: BagContents): Promise<Uint8Array> {
  const payload = contents.payload
    .map(({ path, bytes }) => ({ path: `${payloadFolder}${path}`, bytes }))
    .toSorted((one, other) => byCodeUnit(one.path, other.path));
  refuseFaults(contents);
  const listed = payload.map(({ path, bytes }) => ({
    path,
    size: bytes.length,
    sha256: digest(bytes),
  }));
  return zipOf([...tagFilesOf(listed, contents.info), ...payload]);
}

function refuseFaults({ payload, info }: BagContents): void {
  const [fault] = pathFaults(payload.map(({ path }) => path));
  if (fault !== undefined)
    throw new RangeError(`the path ${shown(fault.path)} ${fault.reason}`);
  if (info.some(({ label }) => label.toLowerCase() === sumLabel.toLowerCase()))
    throw new RangeError(`${sumLabel} is added by writeBag`);
  const total = payload.reduce((sum, { bytes }) => sum + bytes.length, 0);
  // Headers take less than 2.2 kB a file, paths of the longest included.
  if (
    payload.length > mostFiles - 4 ||
    payload.some(({ bytes }) => bytes.length > greatestFile) ||
    total > greatestBag - 3000 * (mostFiles + 1)
  )
    throw new RangeError('more or larger files than a bag may hold');
}

async function zipOf(files: readonly KeptFile[]): Promise<Uint8Array> {
  const zip = new ZipFile();
  for (const { path, bytes } of files)
    zip.addBuffer(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length), path, {
      mtime: fixedTime(),
      mode: ordinaryFile,
      compress: false,
      forceDosTimestamp: true,
    });
  zip.end();
  const pieces: Uint8Array[] = [];
  for await (const piece of zip.outputStream)
    if (typeof piece !== 'string') pieces.push(piece);
  return joined(pieces);
}
