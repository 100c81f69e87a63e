import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { archivedSluice } from '../support/archived-sluice.ts';

// The program as it is installed: `npm test` builds it before.
const main = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'vault-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

beforeAll(async () => {
  const { bytes } = await archivedSluice();
  const damaged = Uint8Array.from(bytes);
  const at = Buffer.from(damaged).indexOf('"stable"');
  damaged[at + 3] = damaged[at + 3]! ^ 1;
  mkdirSync(join(folder, 'old'));
  for (const name of ['1.zip', '3.zip', 'old/4.zip'])
    writeFileSync(join(folder, name), bytes);
  writeFileSync(join(folder, '2.zip'), damaged);
}, 120_000);

test('threads give what one thread gives, in the order of the list', () => {
  const [one, two] = [
    ['--jobs', '1'],
    ['--jobs', '2'],
  ].map((more) =>
    spawnSync(process.execPath, [main, 'verify', folder, ...more], {
      encoding: 'utf8',
    }),
  );
  expect([one!.status, one!.stderr]).toEqual([1, '']);
  expect(two!.stdout).toBe(one!.stdout);
  const verdicts = one!.stdout.match(/^(?:intact|damaged)/gmu);
  expect(verdicts).toEqual(['intact', 'damaged', 'intact', 'intact']);
  expect(one!.stdout).toMatch(/^4 verified: 3 intact, 1 damaged$/mu);
}, 120_000);
