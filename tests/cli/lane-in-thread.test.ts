import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { laneInThread } from '../../src/cli/lane-in-thread.ts';

const folder = mkdtempSync(join(tmpdir(), 'lanes-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A thread that answers its own number, dies on `die` and throws on `throw`. */
const entry = join(folder, 'thread.mjs');
writeFileSync(
  entry,
  `import { parentPort, threadId, workerData } from 'node:worker_threads';
parentPort.on('message', (path) => {
  if (path === 'die') process.exit(7);
  if (path === 'throw') throw new Error('out of everything');
  parentPort.postMessage({ path, failure: workerData.program.version + ' ' + threadId });
});
`,
);
const lane = laneInThread(pathToFileURL(entry), {
  program: { name: 'sumzero', version: '9' },
});
afterAll(() => lane.end());

describe('a lane in a thread', () => {
  test('keeps its thread from bag to bag', async () => {
    const [one, other] = [await lane.verify('a'), await lane.verify('b')];
    expect(one).toMatchObject({
      path: 'a',
      failure: expect.stringMatching(/^9 \d+$/u),
    });
    expect('failure' in other && other.failure).toBe('failure' in one && one.failure);
  });

  test('fails the bag at which its thread died, and goes on with another', async () => {
    const before = await lane.verify('a');
    expect(await lane.verify('die')).toEqual({
      path: 'die',
      failure: 'its thread ended with 7',
    });
    const after = await lane.verify('b');
    expect(after).toMatchObject({ path: 'b', failure: expect.stringMatching(/^9 /u) });
    expect('failure' in after && after.failure).not.toBe(
      'failure' in before && before.failure,
    );
  });

  test('tells what a thread threw', async () => {
    expect(await lane.verify('throw')).toEqual({
      path: 'throw',
      failure: 'its thread died: out of everything',
    });
    expect(await lane.verify('c')).toMatchObject({ path: 'c' });
  });
});
