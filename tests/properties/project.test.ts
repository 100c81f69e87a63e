import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hasErrors } from '../../src/diagnostics/index.ts';
import { codes } from '../../src/diagnostics/index.ts';
import { idealise, loadPath } from '../../src/project/index.ts';
import { solveBeam } from '../../src/statics/index.ts';
import { readFolder } from '../support/folder.ts';

const good: Readonly<Record<string, string>> = {
  'project.yaml': `project: { number: "2031-014", title: Millrace Footbridge, status: for review, logo: images/a.png }
people:
  prepared: { name: A. Quill, initials: AQ, date: 2031-03-14 }
  checked: { name: R. Tamsin, initials: RT }
revisions: [ { mark: A, date: 2031-03-14, note: First issue, prepared: AQ, checked: RT } ]
units: us
lengths: feet-inches
figures: 3
conventions: { moments: clockwise, moment_diagram: tension }
criteria:
  standards: [ "ASCE/SEI 7-22" ]
  deflection_limits: { L: L/360, D+L: L/240 }
assumptions:
  - { id: A1, text: Bearings turn freely., confirmed: false }
sections: { plate: { I: 100 in^4, A: 5 in^2 } }
sheet_order: [ B1, B2 ]
`,
  'loads.yaml': `cases:
  D: { title: Dead, kind: dead }
  L: { kind: live, pattern: true, category: A }
areas:
  deck: { D: 65 psf, L: 90 psf }
combinations: [ asce7-strength, { set: en1990-uls, expression: 6.10ab }, { mark: "D + 0.5L", factors: { D: 1, L: 0.5 }, for: service } ]
alternatives: [ [ D, L ] ]
`,
  'members/b1.yaml': `mark: B1
kind: beam
points: { A: 0 ft, B: 6 ft, C: 21 ft, D: +4 ft, E: 12 m }
supports: { A: fixed, C: { type: roller, normal: 60 deg, settlement: 0.5 in, case: L }, E: { type: spring, stiffness: 40 kip/in } }
hinges: [ B ]
loads:
  - { case: L, point: 8.4 kip, at: [ B, 10 ft, D ] }
  - { uniform: { D: 0.25 kip/ft, L: 0.40 kip/ft }, span: A-C, uses: [ A1 ] }
  - { case: D, varying: [ 0 kip/ft, 0.6 kip/ft ], from: A, to: C, direction: 300 deg, per: projection }
  - { area: deck, width: [ 0 ft, 8 ft 6 in ], times: { L: 0.82 }, because: reduction }
  - { case: L, couple: 9 kip ft, at: B, turn: clockwise, side: left }
  - { reaction: B2.C, at: D, times: 2 }
self_weight: D
section: plate
material: A992
deflection_limits: { L: L/480 }
bracing: { top: continuous, bottom: [ A, C ] }
`,
  'members/b2.yaml': `mark: B2
kind: beam
points: { A: 0 m, "2": 3 m, C: 6 m }
supports: { A: pin, C: roller }
loads:
  - { case: L, point: 12 kN, at: 2 }
sections: [ { from: A, to: 2, section: W12x26 }, { from: 2, to: C, section: { weight: 0.4 kN/m } } ]
material: { E: 200 GPa, density: 77 kN/m^3 }
self_weight: D
`,
  'theme.yaml': 'text: { size: 11 }\ncolour: { ink: [ 0, 0, 0.2 ] }\n',
};
const names = Object.keys(good);

