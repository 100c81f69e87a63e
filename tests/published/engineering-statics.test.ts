import { describe, expect, test } from 'vitest';
import { jumpsOf, resultantsOf, zerosOf } from '../../src/statics/index.ts';
import { beam, down, pin, roller, spread } from '../support/beam.ts';
import { expectExactly, expectPrinted, si } from '../support/in-words.ts';
import { solved } from '../support/solved.ts';

/*
 * D. Baker and W. Haynes, Engineering Statics: Open and Interactive (open textbook, engineeringstatics.org);
 * numbers only, seen. Chapter and example stand beside each.
 */

describe('Engineering Statics, chapter 7', () => {
  test('Uniformly Varying Load: a triangle is one force at two thirds', () => {
    const [resultant, ...more] = resultantsOf({
      id: 'w',
      case: 'all',
      kind: 'distributed',
      from: 0,
      to: si('6 ft'),
      x1: 0,
      y1: 0,
      x2: 0,
      y2: -si('10 lb/ft'),
    });
    expect(more).toEqual([]);
    expectExactly(resultant!.magnitude, '30 lb');
    expectExactly(resultant!.x, '4 ft');
    expect(resultant!.direction).toEqual([0, -1]);
  });

  test('Beam Reactions: two overhangs, uniform loads on them and three forces', () => {
    const found = solved(
      beam({
        points: { O: 0, A: si('10 in'), B: si('28 in'), E: si('44 in') },
        supports: { A: pin, B: roller() },
        loads: [
          spread(si('12 lb/in'), 'O', 'A'),
          spread(si('12 lb/in'), si('34 in'), 'E'),
          down(si('100 lb'), si('16 in')),
          down(si('150 lb'), si('22 in')),
          down(si('100 lb'), si('28 in')),
        ],
      }),
    );
    expectPrinted(found.up('A'), '196.7 lb');
    expectPrinted(found.up('B'), '393.3 lb');
    expectExactly(found.right('A'), '0 lb');
  });
});

describe('Engineering Statics, chapter 8', () => {
  test('Uniformly Distributed Load: V = w(L/2 − x), M = (w/2)(Lx − x²)', () => {
    const L = si('8 m');
    const w = si('3 kN/m');
    const found = solved(
      beam({
        points: { A: 0, B: L },
        supports: { A: pin, B: roller() },
        loads: [spread(w, 'A', 'B')],
      }),
    );
    expect(found.up('A')).toBeCloseTo((w * L) / 2, 6);
    expect(found.up('B')).toBeCloseTo((w * L) / 2, 6);
    for (const part of [0.1, 0.37, 0.5, 0.92]) {
      const x = part * L;
      expect(found.shear(x)).toBeCloseTo(w * (L / 2 - x), 6);
      expect(found.moment(x)).toBeCloseTo((w / 2) * (L * x - x * x), 6);
    }
    expect(found.greatest.value).toBeCloseTo((w * L * L) / 8, 6);
    expect(found.greatest.x).toBeCloseTo(L / 2, 9);
  });

  test('Section Cut Method: part uniform load and two forces', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('12 m') },
        supports: { A: pin, B: roller() },
        loads: [
          spread(si('15 N/m'), si('0 m'), si('4 m')),
          down(si('10 N'), si('4 m')),
          down(si('10 N'), si('8 m')),
        ],
      }),
    );
    expectExactly(found.up('A'), '60 N');
    expectExactly(found.up('B'), '20 N');
    for (const x of [0.5, 2, 3.5]) {
      expectExactly(found.shear(x), `${60 - 15 * x} N`);
      expectExactly(found.moment(x), `${60 * x - 7.5 * x * x} N m`);
    }
    for (const x of [4.5, 6, 8]) {
      expectExactly(found.shear(x), '-10 N');
      expectExactly(found.moment(x), `${160 - 10 * x} N m`);
    }
    for (const x of [8.5, 10, 12]) {
      expectExactly(found.shear(x), '-20 N');
      expectExactly(found.moment(x), `${240 - 20 * x} N m`);
    }
    expectExactly(found.moment(4), '120 N m');
    expectExactly(found.moment(8), '80 N m');
  });

  test('Graphical Method, Combined Loads: every step of both diagrams', () => {
    const ft = si('1 ft');
    const found = solved(
      beam({
        points: { A: 0, B: 20 * ft, C: 24 * ft },
        supports: { A: pin, B: roller() },
        loads: [
          down(si('30 lb'), 4 * ft),
          spread(si('10 lb/ft'), 6 * ft, 16 * ft),
          down(si('20 lb'), 24 * ft),
        ],
      }),
    );
    expectExactly(found.up('A'), '65 lb');
    expectExactly(found.up('B'), '85 lb');
    expectExactly(found.shear(4 * ft, 'right'), '35 lb');
    expectExactly(found.shear(16 * ft), '-65 lb');
    expectExactly(found.shear(20 * ft, 'right'), '20 lb');
    const crossings = zerosOf(found.result.shear).filter((zero) => zero.kind === 'at');
    expectExactly(crossings[0]!.x, '9.5 ft');
    const steps = [0, 4, 6, 9.5, 16, 20, 24].map((x) => found.moment(x * ft));
    const areas = steps.slice(1).map((m, index) => m - steps[index]!);
    const printed = ['260', '70', '61.25', '-211.25', '-260', '80'];
    for (const [index, text] of printed.entries()) {
      expectExactly(areas[index]!, `${text} lb ft`);
    }
    expectExactly(found.greatest.value, '391.25 lb ft');
    expectExactly(found.greatest.x, '9.5 ft');
    expectExactly(found.least.value, '-80 lb ft');
    expectExactly(found.least.x, '20 ft');
    // The shear leaps at the four places where a force stands within the beam, and nowhere else.
    expect(jumpsOf(found.result.shear).map((jump) => jump.x / ft)).toEqual([
      expect.closeTo(4, 9),
      expect.closeTo(20, 9),
    ]);
  });
});
