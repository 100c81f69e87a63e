// Archives one package under many names and verifies them all in one process: time a bag against the time
// of binding it, and whether memory stays where it was. `node tests/bench/verify-bags.js 50` takes 50 bags.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { archiveProject, bindProject, verify } from '../../dist/index.js';
import { diskWorld } from '../../dist/world/index.js';
import { generate } from './generate.js';

const program = { name: 'sumzero', version: '0.1.0' };
const count = Number(process.argv[2] ?? 200);
const members = 10;
const told = new Set([20, 100, count]);
const folder = mkdtempSync(join(tmpdir(), 'bags-'));
const world = diskWorld();

try {
  const project = join(folder, 'project');
  generate(project, members);
  const binding = await middle(5, () => bindProject(world, project, { program }));
  const { value, diagnostics } = await archiveProject(world, project, {
    program,
    isAsIs: true,
  });
  if (value === undefined) throw new Error(diagnostics[0]?.message);
  mkdirSync(join(folder, 'vault'));
  for (let index = 1; index <= count; index += 1)
    writeFileSync(join(folder, 'vault', `${index}.zip`), value.bytes);
  console.log(
    `${members} members, a bag of ${(value.bytes.length / 1e6).toFixed(2)} MB; bound in ${binding.toFixed(2)} s`,
  );
  const start = process.cpuUsage();
  for (let index = 1; index <= count; index += 1) {
    const found = await verify(world, join(folder, 'vault', `${index}.zip`), program);
    if (found.verdict !== 'intact') throw new Error(JSON.stringify(found, null, 2));
    if (told.has(index)) {
      const seconds = secondsSince(start) / index;
      const megabytes = process.memoryUsage().rss / 1e6;
      console.log(
        `${index} verified: ${seconds.toFixed(3)} s a bag, ${((100 * seconds) / binding).toFixed(0)} % of binding; ${megabytes.toFixed(0)} MB`,
      );
    }
  }
  console.log(`on all cores, as a command: ${asCommand().toFixed(1)} s for ${count}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Seconds of processor time since a measurement; other programs on the machine do not count. */
function secondsSince(start) {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
}

async function middle(times, work) {
  const seconds = [];
  for (let time = 0; time < times; time += 1) {
    const start = process.cpuUsage();
    await work();
    seconds.push(secondsSince(start));
  }
  return seconds.toSorted((one, other) => one - other)[Math.floor(times / 2)];
}

function asCommand() {
  const main = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
  const start = performance.now();
  const { status, stdout } = spawnSync(
    process.execPath,
    [main, 'verify', join(folder, 'vault')],
    { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(stdout);
  return (performance.now() - start) / 1000;
}