/** Pieces of the format and of YAML, so that mutations stay close to what people write. */
const pieces = fc.constantFrom(
  '{',
  '}',
  '[',
  ']',
  ':',
  ': ',
  ',',
  ', ',
  '- ',
  '\n',
  '\n  ',
  ' #',
  '"',
  "'",
  '|',
  '>',
  '&a ',
  '*a',
  '!t ',
  '<<: ',
  '? ',
  '~',
  'null',
  '\t',
  '\r\n',
  '\ufeff',
  '---\n',
  '...\n',
  '%YAML 1.1\n',
  '0',
  '-',
  '+',
  '1,250 lb',
  '.inf',
  '.nan',
  '1e400 kip',
  '0x10',
  'A',
  'B',
  'C',
  'Z',
  'D',
  'L',
  'ft',
  ' kip',
  ' kip/ft',
  ' deg',
  'all',
  '__proto__',
  'constructor',
  'toString',
  'yes',
  '0 ft',
  '-3 ft',
  'A-C',
  'B1.A',
  'B2.C',
  'mark',
  'case',
  'at',
  'point',
  'uniform',
  'supports',
  'pin',
  'fixed',
  'truss',
  'é',
  '😀',
  '\u2028',
  '\0',
);
const anyText = fc.oneof(
  fc.string({ maxLength: 60 }),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.array(pieces, { maxLength: 40 }).map((parts) => parts.join('')),
);
const mutation = fc.record({
  file: fc.constantFrom(...names),
  at: fc.nat(1200),
  remove: fc.oneof(fc.constant(0), fc.nat(12), fc.nat(200)),
  insert: fc.oneof(fc.constant(''), pieces, anyText),
});
const mutated = fc.array(mutation, { minLength: 1, maxLength: 4 }).map((mutations) => {
  const files = { ...good };
  for (const { file, at, remove, insert } of mutations) {
    const text = files[file] ?? '';
    const start = at % (text.length + 1);
    files[file] = text.slice(0, start) + insert + text.slice(start + remove);
  }
  return files;
});
const replaced = fc
  .record({ file: fc.constantFrom(...names), text: anyText })
  .map(({ file, text }) => ({ ...good, [file]: text }));

/** What must hold of any folder whatever. */
function judge(files: Readonly<Record<string, string>>): void {
  const picture = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const { value, diagnostics } = readFolder({ ...files, 'images/a.png': picture });
  for (const { span, code, message, hints } of diagnostics) {
    expect(Object.hasOwn(codes, code)).toBe(true);
    expect(message).not.toMatch(/undefined|NaN|\[object/);
    expect(hints.join()).not.toMatch(/undefined|NaN|\[object/);
    if (span === undefined) continue;
    // The reader sees a text without its byte order mark.
    const text = (files[span.file] ?? '').replace(/^\ufeff/, '');
    expect(Object.hasOwn(files, span.file)).toBe(true);
    expect(0 <= span.start && span.start <= span.end && span.end <= text.length).toBe(
      true,
    );
  }
  const own = diagnostics.filter((one) => one.member === undefined);
  expect(value === undefined).toBe(hasErrors(own));
  if (value === undefined) return;
  const fates = [
    ...value.members.map((one) => one.file),
    ...value.faulty.map((one) => one.file),
  ];
  expect(fates.sort()).toEqual(
    Object.keys(files).filter((name) => name.startsWith('members/')),
  );
  const path = loadPath(value.members);
  expect([...path.order].sort()).toEqual(
    value.members.map((member) => member.mark).sort(),
  );
  // What was taken for sound can be handed to the solver, which throws for what no reader may build.
  for (const member of value.members) solveBeam(idealise(value, member).structure);
}

describe('any folder whatever', () => {
  test('the unchanged folder is sound', () => {
    judge(good);
    expect(
      readFolder({ ...good, 'images/a.png': new Uint8Array([0xff, 0xd8, 0xff]) }).value
        ?.members,
    ).toHaveLength(2);
  });

  test('gives a project or diagnostics with places inside its files, when a file is any text', () => {
    fc.assert(fc.property(replaced, judge), { numRuns: 90 });
  });

  test('gives a project or diagnostics with places inside its files, when good files are damaged', () => {
    fc.assert(fc.property(mutated, judge), { numRuns: 150 });
  });

  test('is read the same twice', () => {
    fc.assert(
      fc.property(mutated, (files) => {
        expect(readFolder(files)).toEqual(readFolder(files));
      }),
      { numRuns: 30 },
    );
  });
});
