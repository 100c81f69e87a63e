import { describe, expect, test } from 'vitest';
import { markSheets } from './sheets/mark-sheets.ts';
import { sheet, type Sheet } from './sheets/sheet.ts';

// Answers as they were printed, right, wrong and misprinted, as steps of a worked file.
const bhavikatti =
  'Companion to Bhavikatti, Mechanics of Solids, https://tbc-python.fossee.in (github FOSSEE/Python-Textbook-Companions @d34b2ae7, MECHANICS_OF_SOLIDS_by_S.S._Bhavikatti)';
const pytel =
  'Companion to Pytel and Kiusalaas, Mechanics of Materials, same repository, Chapter06_3.ipynb, example 6.6.3';

const members = {
  // The source: L = 6 m, 30 kN and 15 kN·m clockwise at 4 m, EI = 10000 kN·m².
  P1: `mark: P1
kind: beam
points: { A: 0 m, C: 4 m, B: 6 m }
supports: { A: pin, B: roller }
section: { I: 50e6 mm^4 }
material: { E: 200 GPa }
loads: [ { case: L, point: 30 kN, at: C }, { case: L, couple: 15 kN m, at: C, turn: clockwise } ]
`,
  // L = 5 m, 20 kN at 1 m, 30 kN at 4 m, 10 kN/m from 1 m to 3 m, EI = 12000 kN·m².
  P2: `mark: P2
kind: beam
points: { A: 0 m, C: 1 m, D: 3 m, E: 4 m, B: 5 m }
supports: { A: pin, B: roller }
section: { I: 60e6 mm^4 }
material: { E: 200 GPa }
loads: [ { case: L, point: 20 kN, at: C }, { case: L, point: 30 kN, at: E }, { case: L, uniform: 10 kN/m, from: C, to: D } ]
`,
  // L = 3 m, 300 N at 2 m, E = 12 GPa, 40 mm by 80 mm.
  P3: `mark: P3
kind: beam
points: { A: 0 m, B: 2 m, C: 3 m }
supports: { A: pin, C: roller }
section: { I: 1706666.667 mm^4 }
material: { E: 12 GPa }
loads: [ { case: L, point: 300 N, at: B } ]
`,
  // L = 18 m, 196 N/m from 0 to 6 m, 4000 N·m clockwise at 12 m.
  P4: `mark: P4
kind: beam
points: { L: 0 m, C: 6 m, D: 12 m, R: 18 m }
supports: { L: pin, R: roller }
loads: [ { case: Q, uniform: 196 N/m, from: L, to: C }, { case: Q, couple: 4000 N m, at: D, turn: clockwise } ]
`,
  // L = 5 m, 0 at A rising to 10 N/m at 3 m.
  P5: `mark: P5
kind: beam
points: { A: 0 m, C: 3 m, B: 5 m }
supports: { A: pin, B: roller }
loads: [ { case: L, varying: [ 0 N/m, 10 N/m ], from: A, to: C } ]
`,
  // L = 0.4 m, 200 N·m clockwise at 0.1 m, 100 N at 0.2 m, 160 N at 0.3 m.
  P6: `mark: P6
kind: beam
points: { A: 0 m, C: 0.1 m, D: 0.2 m, E: 0.3 m, B: 0.4 m }
supports: { A: pin, B: roller }
loads: [ { case: L, couple: 200 N m, at: C, turn: clockwise }, { case: L, point: 100 N, at: D }, { case: L, point: 160 N, at: E } ]
`,
  // Double overhang: pin at 10 in, roller at 28 in, 12 lb/in on 0-10 in and 34-44 in, 100, 150, 100 lb at 16, 22, 28 in.
  P7: `mark: P7
kind: beam
points: { L: 0 in, A: 10 in, C: 16 in, D: 22 in, B: 28 in, E: 34 in, R: 44 in }
supports: { A: pin, B: roller }
loads: [ { case: L, uniform: 12 lb/in, from: L, to: A }, { case: L, uniform: 12 lb/in, from: E, to: R }, { case: L, point: 100 lb, at: [ C, B ] }, { case: L, point: 150 lb, at: D } ]
`,
  // Two spans of 3 m, 120 kN in the middle of the first, 40 kN/m on the second.
  P8: `mark: P8
kind: beam
points: { A: 0 m, D: 1.5 m, B: 3 m, C: 6 m }
supports: { A: pin, B: roller, C: roller }
section: { I: 60e6 mm^4 }
material: { E: 200 GPa }
loads: [ { case: L, point: 120 kN, at: D }, { case: L, uniform: 40 kN/m, from: B, to: C } ]
`,
};

