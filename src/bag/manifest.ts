/** A file as a manifest lists it. */
export interface ManifestLine {
  /** Inside the bag, as it stands in the zip. */
  readonly path: string;
  /** 64 hexadecimal digits. */
  readonly sha256: string;
}

/** A manifest as read: its lines, and how many of its lines are none. */
export interface ReadManifest {
  readonly lines: readonly ManifestLine[];
  readonly unreadable: number;
}

/** A manifest (RFC 8493, 2.1.3): digest, two blanks, path; in the order of code units of the paths, each line ended. */
export function writeManifest(lines: readonly ManifestLine[]): string {
  return lines
    .toSorted((one, other) => byCodeUnit(one.path, other.path))
    .map(({ path, sha256 }) => `${sha256}  ${escaped(path)}\n`)
    .join('');
}

/** Reads a manifest, more liberally than it is written: either case, any blanks, any line ends. */
export function readManifest(text: string): ReadManifest {
  const read = text
    .split(/\r\n|\r|\n/)
    .filter((line) => line !== '')
    .map((line): ManifestLine | undefined => {
      const found = /^([0-9a-fA-F]{64})[ \t]+\*?(.+)$/s.exec(line);
      return found === null
        ? undefined
        : { path: plain(found[2] ?? ''), sha256: (found[1] ?? '').toLowerCase() };
    });
  const lines = read.filter((line) => line !== undefined);
  return { lines, unreadable: read.length - lines.length };
}

/** −1, 0 or 1 as one text comes before the other by its code units. */
export function byCodeUnit(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

// RFC 8493, 2.1.3: line feed, carriage return and per cent are percent-encoded in a path, and only those.
const escaped = (path: string): string =>
  path.replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A');

const plain = (path: string): string =>
  path.replace(/%0A/gi, '\n').replace(/%0D/gi, '\r').replace(/%25/g, '%');
