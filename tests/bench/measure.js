import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const main = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const reporter = new URL('report-usage.js', import.meta.url).href;

/**
 * Runs the program as a process of its own. Answers its wall time, processor time and greatest
 * memory (seconds, seconds, MB), what it wrote, and the seconds of each stage where it told them.
 */
export function measure(args, folder) {
  const usage = join(folder, 'usage.json');
  const start = performance.now();
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', reporter, main, ...args],
    { encoding: 'utf8', env: { ...process.env, BENCH_USAGE: usage }, maxBuffer: 1e9 },
  );
  const wall = (performance.now() - start) / 1000;
  if (status !== 0)
    throw new Error(`sumzero ${args.join(' ')} ended with ${status}\n${stderr}`);
  const stages = Object.fromEntries(
    [...stderr.matchAll(/^([a-z ]+) ([\d.]+) s$/gm)].map(([, name, seconds]) => [
      name,
      Number(seconds),
    ]),
  );
  return { wall, ...JSON.parse(readFileSync(usage, 'utf8')), stdout, stages };
}

/** Of several runs the one whose processor time is in the middle. */
export function middleOf(runs) {
  return runs.toSorted((one, other) => one.cpu - other.cpu)[
    Math.floor(runs.length / 2)
  ];
}
