import { Worker } from 'node:worker_threads';
import type { Lane, Verified } from './lane.ts';

/** What a thread is asked to do: the path of a bag. What it answers is a `Verified`. */
export interface ThreadSetting {
  readonly program: { readonly name: string; readonly version: string };
}

/**
 * A lane in a thread of its own, which lives as long as the lane: the program is loaded once. A thread that
 * dies (out of memory, say) fails the bag that it was at; the next bag gets a new one.
 */
export function laneInThread(entry: URL, setting: ThreadSetting): Lane {
  // The thread at work; none before the first bag and after a death.
  const current: { worker?: Worker } = {};
  return {
    verify: async (path) => {
      const worker = current.worker ?? new Worker(entry, { workerData: setting });
      current.worker = worker;
      const answer = await answerOf(worker, path);
      if (answer.isDead) delete current.worker;
      return answer.verified;
    },
    end: async () => {
      await current.worker?.terminate();
    },
  };
}

async function answerOf(
  worker: Worker,
  path: string,
): Promise<{ readonly verified: Verified; readonly isDead: boolean }> {
  return await new Promise((settle) => {
    const listeners = {
      message: (verified: Verified) => done(verified, false),
      messageerror: () =>
        done({ path, failure: 'what was found could not be handed over' }, false),
      error: (failure: Error) =>
        done({ path, failure: `its thread died: ${failure.message}` }, true),
      exit: (code: number) =>
        done({ path, failure: `its thread ended with ${code}` }, true),
    };
    // Each by its name: the worker has listeners of its own, which must stay.
    const done = (verified: Verified, isDead: boolean): void => {
      for (const [event, listener] of Object.entries(listeners))
        worker.off(event, listener);
      // What a dying thread still has to say must not bring the program down.
      if (isDead) worker.on('error', () => undefined);
      settle({ verified, isDead });
    };
    for (const [event, listener] of Object.entries(listeners))
      worker.on(event, listener);
    worker.postMessage(path);
  });
}
