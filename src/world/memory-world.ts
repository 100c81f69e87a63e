import { readOwnFile } from './own-file.ts';
import type { OpenFile, ReadAnswer, World, WriteAnswer } from './world.ts';

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
  const read = (path: string): ReadAnswer => {
    const bytes = files.get(tidied(path));
    if (bytes !== undefined) return { bytes };
    return list(path) === undefined ? { missing: true } : { refused: 'it is a folder' };
  };
  const write = (path: string, bytes: Uint8Array): WriteAnswer => {
    if (list(path) !== undefined) return { refused: 'there is a folder of that name' };
    files.set(tidied(path), bytes);
    return { written: true };
  };
  return {
    files,
    read,
    open: (path) => {
      const answer = read(path);
      return 'bytes' in answer ? { file: openBytes(answer.bytes) } : answer;
    },
    sizeOf: (path) => files.get(tidied(path))?.length,
    list,
    write,
    writeNew: (path, bytes) =>
      files.has(tidied(path))
        ? { refused: 'there is a file of that name' }
        : write(path, bytes),
    makeFolder: (path) => {
      if (files.has(tidied(path))) return { refused: 'there is a file of that name' };
      made.add(tidied(path));
      return { written: true };
    },
    ownFile: readOwnFile,
  };
}

function openBytes(bytes: Uint8Array): OpenFile {
  return {
    size: bytes.length,
    readAt: (offset, length) => bytes.slice(offset, offset + length),
    close: () => undefined,
  };
}

const tidied = (path: string): string =>
  path
    .replace(/\/+/g, '/')
    .replace(/^(\.\/)+/, '')
    .replace(/\/$/, '')
    .replace(/^\.$/, '');
