import {
  getFileNameLowLevel,
  type Entry,
  type LocalFileHeader,
  type ZipFile,
} from 'yauzl';
import { refusal, type BagFault } from './bag-fault.ts';
import { mostFiles } from './limits.ts';

/** A file or folder of a zip: what the directory says of it, and what stands in front of its bytes. */
export interface ZipEntry {
  /** Inside the zip; without the slash that a folder's name ends in. */
  readonly path: string;
  readonly isFolder: boolean;
  readonly listed: Entry;
  readonly local: LocalFileHeader;
}

/** All entries of a zip with where its directory begins, or why there are too many. Throws for a damaged zip. */
export async function zipEntries(
  zip: ZipFile,
): Promise<
  { readonly entries: readonly ZipEntry[]; readonly directory: number } | BagFault
> {
  if (zip.entryCount > mostFiles)
    return refusal(
      `it holds ${zip.entryCount} files, and more than ${mostFiles} are refused`,
    );
  // The reader's cursor stands at the directory until the first entry is read; its types call it a boolean.
  const directory = Number(zip.readEntryCursor);
  const entries: ZipEntry[] = [];
  for await (const listed of zip.eachEntry()) {
    const name = nameOf(listed);
    const isFolder = name.endsWith('/') && name !== '/';
    entries.push({
      path: isFolder ? name.slice(0, -1) : name,
      isFolder,
      listed,
      local: await zip.readLocalFileHeaderPromise(listed),
    });
  }
  return { entries, directory };
}

/** The name of an entry: in UTF-8 where its bytes are that, also where the flag (bit 11) is not set, as many packers leave it. */
function nameOf({ generalPurposeBitFlag, fileNameRaw, extraFields }: Entry): string {
  const flag = isUtf8(fileNameRaw)
    ? generalPurposeBitFlag | 0x800
    : generalPurposeBitFlag;
  return getFileNameLowLevel(flag, fileNameRaw, extraFields, true);
}

function isUtf8(bytes: Uint8Array): boolean {
  return !new TextDecoder().decode(bytes).includes('\ufffd');
}
