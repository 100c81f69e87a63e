// How long it takes: the program as cold processes, from one beam to a hundred. `npm run bench`
// builds first; `node tests/bench/run.js 1 10` measures projects of these sizes alone.
import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { generate } from './generate.js';
import { measure, middleOf } from './measure.js';

const stageNames = ['loading', 'reading', 'working', 'composing', 'layout', 'writing'];
const heads = ['', 'wall', 'CPU', 'peak MB', 'sheets', 'sheets/s', ...stageNames];

const asked = process.argv.slice(2).map(Number);
const sizes = asked.length > 0 ? asked : [1, 10, 100];
const folder = mkdtempSync(join(tmpdir(), 'bench-'));

try {
  console.log(
    `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'processor'}`,
  );
  console.log(
    'Seconds are wall time unless said otherwise; of several runs the middle one.\n',
  );
  const rows = [
    row('--help', repeated(5, ['--help'])),
    ...sizes.flatMap((count) => {
      const project = join(folder, `${count}`);
      generate(project, count);
      const times = count === 1 ? 5 : 1;
      return [
        row(`solve, ${named(count)}`, repeated(times, ['solve', project, '--json'])),
        row(`bind, ${named(count)}`, repeated(times, ['bind', project, '--timings'])),
      ];
    }),
  ];
  print([heads, ...rows]);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function repeated(times, args) {
  return middleOf(Array.from({ length: times }, () => measure(args, folder)));
}

function named(count) {
  return count === 1 ? '1 member' : `${count} members`;
}

function row(name, { wall, cpu, megabytes, stdout, stages }) {
  const sheets = Number(/^Bound (\d+) sheets/m.exec(stdout)?.[1] ?? 0);
  const rate = sheets === 0 ? '' : (sheets / wall).toFixed(1);
  return [
    name,
    wall.toFixed(2),
    cpu.toFixed(2),
    megabytes.toFixed(0),
    sheets === 0 ? '' : String(sheets),
    rate,
    ...stageNames.map((stage) => stages[stage]?.toFixed(2) ?? ''),
  ];
}

function print(rows) {
  const widths = rows[0].map((_, at) => Math.max(...rows.map((one) => one[at].length)));
  for (const one of rows)
    console.log(
      one
        .map((text, at) =>
          at === 0 ? text.padEnd(widths[at]) : text.padStart(widths[at]),
        )
        .join('  '),
    );
}
