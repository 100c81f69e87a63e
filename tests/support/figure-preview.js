// Writes sample figures as PNG, and all of them one under the other as sheet.png, into a folder:
// node tests/support/figure-preview.js <folder> [--boxes] [name …]
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { runnerImport } from 'vite';

const [folder, ...rest] = process.argv.slice(2);
if (folder === undefined) throw new Error('Name a folder to write to.');
const showBoxes = rest.includes('--boxes');
const wanted = rest.filter((word) => !word.startsWith('--'));
const root = new URL('../..', import.meta.url).pathname;
const { module } = await runnerImport(`${root}tests/support/figure-preview.ts`, {
  root,
  logLevel: 'error',
});
mkdirSync(folder, { recursive: true });
const write = (name, svg) => {
  const path = `${folder}/${name}`;
  writeFileSync(`${path}.svg`, svg);
  execFileSync('rsvg-convert', ['--zoom', '2.4', '-o', `${path}.png`, `${path}.svg`]);
};
const samples = module.previewSamples(wanted, showBoxes);
for (const [name, svg] of samples) write(name, svg);
let y = 0;
const stacked = samples.map(([, svg]) => {
  const placed = svg.replace('<svg ', `<svg x="0" y="${y}" `);
  y += Number(/height="([\d.]+)"/.exec(svg)[1]) + 18;
  return placed;
});
const sheet = `<svg xmlns="http://www.w3.org/2000/svg" width="410" height="${y}"><rect width="100%" height="100%" fill="#ddd"/>${stacked.join('')}</svg>`;
write('sheet', sheet);
