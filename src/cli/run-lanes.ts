import type { Lane, Verified } from './lane.ts';

/** Who is told how far the lanes are. */
export interface Watcher {
  /** Each result, in the order of the paths, as soon as all before it are there. */
  readonly onResult: (verified: Verified) => void;
  /** How many are done, whatever their order. */
  readonly onProgress: (done: number) => void;
}

/** Verifies paths on several lanes at once, each taking the next path as it becomes free, and ends the lanes. */
export async function runLanes(
  paths: readonly string[],
  lanes: readonly Lane[],
  { onResult, onProgress }: Watcher,
): Promise<void> {
  const waiting = new Map<number, Verified>();
  const next = { path: 0, told: 0, done: 0 };
  const keep = (index: number, verified: Verified): void => {
    next.done += 1;
    onProgress(next.done);
    waiting.set(index, verified);
    for (;;) {
      const first = waiting.get(next.told);
      if (first === undefined) return;
      waiting.delete(next.told);
      next.told += 1;
      onResult(first);
    }
  };
  const work = async (lane: Lane): Promise<void> => {
    for (;;) {
      const index = next.path;
      const path = paths[index];
      if (path === undefined) break;
      next.path += 1;
      keep(index, await lane.verify(path));
    }
    await lane.end();
  };
  await Promise.all(lanes.map(work));
}
