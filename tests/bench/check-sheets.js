import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { workProject } from '../../dist/pipeline.js';
import { checkWorked } from '../../dist/review/index.js';
import { diskWorld } from '../../dist/world/index.js';

// Marks a thousand sheets of six steps, one slip in every second, of one beam with five loads.
const count = 1000;
const folder = mkdtempSync(join(tmpdir(), 'sheets-'));
const loads = [2, 5, 9, 14, 18].map((at, index) => [at, index + 1.5]);
for (const part of ['members', 'worked']) mkdirSync(join(folder, part));
writeFileSync(join(folder, 'project.yaml'), 'project: { title: Sheets }\nunits: us\n');
writeFileSync(
  join(folder, 'members', 'b1.yaml'),
  `mark: B1\nkind: beam\npoints: { A: 0 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ ${loads.map(([at, size]) => `{ case: L, point: ${size} kip, at: ${at} ft }`).join(', ')} ]\n`,
);
for (let sheet = 0; sheet < count; sheet += 1) {
  const slip = sheet % 2 === 0 ? 1 : -1;
  const terms = loads.map(
    ([at, size], index) =>
      `${index === sheet % 5 && slip < 0 ? '+' : '-'} ${size} kip * ${at} ft`,
  );
  const forces = loads.map(([, size]) => `- ${size} kip`).join(' ');
  const steps = [
    `sum: moments about A, write: "RC * 21 ft ${terms.join(' ')} = 0"`,
    `sum: forces up, write: "RA + RC ${forces} = 0"`,
    `sum: moments about C, write: "-RA * 21 ft ${loads.map(([at, size]) => `+ ${size} kip * ${21 - at} ft`).join(' ')} = 0"`,
    `value: moment at 5 ft, write: "RA * 5 ft - 1.5 kip * 3 ft"`,
    `value: shear at 10 ft, write: "RA - 1.5 kip - 2.5 kip - 3.5 kip"`,
    `write: "W = 1.5 kip + 2.5 kip = 4 kip"`,
  ];
  writeFileSync(
    join(folder, 'worked', `${String(sheet).padStart(4, '0')}.yaml`),
    `member: B1\nnames: { RA: reaction A up, RC: reaction C up }\nsteps:\n${steps.map((step) => `  - { ${step} }\n`).join('')}`,
  );
}
const { project, members } = workProject(diskWorld(), folder);
const start = performance.now();
const before = process.cpuUsage();
const files = checkWorked(project, members);
const seconds = (performance.now() - start) / 1000;
const { user, system } = process.cpuUsage(before);
const wrong = files.filter(({ summary }) => summary.wrong > 0).length;
console.log(
  `${files.length} sheets, ${wrong} with a slip, marked in ${seconds.toFixed(2)} s (${((user + system) / 1e6).toFixed(2)} s of processor)`,
);

// The worst sheets: six lines each that fit nothing, as long as lines may be, of a beam with many loads.
const spread = [0, 1, 2, 3, 4, 5].map(
  (at) =>
    `{ case: L, varying: [ ${at + 0.3} kip/ft, ${at / 2 + 0.7} kip/ft ], from: ${at} ft, to: ${at + 9} ft }`,
);
const points = Array.from(
  { length: 14 },
  (_, at) =>
    `{ case: L, point: ${((at + 1) * 1.37).toFixed(2)} kip, at: ${at + 2} ft }`,
);
writeFileSync(
  join(folder, 'members', 'b2.yaml'),
  `mark: B2\nkind: beam\npoints: { A: 0 ft, B: 7 ft, C: 14 ft, D: 21 ft }\nsupports: { A: pin, D: roller }\nloads: [ ${[...points, ...spread].join(', ')} ]\n`,
);
const terms = (count, of) =>
  Array.from({ length: count }, (_, at) => of(at)).join(' - ');
const hostile = {
  'fit nothing': terms(28, (at) => `${at + 3.3} kip * ${(at / 7 + 1).toFixed(3)} ft`),
  'all alike': terms(60, () => '1.37 kip * 2.01 ft'),
  'over many lengths': terms(
    40,
    (at) => `${at + 1.1} kip * 3 ft * 7 ft / ${at + 2.3} ft`,
  ),
  'all a little out': terms(
    14,
    (at) => `${((at + 1) * 1.44).toFixed(3)} kip * ${at + 2.2} ft`,
  ),
  'twelve of no load': terms(
    12,
    (at) => `${(at * 3.7 + 2.9).toFixed(1)} kip * ${(at * 1.3 + 0.9).toFixed(1)} ft`,
  ),
};
for (const name of readdirSync(join(folder, 'worked')))
  rmSync(join(folder, 'worked', name));
for (const [title, line] of Object.entries(hostile)) {
  const claims = [
    'about A',
    'about B',
    'about C',
    'about D',
    'about 3 ft',
    'about 11 ft',
  ];
  writeFileSync(
    join(folder, 'worked', `${title}.yaml`),
    `member: B2\nnames: { RA: reaction A up, RD: reaction D up }\nsteps:\n${claims.map((claim) => `  - { sum: moments ${claim}, write: "RD * 21 ft - ${line} = 0" }\n`).join('')}`,
  );
}
// Sheets of sixty such lines; one that does not say its loading, of a member with eight cases.
const cases = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'];
const eight = points.map((load, at) =>
  load.replace('case: L', `case: ${cases[at % 8]}`),
);
writeFileSync(
  join(folder, 'members', 'b3.yaml'),
  `mark: B3\nkind: beam\npoints: { A: 0 ft, B: 7 ft, C: 14 ft, D: 21 ft }\nsupports: { A: pin, D: roller }\nloads: [ ${[...eight, ...spread.map((load, at) => load.replace('case: L', `case: ${cases[at]}`))].join(', ')} ]\n`,
);
writeFileSync(
  join(folder, 'loads.yaml'),
  `cases: { ${['L', ...cases].map((mark) => `${mark}: { kind: live }`).join(', ')} }\n`,
);
const lines = Object.values(hostile);
const sixty = Array.from({ length: 60 }, (_, at) => {
  const line = lines[at % lines.length];
  const about = ['A', 'B', 'C', 'D', `${at / 3 + 1} ft`][Math.floor(at / 5) % 5];
  return `  - { sum: moments about ${about}, write: "RD * 21 ft - ${line} = 0" }\n`;
});
for (const [title, member] of [
  ['sixty lines', 'B2'],
  ['sixty lines under eight cases', 'B3'],
])
  writeFileSync(
    join(folder, 'worked', `${title}.yaml`),
    `member: ${member}\nnames: { RA: reaction A up, RD: reaction D up }\nsteps:\n${sixty.join('')}`,
  );
const worst = workProject(diskWorld(), folder);
for (const file of worst.project.worked) {
  const begun = process.cpuUsage();
  const [marked] = checkWorked({ ...worst.project, worked: [file] }, worst.members);
  const own = process.cpuUsage(begun);
  const spent = (own.user + own.system) / 1e6;
  const { wrong, unread } = marked.summary;
  console.log(
    `${file.file}: ${marked.steps.length} lines in ${spent.toFixed(2)} s of processor, at worst 2 s (${wrong} wrong, ${unread} unread)${marked.fault?.message ?? ''}`,
  );
}
rmSync(folder, { recursive: true });
