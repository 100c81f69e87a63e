import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
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
const files = checkWorked(project, members);
const seconds = (performance.now() - start) / 1000;
const wrong = files.filter(({ summary }) => summary.wrong > 0).length;
console.log(
  `${files.length} sheets, ${wrong} with a slip, marked in ${seconds.toFixed(2)} s`,
);
rmSync(folder, { recursive: true });
