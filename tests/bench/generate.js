import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Numbers from 0 to 1 that look random and are the same every time: a linear congruence modulo 2³² (Knuth, TAOCP 2, 3.3.4). */
function sequence(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/**
 * Writes a project of so many beams into a folder: simple spans, overhangs, cantilevers and beams
 * with a hinge, under loads of every kind, a third of them carrying a reaction of an earlier one.
 */
export function generate(folder, count) {
  mkdirSync(join(folder, 'members'), { recursive: true });
  writeFileSync(
    join(folder, 'project.yaml'),
    `project: { number: "B-${count}", title: Row of ${count} sheds }\nunits: us\n`,
  );
  writeFileSync(
    join(folder, 'loads.yaml'),
    [
      'cases:',
      '  D: { kind: dead }',
      '  L: { kind: live }',
      '  S: { kind: snow }',
      'areas:',
      '  roof: { D: 18 psf, S: 30 psf }',
      'combinations: [ asce7-strength, asce7-allowable ]',
      '',
    ].join('\n'),
  );
  for (let index = 1; index <= count; index += 1)
    writeFileSync(join(folder, 'members', `b${index}.yaml`), beam(index));
}

function beam(index) {
  const random = sequence(index * 7919);
  const between = (low, high) => Math.round((low + (high - low) * random()) * 4) / 4;
  const span = between(10, 28);
  const shape = shapes[index % shapes.length](span, between(2, 6));
  const loads = [
    `{ case: D, uniform: ${between(0.25, 1)} kip/ft }`,
    `{ case: L, point: ${between(1, 12)} kip, at: ${between(1, span - 1)} ft }`,
    `{ area: roof, width: ${between(4, 10)} ft, from: A, to: B }`,
    `{ case: L, varying: [ 0 kip/ft, ${between(0.25, 1)} kip/ft ], from: A, to: B }`,
    `{ case: L, couple: ${between(2, 9)} kip ft, at: B, turn: clockwise${shape.hinge ? ', side: left' : ''} }`,
  ];
  const chosen = loads.filter((_, at) => at === 0 || random() < 0.6);
  // Only beams of the first shape are carried, because their support B is an ordinary roller.
  const carried = index - 1 - ((index - 1) % shapes.length);
  if (index % 3 === 2 && carried > 0)
    chosen.push(`{ reaction: B${carried}.B, at: ${between(1, span - 1)} ft }`);
  return [
    `mark: B${index}`,
    `title: Beam of shed ${index}`,
    'kind: beam',
    `points: ${shape.points}`,
    `supports: ${shape.supports}`,
    ...(shape.hinge ? [`hinges: [ ${shape.hinge} ]`] : []),
    'loads:',
    ...chosen.map((load) => `  - ${load}`),
    '',
  ].join('\n');
}

const shapes = [
  (span) => ({
    points: `{ A: 0 ft, B: ${span} ft }`,
    supports: '{ A: pin, B: roller }',
  }),
  (span, more) => ({
    points: `{ A: 0 ft, B: ${span} ft, C: +${more} ft }`,
    supports: '{ A: pin, B: roller }',
  }),
  (span) => ({ points: `{ A: 0 ft, B: ${span} ft }`, supports: '{ A: fixed }' }),
  (span, more) => ({
    points: `{ A: 0 ft, B: ${span} ft, C: +${more} ft, D: +${span} ft }`,
    supports: '{ A: fixed, C: roller }',
    hinge: 'B',
  }),
];
