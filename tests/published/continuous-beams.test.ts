import { describe, expect, test } from 'vitest';
import { resultsOf, workProject } from '../../src/index.ts';
import { readResults } from '../../src/results/index.ts';
import { memoryWorld } from '../../src/world/index.ts';
import { siProject } from '../support/derived.ts';
import { beamYaml } from '../support/folder.ts';
import { expectExactly, expectPrinted } from '../support/in-words.ts';
import { programFigures } from '../support/program-figures.ts';

/*
 * Published beams that statics alone does not solve, through the whole program: the beam's file in, the figures
 * of results.json out, held to the digits printed.
 */

const steel = { section: '{ I: 8356 cm^4 }', material: '{ E: 200 GPa }' };
const rollers = (...names: string[]): string =>
  `{ ${names[0]!}: pin, ${names
    .slice(1)
    .map((name) => `${name}: roller`)
    .join(', ')} }`;

describe('two spans', () => {
  test('Popov, Engineering Mechanics of Solids, 13.2 (FOSSEE Textbook Companion, seen): the middle support takes 1.25 w L', () => {
    // Only symbols are published; L = 4 m and w = 5 kN/m are chosen.
    const found = programFigures(
      {
        points: '{ A: 0 m, B: 4 m, C: 8 m }',
        supports: rollers('A', 'B', 'C'),
        loads: '[ { uniform: 5 kN/m } ]',
      },
      { units: 'si' },
    );
    expectExactly(found.up('B'), '25 kN');
  });

  test('NPTEL, Structural Analysis, module 5, lecture 4 (archive.nptel.ac.in), seen: a force on one span, uniform load on the other', () => {
    // The figure was not seen; the loads are inferred from the printed sum, and the printed moment then agrees exactly.
    const found = programFigures(
      {
        points: '{ A: 0 m, B: 3 m, C: 6 m }',
        supports: rollers('A', 'B', 'C'),
        loads: '[ { point: 120 kN, at: 1.5 m }, { uniform: 40 kN/m, from: B, to: C } ]',
      },
      { units: 'si', parts: 2 },
    );
    expectPrinted(found.at('moment', 3), '-56.25 kN m');
    expectPrinted(found.up('A'), '41.25 kN');
    expectPrinted(found.up('B'), '157.5 kN');
    expectPrinted(found.up('C'), '41.25 kN');
  });

  test('piping-designer.com, two equal spans under uniform load: closed form seen, numbers by substitution', () => {
    const found = programFigures(
      {
        ...steel,
        points: '{ A: 0 m, B: 6 m, C: 12 m }',
        supports: rollers('A', 'B', 'C'),
        loads: '[ { uniform: 16 kN/m } ]',
      },
      { units: 'si', parts: 2 },
    );
    expectExactly(found.up('A'), '36 kN');
    expectExactly(found.up('B'), '120 kN');
    expectExactly(found.up('C'), '36 kN');
    expectExactly(found.greatest('shear').value, '60 kN');
    expectExactly(found.at('moment', 6), '-72 kN m');
    expectExactly(found.greatest('moment').value, '40.5 kN m');
    expectExactly(found.greatest('moment').x, '2.25 m');
    // The divisor of w L⁴ / 185 E I is rounded: 6.71 mm by it, 6.72 mm by stiffness.
    const sag = -found.least('deflection').value;
    expectPrinted(sag, '6.72 mm');
    const byTable = (16e3 * 6 ** 4) / (185 * 200e9 * 8356e-8);
    expectPrinted(byTable, '6.71 mm');
    expect(Math.abs(sag / byTable - 1)).toBeLessThan(0.5 / 184.5);
    expectPrinted(found.least('deflection').x / 6, '0.4215');
  });

  test('handbook formulas of equal forces at both mid-spans, from memory: 5 P / 16, 11 P / 8, − 3 P L / 16, 5 P L / 32', () => {
    const found = programFigures(
      {
        points: '{ A: 0 m, B: 8 m, C: 16 m }',
        supports: rollers('A', 'B', 'C'),
        loads: '[ { point: 48 kN, at: [ 4 m, 12 m ] } ]',
      },
      { units: 'si', parts: 2 },
    );
    expectExactly(found.up('A'), '15 kN');
    expectExactly(found.up('B'), '66 kN');
    expectExactly(found.up('C'), '15 kN');
    expectExactly(found.at('moment', 8), '-72 kN m');
    expectExactly(found.greatest('moment').value, '60 kN m');
  });
});

