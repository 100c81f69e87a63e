import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { watchFolder } from '../../src/cli/watch-folder.ts';
import { diskWorld } from '../../src/world/index.ts';

let folder = '';
let saves = 0;
let stop = (): void => undefined;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'watched-'));
  mkdirSync(join(folder, 'members'));
  writeFileSync(join(folder, 'members', 'b1.yaml'), 'mark: B1');
  saves = 0;
  const watching = watchFolder({
    world: diskWorld(),
    folder,
    counts: (file) => file.endsWith('.yaml'),
    onSave: () => {
      saves += 1;
    },
  });
  if ('refused' in watching) throw new Error(watching.refused);
  stop = watching.stop;
});

afterEach(() => {
  stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Waits until so many saves were told, or long enough to be sure that they will not be. */
async function settled(count: number): Promise<number> {
  for (let tries = 0; tries < 60 && saves < count; tries += 1) await wait(50);
  await wait(300);
  return saves;
}

describe('watching a folder', () => {
  test('a save in several steps is told once', async () => {
    for (const text of ['one', 'two', 'three'])
      writeFileSync(join(folder, 'project.yaml'), text);
    expect(await settled(1)).toBe(1);
  });

  test('a file that is saved by renaming another over it is seen, again and again', async () => {
    for (const count of [1, 2]) {
      writeFileSync(join(folder, 'members', 'b1.new'), `${count}`);
      renameSync(join(folder, 'members', 'b1.new'), join(folder, 'members', 'b1.yaml'));
      expect(await settled(count)).toBe(count);
    }
  });

  test('a folder that is made later is watched too', async () => {
    mkdirSync(join(folder, 'sheets'));
    await wait(200);
    writeFileSync(join(folder, 'sheets', 's1.yaml'), 'title: x');
    expect(await settled(1)).toBe(1);
  });

  test('a folder that goes away and comes back is watched again', async () => {
    rmSync(join(folder, 'members'), { recursive: true });
    await settled(1);
    mkdirSync(join(folder, 'members'));
    await wait(200);
    const before = saves;
    writeFileSync(join(folder, 'members', 'b2.yaml'), 'mark: B2');
    expect(await settled(before + 1)).toBe(before + 1);
  });

  test('a folder that is not there is refused', () => {
    const watching = watchFolder({
      world: diskWorld(),
      folder: join(folder, 'nowhere'),
      counts: () => true,
      onSave: () => undefined,
    });
    expect('refused' in watching && watching.refused).toContain('ENOENT');
  });

  test('files that do not count are passed over', async () => {
    writeFileSync(join(folder, 'package.pdf'), 'x');
    expect(await settled(1)).toBe(0);
  });
});
