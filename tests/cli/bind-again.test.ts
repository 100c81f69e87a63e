import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { run } from '../../src/cli/index.ts';
import { diskWorld } from '../../src/world/index.ts';
import { keepingStreams, shed } from '../support/command-line.ts';

test('bind --watch binds on every save, outlives errors, and ends cleanly when asked to stop', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'bound-'));
  mkdirSync(join(folder, 'members'));
  const files = shed({ 'members/b2.yaml': undefined }).files;
  for (const [path, bytes] of files)
    writeFileSync(join(folder, path.replace('shed/', '')), bytes);
  let interrupt = (): void => undefined;
  let isListening = false;
  const { streams, out, err } = keepingStreams({
    onInterrupt: (then) => {
      interrupt = then;
      isListening = true;
      return () => {
        isListening = false;
      };
    },
  });
  const said = async (text: string, times: number): Promise<void> => {
    const count = (): number => (out() + err()).split(text).length - 1;
    for (let tries = 0; tries < 900 && count() < times; tries += 1) await wait(100);
    expect(count(), `${out()}\n${err()}`).toBe(times);
  };
  const member = join(folder, 'members', 'b1.yaml');
  const good = new TextDecoder().decode(files.get('shed/members/b1.yaml'));
  try {
    const ended = run(['bind', folder, '--watch'], diskWorld(), streams);
    await said('Ctrl-C ends.', 1);
    writeFileSync(member, good.replace('12 ft', '12'));
    await said('[unit-missing]', 1);
    await said('Ctrl-C ends.', 2);
    writeFileSync(member, good.replace('2 kip', '4 kip'));
    await said('moment +100.0 %', 1);
    await said('Ctrl-C ends.', 3);
    // What binding itself wrote is no save.
    await wait(600);
    await said('Bound ', 2);
    interrupt();
    expect(await ended).toBe(0);
    expect(isListening).toBe(false);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}, 200_000);
