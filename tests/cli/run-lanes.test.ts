import { describe, expect, test } from 'vitest';
import type { Lane, Verified } from '../../src/cli/lane.ts';
import { runLanes } from '../../src/cli/run-lanes.ts';

const answer = (path: string): Verified => ({ path, failure: 'none' });

/** A lane that answers when it is told to, and what it was asked for. */
function heldLane(): {
  readonly lane: Lane;
  readonly asked: string[];
  readonly release: () => Promise<void>;
  readonly hasEnded: () => boolean;
} {
  const asked: string[] = [];
  const held: (() => void)[] = [];
  let hasEnded = false;
  return {
    asked,
    hasEnded: () => hasEnded,
    release: async () => {
      held.shift()?.();
      // Everything that follows from it is done before the next turn of the loop.
      await new Promise((then) => {
        setImmediate(then);
      });
    },
    lane: {
      verify: async (path) => {
        asked.push(path);
        await new Promise<void>((then) => {
          held.push(then);
        });
        return answer(path);
      },
      end: () => {
        hasEnded = true;
        return Promise.resolve();
      },
    },
  };
}

describe('running lanes', () => {
  test('gives each lane the next path as it becomes free, and tells results in order', async () => {
    const [slow, fast] = [heldLane(), heldLane()];
    const told: string[] = [];
    const counts: number[] = [];
    const running = runLanes(['a', 'b', 'c', 'd'], [slow.lane, fast.lane], {
      onResult: ({ path }) => told.push(path),
      onProgress: (done) => counts.push(done),
    });
    await fast.release();
    await fast.release();
    expect([slow.asked, fast.asked]).toEqual([['a'], ['b', 'c', 'd']]);
    // Two are done, and none is told before the first of all.
    expect([told, counts]).toEqual([[], [1, 2]]);
    await slow.release();
    expect(told).toEqual(['a', 'b', 'c']);
    await fast.release();
    await running;
    expect(told).toEqual(['a', 'b', 'c', 'd']);
    expect([slow.hasEnded(), fast.hasEnded()]).toEqual([true, true]);
  });

  test('ends where there is nothing to do', async () => {
    const { lane, asked, hasEnded } = heldLane();
    await runLanes([], [lane], {
      onResult: () => undefined,
      onProgress: () => undefined,
    });
    expect([asked, hasEnded()]).toEqual([[], true]);
  });
});
