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
 * many editors save by renaming a new file over the old one. Answers how to stop.
 */
export function watchFolder({
  world,
  folder,
  counts,
  onSave,
}: WatchRequest): () => void {
  const watchers = new Map<string, FSWatcher>();
  let timer: NodeJS.Timeout | undefined;
  const changed = (file: string): void => {
    watchAll();
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
  watchAll();
  return () => {
    clearTimeout(timer);
    for (const watcher of watchers.values()) watcher.close();
  };
}