interface Printed {
  readonly source: string;
  readonly sheet: Sheet;
}

const up = '{ RA: reaction A up, RB: reaction B up, RC: reaction C up }';

const printed: readonly Printed[] = [
  {
    // Printed in mm, though the value is in metres.
    source: `${bhavikatti}, Deflection 5.5.11`,
    sheet: sheet(
      'a deflection in the wrong unit',
      'P1',
      { names: '{ RA: reaction A up, RB: reaction B up }' },
      `moments about B: RA * 6 m - 30 kN * 2 m + 15 kN m = 0 ; RA = 7.5 kN
       forces up: RA + RB - 30 kN = 0 ; RB = 22.5 kN
       deflection at C: 0.0093 m => right rounding
       deflection at C: 0.0093 mm => wrong unit`,
    ),
  },
  {
    source: `${bhavikatti}, Deflection 5.5.14`,
    sheet: sheet(
      'three deflections in the wrong unit',
      'P2',
      { names: '{ RA: reaction A up, RB: reaction B up }' },
      `moments about B: RA * 5 m = 20 kN * 4 m + 20 kN * 3 m + 30 kN * 1 m ; RA = 34 kN
       deflection at C: 0.00603 mm => wrong unit
       deflection at D: 0.00953 mm => wrong unit
       deflection at E: 0.0061 mm => wrong unit
       deflection at D: 9.53 mm`,
    ),
  },
  {
    // Printed 0.487 deg: a coefficient misprinted; 0.466 deg by any reckoning.
    source: pytel,
    sheet: sheet(
      'an end slope',
      'P3',
      { names: '{ RA: reaction A up, RC: reaction C up }' },
      `moments about A: RC * 3 m - 300 N * 2 m = 0 ; RC = 200 N
       forces up: RA = 100 N
       maximum deflection: 7.09 mm
       slope at C: 0.487 deg => wrong magnitude
       slope at C: 0.466 deg
       slope at A: 0.466 deg => wrong magnitude`,
    ),
  },
  {
    // Whole numbers only were kept: R 757 for 757.78, M 1462 for 1464.9, both within three figures.
    // Called the greatest moment, which it is not: beside the couple it is 2509 N·m, sagging too.
    source:
      'Companion (Scilab) example 8.3 on a simple beam with part load and couple, value of M cut off by integer arithmetic',
    sheet: sheet(
      'values cut off',
      'P4',
      { names: '{ Rl: reaction L up, Rr: reaction R up }' },
      `moments about R: Rl * 18 m - 196 N/m * 6 m * 15 m + 4000 N m = 0 ; Rl = 757 N
       forces up: Rl + Rr - 1176 N = 0 ; Rr = 418 N
       station of zero shear: 757 N / (196 N/m) ; x = 3.86 m
       maximum moment: 757 N * 3.86 m / 2 ; M = 1462 N m sagging => wrong magnitude
       moment at 3.86 m: 757 N * 3.86 m / 2 ; M = 1462 N m`,
    ),
  },
  {
    // Printed with the sign of the source's own axis: −9 is 9 up.
    source: 'Python companion to a text on beams, example 5.2: R_A printed as -9 N',
    sheet: sheet(
      'a sign of the source',
      'P5',
      { names: up },
      `moments about B: -RA * 5 m + 15 N * 3 m = 0 ; RA = -9 N => wrong sign
       forces up: RB = 15 N - 9 N ; RB = 6 N`,
    ),
  },
  {
    source: 'The same, with the symbol drawn as the source draws it: downward',
    sheet: sheet(
      'the sign of the source said',
      'P5',
      { names: '{ RA: reaction A down, RB: reaction B up }' },
      `moments about B: RA * 5 m + 15 N * 3 m = 0 ; RA = -9 N
       forces up: -RA + RB = 15 N ; RB = 6 N`,
    ),
  },
  {
    source: 'Python companion to a text on beams, example 5.2a: 410 N down, 670 N up',
    sheet: sheet(
      'held down',
      'P6',
      { names: up },
      `moments about A: RB * 0.4 m - 200 N m - 100 N * 0.2 m - 160 N * 0.3 m = 0 ; RB = 670 N up
       forces up: RA + RB = 260 N ; RA = 410 N down
       moments about A: RB * 0.4 m - 200 N m * 0.1 m - 100 N * 0.2 m - 160 N * 0.3 m = 0 ; RB = 220 N => wrong unit
       forces up: RA = 260 N + 670 N ; RA = 930 N => wrong sign`,
    ),
  },
  {
    source:
      'Baker and Haynes, Engineering Statics: Open and Interactive, https://engineeringstatics.org, chapter 7, Beam Reactions: A 196.7 lb, B 393.3 lb',
    sheet: sheet(
      'a double overhang',
      'P7',
      { names: '{ RA: reaction A up, RB: reaction B up }' },
      `moments about A: 120 lb * 5 in - 100 lb * 6 in - 150 lb * 12 in - 100 lb * 18 in + RB * 18 in - 120 lb * 29 in = 0 ; RB = 393.3 lb
       forces up: RA + RB = 590 lb ; RA = 196.7 lb
       moments about A: -120 lb * 5 in - 100 lb * 6 in - 150 lb * 12 in - 100 lb * 18 in + RB * 18 in - 120 lb * 29 in = 0 ; RB = 460 lb => wrong sign
       moments about A: 120 lb * 5 in - 100 lb * 6 in - 150 lb * 12 in - 100 lb * 18 in + RB * 18 in - 120 lb * 39 in = 0 ; RB = 460 lb => wrong lever-arm|resultant`,
    ),
  },
  {
    source:
      'Two-span beam of a companion to a text on structures, example 5.22: M_B −56.25 kN·m, R 41.25, 157.5, 41.25 kN',
    sheet: sheet(
      'two spans',
      'P8',
      {
        names:
          '{ RA: reaction A up, RB: reaction B up, RC: reaction C up, MB: moment at B }',
      },
      `def: 2 * MB * (3 m + 3 m) = -3 * 120 kN * (3 m)^2 / 8 - 40 kN/m * (3 m)^3 / 4 ; MB = -56.25 kN m
       moments about B on A to B: -RA * 3 m + 120 kN * 1.5 m + MB = 0 ; RA = 41.25 kN
       reaction C up: 41.25 kN ; RC = 41.25 kN
       forces up: RA + RB + RC = 240 kN ; RB = 157.5 kN
       def: 2 * MB * (3 m + 3 m) = -3 * 120 kN * (3 m)^2 / 8 ; MB = -33.8 kN m => wrong`,
    ),
  },
];

const marked = markSheets(
  members,
  printed.map(({ sheet: one }) => one),
);

describe('answers as they were published', () => {
  for (const [index, { source, sheet: of }] of printed.entries())
    test(`${of.title}, ${source}`, () => {
      const told = (marked[index]?.steps ?? []).map(({ expected, found }) => {
        const kinds = found.findings.map(({ kind }) => kind);
        const isNamed = expected.kinds.every((any) =>
          any.some((kind) => kinds.includes(kind)),
        );
        const is = found.verdict === expected.verdict && isNamed;
        const why = found.findings.map(({ kind, message }) => `${kind}: ${message}`);
        return is
          ? 'as it should be'
          : [expected.line, found.verdict, ...why].join(' | ');
      });
      expect(told).toEqual(told.map(() => 'as it should be'));
    });

  test('a misprinted slope is told beside the true one, in degrees', () => {
    const [, , slope] = marked;
    const [finding] = slope?.steps[3]?.found.findings ?? [];
    expect(finding?.message).toBe('It is 0.4663°, not 0.487°.');
  });
});
