import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { verify, type Verification } from '../../../src/archive/index.ts';
import { diskWorld } from '../../../src/world/index.ts';
import { program, sluiceFiles } from '../../support/archived-sluice.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'other-build-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A build of the program as it might have been: version 0.0.9, with another I of W12x26 in its table. */
function otherBuild(): string {
  const build = join(folder, 'build');
  mkdirSync(build);
  for (const name of ['node_modules', 'fonts', 'report-templates'])
    symlinkSync(join(root, name), join(build, name));
  cpSync(join(root, 'dist'), join(build, 'dist'), { recursive: true });
  const about = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as object;
  writeFileSync(
    join(build, 'package.json'),
    JSON.stringify({ ...about, version: '0.0.9' }),
  );
  const table = join(build, 'dist/standards/cross-sections/us-shapes.js');
  const text = readFileSync(table, 'utf8');
  // AISC Manual: I of W12x26 is 204 in⁴.
  const changed = text.replace(/('W12x26'.*?) 204 /u, '$1 214 ');
  expect(changed).not.toBe(text);
  writeFileSync(table, changed);
  return join(build, 'dist/cli/main.js');
}

let found: Verification;
beforeAll(async () => {
  for (const [path, text] of Object.entries(sluiceFiles)) {
    mkdirSync(join(folder, 'sluice', dirname(path)), { recursive: true });
    writeFileSync(join(folder, 'sluice', path), text);
  }
  const { status, stderr } = spawnSync(
    process.execPath,
    [otherBuild(), 'archive', join(folder, 'sluice')],
    { encoding: 'utf8' },
  );
  expect([status, stderr]).toEqual([0, '']);
  const bag = join(folder, 'sluice/issued/2031-207-A.zip');
  found = await verify(diskWorld(), bag, { ...program, version: '0.1.0' });
}, 120_000);

test('a package of a build with another constant is as issued, and differs', () => {
  expect(found).toMatchObject({
    verdict: 'differs',
    damage: [],
    versions: { issued: '0.0.9', present: '0.1.0' },
  });
  expect(found.compared!.figures).toBeGreaterThan(found.differences.length);
});

test('what depends on the constant is told by name, with both values, and nothing else', () => {
  // I is in the deflections and in the limits judged on them; forces do not depend on it.
  for (const { member, what } of found.differences) {
    expect(member).toBe('B1');
    expect(what).toMatch(/deflection/u);
  }
  const difference = found.differences.find(
    ({ what }) => what === 'result L, deflection min',
  );
  // 5 w L⁴ / 384 E I: 1 kip/ft over 12 ft, E = 29 000 ksi (AISC 360).
  const deflection = (i: number): number =>
    (5 * (1 / 12) * 144 ** 4) / (384 * 29_000 * i);
  expect(Number.parseFloat(difference!.archived!)).toBeCloseTo(-deflection(214), 6);
  expect(Number.parseFloat(difference!.computed!)).toBeCloseTo(-deflection(204), 6);
  expect(difference!.archived).toMatch(/ in$/u);
});
