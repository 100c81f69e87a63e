import { refusal, type BagFault } from './bag-fault.ts';
import { greatestBag, greatestRatio, harmlessSize } from './limits.ts';
import { pathFault, pathFaults, shown } from './safe-paths.ts';
import { payloadFolder } from './tag-files.ts';
import type { ZipEntry } from './zip-entries.ts';

/** Bits of the general purpose flag (PKWARE APPNOTE 4.4.4). */
const flags = { encrypted: 0x2041, sizesBehind: 0x8 };

/** File types in the upper half of the external attributes, as Unix writes them there. */
const types = { mask: 0xf000, unset: 0, file: 0x8000, folder: 0x4000, link: 0xa000 };

/** The first thing in a zip that could do harm or deceive; undefined where there is none. `directory`: where it begins. */
export function judgeEntries(
  entries: readonly ZipEntry[],
  directory: number,
): BagFault | undefined {
  for (const entry of entries) {
    const reason = pathReason(entry) ?? typeReason(entry) ?? sizeReason(entry);
    if (reason !== undefined) return refusal(`its file ${shown(entry.path)} ${reason}`);
  }
  const [clash] = pathFaults(entries.filter(isFile).map(({ path }) => path));
  if (clash !== undefined)
    return refusal(`its file ${shown(clash.path)} ${clash.reason}`);
  const total = entries.reduce((sum, { listed }) => sum + listed.uncompressedSize, 0);
  if (total > greatestBag)
    return refusal(
      `its files hold ${total} bytes, and more than ${greatestBag} are refused`,
    );
  return overlap(entries, directory);
}

const isFile = (entry: ZipEntry): boolean => !entry.isFolder;

function pathReason({ path }: ZipEntry): string | undefined {
  const kept = path.startsWith(payloadFolder) ? path.slice(payloadFolder.length) : path;
  return pathFault(path) ?? pathFault(kept);
}

function typeReason({ listed, isFolder }: ZipEntry): string | undefined {
  const type = (listed.externalFileAttributes >>> 16) & types.mask;
  if (type === types.link) return 'is a link';
  if (type !== types.unset && type !== (isFolder ? types.folder : types.file))
    return 'is marked as something else than an ordinary file';
  if ((listed.generalPurposeBitFlag & flags.encrypted) !== 0) return 'is encrypted';
  if (listed.compressionMethod !== 0 && listed.compressionMethod !== 8)
    return `is packed by a method that is not read, number ${listed.compressionMethod}`;
  return undefined;
}

function sizeReason({ listed, local, isFolder }: ZipEntry): string | undefined {
  if (!local.fileName.equals(listed.fileNameRaw))
    return 'has another name where its bytes begin';
  if (local.compressionMethod !== listed.compressionMethod)
    return 'is packed one way by the directory and another way where its bytes begin';
  // Where the sizes follow the bytes, zeros stand in front of them.
  const isSaidBehind = (local.generalPurposeBitFlag & flags.sizesBehind) !== 0;
  const isSaidElsewhere = local.compressedSize === 0xffff_ffff;
  const isLying =
    local.compressedSize !== listed.compressedSize ||
    local.uncompressedSize !== listed.uncompressedSize;
  if (isLying && !isSaidElsewhere && !(isSaidBehind && local.compressedSize === 0))
    return 'has one size in the directory and another where its bytes begin';
  if (isFolder && listed.uncompressedSize > 0) return 'is a folder and holds bytes';
  if (
    listed.uncompressedSize > harmlessSize &&
    listed.uncompressedSize > greatestRatio * listed.compressedSize
  )
    return `would unpack to more than ${greatestRatio} times its size`;
  return undefined;
}

function overlap(
  entries: readonly ZipEntry[],
  directory: number,
): BagFault | undefined {
  const stretches = entries
    .map(({ path, listed, local }) => ({
      path,
      start: listed.relativeOffsetOfLocalHeader,
      end: local.fileDataStart + listed.compressedSize,
    }))
    .toSorted((one, other) => one.start - other.start);
  const faulty = stretches.find(
    ({ end }, index) => end > (stretches[index + 1]?.start ?? directory),
  );
  return faulty === undefined
    ? undefined
    : refusal(`its file ${shown(faulty.path)} shares bytes with what follows it`);
}
