import { encoded } from './tag-files.ts';

/** What the container of a file depends on. */
export interface LaidFile {
  readonly path: string;
  readonly size: number;
  /** CRC-32. */
  readonly crc: number;
}

/** A stretch of the zip that holds no file's bytes. */
export interface LaidPart {
  /** Where it begins, in bytes from the start of the zip. */
  readonly at: number;
  readonly bytes: Uint8Array;
  /** What it is, a phrase for the user. */
  readonly what: string;
}

/**
 * Every stretch of a zip around the files that are laid in it, as `writeBag` has its zip written: the form
 * of PKWARE's APPNOTE 6.3, nothing deflated, no extra fields, no comments. Written here a second time,
 * by hand, so that a bag is compared with what it must be and not with what the same writer does today.
 */
export function layZip(files: readonly LaidFile[]): readonly LaidPart[] {
  let at = 0;
  const heads: LaidPart[] = [];
  const entries: LaidPart[] = [];
  for (const file of files) {
    const bytes = localHeader(file);
    heads.push({ at, bytes, what: `what stands in front of ${file.path}` });
    entries.push({
      at: 0,
      bytes: directoryEntry(file, at),
      what: `the line for ${file.path} in the directory of the zip`,
    });
    at += bytes.length + file.size;
  }
  const directory = at;
  const lines = entries.map((entry) => {
    const placed = { ...entry, at };
    at += entry.bytes.length;
    return placed;
  });
  const end = endRecord(files.length, at - directory, directory);
  return [...heads, ...lines, { at, bytes: end, what: 'the last record of the zip' }];
}

/** Little-endian numbers of 2 or 4 bytes, one after another. */
function record(fields: readonly (readonly [number, 2 | 4])[]): Uint8Array {
  return Uint8Array.from(
    fields.flatMap(([value, width]) =>
      Array.from({ length: width }, (_, byte) => (value >>> (8 * byte)) & 0xff),
    ),
  );
}

/** Version 2.0 needed, names in UTF-8, stored, noon of 2 January 1980, checksum, sizes, length of name, no extra field (4.4). */
const shared = ({
  path,
  size,
  crc,
}: LaidFile): readonly (readonly [number, 2 | 4])[] => [
  [20, 2],
  [0x0800, 2],
  [0, 2],
  [12 << 11, 2],
  [(1 << 5) | 2, 2],
  [crc, 4],
  [size, 4],
  [size, 4],
  [encoded(path).length, 2],
  [0, 2],
];

/** A local file header (4.3.7). */
function localHeader(file: LaidFile): Uint8Array {
  const fields = record([[0x04034b50, 4], ...shared(file)]);
  return Uint8Array.from([...fields, ...encoded(file.path)]);
}

/** A central directory header (4.3.12): made on Unix by version 6.3, no comment, disk 0, an ordinary file of mode 644. */
function directoryEntry(file: LaidFile, offset: number): Uint8Array {
  const fields = record([
    [0x02014b50, 4],
    [(3 << 8) | 63, 2],
    ...shared(file),
    [0, 2],
    [0, 2],
    [0, 2],
    [0o100644 * 0x10000, 4],
    [offset, 4],
  ]);
  return Uint8Array.from([...fields, ...encoded(file.path)]);
}

/** The end of central directory record (4.3.16): one disk, no comment. */
function endRecord(count: number, size: number, offset: number): Uint8Array {
  return record([
    [0x06054b50, 4],
    [0, 2],
    [0, 2],
    [count, 2],
    [count, 2],
    [size, 4],
    [offset, 4],
    [0, 2],
  ]);
}