describe('three spans', () => {
  const five = {
    points: '{ A: 0 m, B: 5 m, C: 10 m, D: 15 m }',
    supports: rollers('A', 'B', 'C', 'D'),
  };

  test('coefficients of uniform load on all, from memory: 0.4, 1.1, − 0.100, 0.080, 0.025', () => {
    const found = programFigures(
      { ...five, loads: '[ { uniform: 20 kN/m } ]' },
      { units: 'si', parts: 6 },
    );
    expectExactly(found.up('A'), '40 kN');
    expectExactly(found.up('B'), '110 kN');
    expectExactly(found.up('C'), '110 kN');
    expectExactly(found.up('D'), '40 kN');
    expectExactly(found.at('moment', 5), '-50 kN m');
    expectExactly(found.at('moment', 10), '-50 kN m');
    expectExactly(found.greatest('moment').value, '40 kN m');
    expectExactly(found.at('moment', 7.5), '12.5 kN m');
  });

  test('coefficients of uniform load on the middle span, from memory: − 0.05, 0.55, − 0.050, 0.075', () => {
    const found = programFigures(
      { ...five, loads: '[ { uniform: 20 kN/m, from: B, to: C } ]' },
      { units: 'si', parts: 6 },
    );
    expectExactly(found.up('A'), '-5 kN');
    expectExactly(found.up('B'), '55 kN');
    expectExactly(found.up('C'), '55 kN');
    expectExactly(found.up('D'), '-5 kN');
    expectExactly(found.at('moment', 5), '-25 kN m');
    expectExactly(found.at('moment', 7.5), '37.5 kN m');
  });

  test('coefficients of uniform load on the end spans, from memory: 0.45, 0.55, − 0.050, 0.1013', () => {
    const found = programFigures(
      {
        ...five,
        loads:
          '[ { uniform: 20 kN/m, from: A, to: B }, { uniform: 20 kN/m, from: C, to: D } ]',
      },
      { units: 'si', parts: 6 },
    );
    expectExactly(found.up('A'), '45 kN');
    expectExactly(found.up('B'), '55 kN');
    expectExactly(found.up('C'), '55 kN');
    expectExactly(found.up('D'), '45 kN');
    expectExactly(found.at('moment', 10), '-25 kN m');
    expectPrinted(found.greatest('moment').value, '50.6 kN m');
  });

  test('MATHalino, three-moment equation factors (mathalino.com), seen: uniform load on the middle of unequal spans', () => {
    // Published in symbols: spans α L, L, β L; several ratios are chosen.
    for (const [α, β] of [
      [1, 1],
      [0.5, 1.5],
      [1.2, 0.8],
    ] as const) {
      const [L, w] = [5, 20];
      const found = programFigures(
        {
          points: `{ A: 0 m, B: ${α * L} m, C: +${L} m, D: +${β * L} m }`,
          supports: rollers('A', 'B', 'C', 'D'),
          loads: `[ { uniform: ${w} kN/m, from: B, to: C } ]`,
        },
        { units: 'si', parts: 30 * (α + 1 + β) },
      );
      const M2 = (-(w * L ** 2) / 4) * ((1 + 2 * β) / (4 * (1 + α) * (1 + β) - 1));
      const M3 = (-(w * L ** 2) / 4) * ((1 + 2 * α) / (4 * (1 + α) * (1 + β) - 1));
      expect(found.at('moment', α * L)).toBeCloseTo(1000 * M2, 6);
      expect(found.at('moment', α * L + L)).toBeCloseTo(1000 * M3, 6);
    }
  });
});

describe('propped cantilevers', () => {
  test('a question bank (curioustab.com), closed form seen, numbers by substitution: 3 w L / 8, w L² / 8', () => {
    const found = programFigures(
      {
        ...steel,
        points: '{ A: 0 m, B: 8 m }',
        supports: '{ A: fixed, B: roller }',
        loads: '[ { uniform: 10 kN/m } ]',
      },
      { units: 'si' },
    );
    expectExactly(found.up('B'), '30 kN');
    expectExactly(found.up('A'), '50 kN');
    expectExactly(found.turn('A'), '80 kN m');
    // From memory: 9 w L² / 128 at 5 L / 8 from the fixed end; w L⁴ / 185 E I is 13.25 mm by its rounded divisor, 13.27 mm by stiffness.
    expectExactly(found.greatest('moment').value, '45 kN m');
    expectExactly(found.greatest('moment').x, '5 m');
    expectPrinted(-found.least('deflection').value, '13.27 mm');
  });

  test('handbook formulas of a force at mid-span, from memory: 5 P / 16, 11 P / 16, 3 P L / 16, 5 P L / 32', () => {
    const found = programFigures(
      {
        points: '{ A: 0 m, B: 8 m }',
        supports: '{ A: fixed, B: roller }',
        loads: '[ { point: 64 kN, at: 4 m } ]',
      },
      { units: 'si' },
    );
    expectExactly(found.up('B'), '20 kN');
    expectExactly(found.up('A'), '44 kN');
    expectExactly(found.turn('A'), '96 kN m');
    expectExactly(found.greatest('moment').value, '80 kN m');
  });
});

