import { readOwnFile } from './own-file.ts';
import type { World } from './world.ts';

/** A world made of the given files, by path, with forward slashes. */
export interface MemoryWorld extends World {
  /** What the files hold now, written ones included, by path. */
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/**
 * A world that lives in memory, for tests and for trying a folder without touching the disk.
 * Paths are taken as they are, less a leading `./` and doubled slashes; folders are those that the
 * files need or that were made. The program's own files are the installed ones.
 */
export function memoryWorld(
  given: Readonly<Record<string, string | Uint8Array>>,
): MemoryWorld {
  const encoder = new TextEncoder();
  const files = new Map(
    Object.entries(given).map(([path, content]) => [
      tidied(path),
      typeof content === 'string' ? encoder.encode(content) : content,
    ]),
  );
  const made = new Set<string>();
  const list = (folder: string): readonly string[] | undefined => {
    const inside = tidied(folder) === '' ? '' : `${tidied(folder)}/`;
    const below = [...files.keys(), ...[...made].map((path) => `${path}/`)]
      .filter((path) => path.startsWith(inside))
      .map((path) => path.slice(inside.length));
    if (below.length === 0) return undefined;
    const names = below
      .filter((path) => path !== '')
      .map((path) => /^[^/]*\/?/.exec(path)?.[0] ?? path);
    return [...new Set(names)].sort((one, other) =>
      one < other ? -1 : one > other ? 1 : 0,
    );
  };
  return {
    files,
    read: (path) => {
      const bytes = files.get(tidied(path));
      if (bytes !== undefined) return { bytes };
      return list(path) === undefined
        ? { missing: true }
        : { refused: 'it is a folder' };
    },
    sizeOf: (path) => files.get(tidied(path))?.length,
    list,
    write: (path, bytes) => {
      if (list(path) !== undefined)
        return { refused: 'there is a folder of that name' };
      files.set(tidied(path), bytes);
      return { written: true };
    },
    makeFolder: (path) => {
      if (files.has(tidied(path))) return { refused: 'there is a file of that name' };
      made.add(tidied(path));
      return { written: true };
    },
    ownFile: readOwnFile,
  };
}

const tidied = (path: string): string =>
  path
    .replace(/\/+/g, '/')
    .replace(/^(\.\/)+/, '')
    .replace(/\/$/, '')
    .replace(/^\.$/, '');
