import { watch, type FSWatcher } from 'node:fs';
import { join } from 'node:path';
import type { World } from '../world/index.ts';

/** Editors save in several steps; a save is over when nothing has moved for so many milliseconds. */
const calm = 120;

/** What is watched, and what is told. */
export interface WatchRequest {
  readonly world: World;
  readonly folder: string;
  /** Whether a change of this file, a path below the folder, counts. */
  readonly counts: (file: string) => boolean;
  /** Called once after each save. */
  readonly onSave: () => void;
}

/**
 * Watches a project folder and the folders in it. Folders are watched rather than files, because
 * many editors save by renaming a new file over the old one. Answers how to stop, or why the system
 * refuses: it has a limit to what may be watched.
 */
export function watchFolder({
  world,
  folder,
  counts,
  onSave,
}: WatchRequest): { readonly stop: () => void } | { readonly refused: string } {
  const watchers = new Map<string, FSWatcher>();
  let timer: NodeJS.Timeout | undefined;
  const changed = (file: string): void => {
    // A folder may go away between being listed and being watched; the next change sees to it.
    tried(watchAll);
    if (!counts(file)) return;
    clearTimeout(timer);
    timer = setTimeout(onSave, calm);
  };
  const watchOne = (inside: string): void => {
    if (watchers.has(inside)) return;
    const watcher = watch(join(folder, inside), (_, name) => {
      changed(name === null ? inside : `${inside}${name}`);
    });
    // A folder that goes away is watched again when it comes back.
    watcher.on('error', () => {
      watcher.close();
      watchers.delete(inside);
    });
    watchers.set(inside, watcher);
  };
  const watchAll = (): void => {
    const folders = (world.list(folder) ?? []).filter(
      (name) => name.endsWith('/') && !name.startsWith('.'),
    );
    for (const gone of [...watchers.keys()].filter(
      (one) => one !== '' && !folders.includes(one),
    )) {
      watchers.get(gone)?.close();
      watchers.delete(gone);
    }
    for (const inside of ['', ...folders]) watchOne(inside);
  };
  const stop = (): void => {
    clearTimeout(timer);
    for (const watcher of watchers.values()) watcher.close();
  };
  const refused = tried(watchAll);
  if (refused === undefined) return { stop };
  stop();
  return { refused };
}

/** Why the system refused; undefined where it did not. */
function tried(action: () => void): string | undefined {
  try {
    action();
    return undefined;
  } catch (failure) {
    return failure instanceof Error ? failure.message : String(failure);
  }
}