describe('beams fixed at both ends, handbook formulas from memory', () => {
  const fixed = { supports: '{ A: fixed, B: fixed }' };

  test('uniform load: w L² / 12, w L² / 24, w L⁴ / 384 E I', () => {
    const found = programFigures(
      {
        ...fixed,
        ...steel,
        points: '{ A: 0 m, B: 6 m }',
        loads: '[ { uniform: 24 kN/m } ]',
      },
      { units: 'si' },
    );
    expectExactly(found.up('A'), '72 kN');
    expectExactly(found.turn('A'), '72 kN m');
    expectExactly(found.turn('B'), '-72 kN m');
    expectExactly(found.greatest('moment').value, '36 kN m');
    // Printed to four figures.
    expectPrinted(-found.least('deflection').value, '4.847 mm');
  });

  test('a force at mid-span: P L / 8, P L³ / 192 E I', () => {
    const found = programFigures(
      {
        ...fixed,
        ...steel,
        points: '{ A: 0 m, B: 8 m }',
        loads: '[ { point: 80 kN, at: 4 m } ]',
      },
      { units: 'si' },
    );
    expectExactly(found.turn('A'), '80 kN m');
    expectExactly(found.greatest('moment').value, '80 kN m');
    expectPrinted(-found.least('deflection').value, '12.77 mm');
  });

  test('a triangle: 3 w L / 20, 7 w L / 20, w L² / 30, w L² / 20', () => {
    const found = programFigures(
      {
        ...fixed,
        points: '{ A: 0 m, B: 6 m }',
        loads: '[ { varying: [ 0 kN/m, 30 kN/m ] } ]',
      },
      { units: 'si' },
    );
    expectExactly(found.up('A'), '27 kN');
    expectExactly(found.up('B'), '63 kN');
    expectExactly(found.turn('A'), '36 kN m');
    expectExactly(found.turn('B'), '-54 kN m');
  });
});

describe('pattern loading of three equal spans, coefficients from memory', () => {
  /** One patterned case; the program finds the arrangements. */
  const patterned = () => {
    const worked = workProject(
      memoryWorld({
        'p/project.yaml': siProject,
        'p/loads.yaml': 'cases: { Q: { title: Live, kind: live, pattern: true } }\n',
        'p/members/b1.yaml': beamYaml({
          points: '{ A: 0 m, B: 5 m, C: 10 m, D: 15 m }',
          supports: rollers('A', 'B', 'C', 'D'),
          loads: '[ { case: Q, uniform: 20 kN/m } ]',
        }),
      }),
      'p',
    );
    const reading = readResults(resultsOf(worked, { stations: 6 }));
    if (reading.kind !== 'results') throw new Error(reading.kind);
    const [member] = reading.results.members;
    if (member === undefined || !('results' in member)) throw new Error('unsolved');
    const entry = member.results.Q!;
    if (!('kind' in entry)) throw new Error('no range');
    return entry;
  };

  test('greatest span moments 0.1013 and 0.075, least support moment − 0.1167 w L²', () => {
    const entry = patterned();
    expectPrinted(entry.moment.max.value * 1000, '50.6 kN m');
    expectPrinted(entry.moment.min.value / (20 * 25), '-0.1167');
    // The middle of the middle span, which it alone loads: station 4 of 7.
    const middle = entry.stations![3]!;
    expectExactly(middle.moment_max.value * 1000, '37.5 kN m');
    // And the least there, with both end spans loaded: − 0.050.
    expectExactly(middle.moment_min.value * 1000, '-25 kN m');
  });

  test('reactions from − 0.05 to 0.45 at the ends and up to 1.2 w L inside', () => {
    const [end, inner] = patterned().reactions;
    expectExactly(end!.y!.max.value * 1000, '45 kN');
    expectExactly(end!.y!.min.value * 1000, '-5 kN');
    expectExactly(inner!.y!.max.value * 1000, '120 kN');
  });
});
