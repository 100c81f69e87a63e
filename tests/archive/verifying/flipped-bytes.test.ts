import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { verify } from '../../../src/archive/index.ts';
import { openBag } from '../../../src/bag/index.ts';
import { memoryWorld } from '../../../src/world/index.ts';
import { archivedSluice, forged, program } from '../../support/archived-sluice.ts';
import { zipByHand } from '../../support/zip-by-hand.ts';

let bag: Uint8Array;
beforeAll(async () => {
  bag = (await archivedSluice()).bytes;
});

/** Whether a bag is told to be other than it was issued, without being worked again. */
async function isTold(bytes: Uint8Array): Promise<boolean> {
  const found = await verify(memoryWorld({ 'a.zip': bytes }), 'a.zip', program);
  const isHarmed = found.verdict === 'damaged' || found.verdict === 'unreadable';
  return isHarmed && found.damage.length > 0 && found.compared === undefined;
}

describe('a bag of which something was changed', () => {
  test('is found whichever byte it is, and whatever it becomes', async () => {
    let tried = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 0, max: bag.length - 1 }),
        fc.integer({ min: 1, max: 255 }),
        async (at, by) => {
          const changed = Uint8Array.from(bag);
          changed[at] = changed[at]! ^ by;
          tried += 1;
          expect(await isTold(changed), `byte ${at} changed by ${by}`).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
    expect(tried).toBe(2000);
  }, 600_000);

  test('is found wherever it is cut short', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: bag.length - 1 }), async (length) => {
        expect(await isTold(bag.subarray(0, length))).toBe(true);
      }),
      { numRuns: 100 },
    );
  }, 120_000);

  test('is found where bytes are put in before, within or behind it', async () => {
    for (const at of [0, 1000, bag.length]) {
      const longer = [...bag.subarray(0, at), 0, ...bag.subarray(at)];
      expect(await isTold(Uint8Array.from(longer)), `at ${at}`).toBe(true);
    }
  });
});

/** The bag laid again with its files changed, its lists left as they were. */
async function relaid(
  change: (files: Map<string, Uint8Array>) => void,
): Promise<Uint8Array> {
  const { value: opened } = await openBag(memoryWorld({ 'a.zip': bag }), 'a.zip');
  const files = new Map<string, Uint8Array>();
  for (const { path } of opened!.files) files.set(path, (await opened!.read(path))!);
  change(files);
  return zipByHand([...files].map(([name, bytes]) => ({ name, bytes })));
}

type Change = (files: Map<string, Uint8Array>, folder: string) => void;

const changes: readonly (readonly [string, Change])[] = [
  [
    'changed',
    (files, folder) => files.set(`${folder}definition/loads.yaml`, new Uint8Array(9)),
  ],
  ['removed', (files, folder) => files.delete(`${folder}definition/loads.yaml`)],
  [
    'added',
    (files, folder) =>
      files.set(`${folder}definition/members/b9.yaml`, new Uint8Array()),
  ],
  [
    'renamed',
    (files, folder) => {
      const path = `${folder}definition/members/b1.yaml`;
      const kept = files.get(path)!;
      files.delete(path);
      files.set(path.replace('b1', 'c1'), kept);
    },
  ],
  [
    'put in the place of another and that in its own',
    (files, folder) => {
      const [one, other] = ['project', 'loads'].map(
        (name) => `${folder}definition/${name}.yaml`,
      ) as [string, string];
      const kept = files.get(one)!;
      files.set(one, files.get(other)!).set(other, kept);
    },
  ],
];

describe('a bag of which files were changed', () => {
  test.each(changes)('is found with a file %s', async (_, change) => {
    expect(await isTold(await relaid((files) => change(files, 'data/')))).toBe(true);
  });

  test.each(changes)(
    'is found with a file %s and all lists forged',
    async (_, change) => {
      expect(await isTold(await forged(bag, (files) => change(files, '')))).toBe(true);
    },
  );
});
