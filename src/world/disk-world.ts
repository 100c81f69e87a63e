import { mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { failureName, failureWords } from './disk-words.ts';
import { readOwnFile } from './own-file.ts';
import { openOnDisk } from './open-on-disk.ts';
import type { ReadAnswer, World, WriteAnswer } from './world.ts';
import { writeNewSafely, writeSafely } from './write-safely.ts';

/** The world as it is: the machine's disk and the program's own files. Keeps no state. */
export function diskWorld(): World {
  return {
    read,
    open: openOnDisk,
    sizeOf,
    list,
    write: writeSafely,
    writeNew: writeNewSafely,
    makeFolder,
    ownFile: readOwnFile,
  };
}

function read(path: string): ReadAnswer {
  try {
    return { bytes: new Uint8Array(readFileSync(path)) };
  } catch (failure) {
    const name = failureName(failure);
    if (name === 'ENOENT' || name === 'ENOTDIR') return { missing: true };
    return { refused: name === 'EISDIR' ? 'it is a folder' : failureWords(failure) };
  }
}

function sizeOf(path: string): number | undefined {
  try {
    const found = statSync(path);
    return found.isDirectory() ? undefined : found.size;
  } catch {
    return undefined;
  }
}

function list(folder: string): readonly string[] | undefined {
  try {
    // Links are followed: a linked folder is a folder, a link that leads nowhere is a file.
    return readdirSync(folder)
      .map((name) => (isFolder(join(folder, name)) ? `${name}/` : name))
      .sort(byCodeUnit);
  } catch {
    return undefined;
  }
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

function byCodeUnit(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

function makeFolder(path: string): WriteAnswer {
  try {
    makeWithParents(path);
    return { written: true };
  } catch (failure) {
    return { refused: failureWords(failure) };
  }
}

// By hand, because mkdirSync with `recursive` never returns (Node 20) where the system keeps
// answering that the parent is missing although it is there, as /proc does.
function makeWithParents(path: string): void {
  if (isFolder(path)) return;
  const parent = dirname(path);
  const isOrphan = statSync(parent, { throwIfNoEntry: false }) === undefined;
  if (isOrphan && parent !== path) makeWithParents(parent);
  mkdirSync(path);
}
