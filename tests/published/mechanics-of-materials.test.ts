import { describe, expect, test } from 'vitest';
import { beam, down, fixed, pin, roller, spread, turn } from '../support/beam.ts';
import { elasticCurve } from '../support/elastic-curve.ts';
import { expectExactly, expectPrinted, si } from '../support/in-words.ts';
import { solved } from '../support/solved.ts';

/*
 * Answers as worked in the FOSSEE Textbook Companions (IIT Bombay, tbc-python.fossee.in); numbers
 * only, seen. The books stand in the titles.
 */

describe('Gere, Mechanics of Materials', () => {
  test('4.3: shear and moment at a cut of a beam with an overhang', () => {
    // The span of 24 ft and the overhang of 6 ft are inferred; the printed reactions then agree.
    const found = solved(
      beam({
        points: { A: 0, B: si('24 ft'), C: si('30 ft') },
        supports: { A: pin, B: roller() },
        loads: [spread(si('0.2 kip/ft'), 'A', 'C'), down(si('14 kip'), si('9 ft'))],
      }),
    );
    expectExactly(found.up('A'), '11 kip');
    expectExactly(found.up('B'), '9 kip');
    expectExactly(found.shear(si('15 ft')), '-6.0 kip');
    expectExactly(found.moment(si('15 ft')), '58.5 kip ft');
  });

  test('5.3: greatest bending stress of a timber beam', () => {
    // The 9 ft to the force are inferred from the printed reactions.
    const found = solved(
      beam({
        points: { A: 0, B: si('22 ft') },
        supports: { A: pin, B: roller() },
        loads: [spread(si('1.5 kip/ft'), 'A', 'B'), down(si('12 kip'), si('9 ft'))],
      }),
    );
    expectPrinted(found.up('A'), '23.59 kip');
    expectPrinted(found.up('B'), '21.41 kip');
    expectPrinted(found.greatest.value, '151.6 kip ft');
    const S = (si('8.75 in') * si('27 in') ** 2) / 6;
    expectPrinted(found.greatest.value / S, '1711 psi');
  });
});

describe('Pytel and Kiusalaas, Mechanics of Materials', () => {
  test('6.1: tip deflection and stress of a cantilever', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('8 ft') },
        supports: { A: fixed },
        loads: [spread(si('400 lb/ft'), 'A', 'B')],
      }),
    );
    const curve = elasticCurve(
      found.result,
      si('29e6 psi') * si('285 in^4'),
      'left end',
    );
    expectPrinted(curve.sag.value, '0.0428 in');
    // By the companion, which corrects the book.
    expectPrinted(-found.least.value / si('45.6 in^3'), '3368 psi');
  });

  test('6.3: greatest deflection of a simple beam', () => {
    const found = solved(
      beam({
        points: { A: 0, C: si('3 m') },
        supports: { A: pin, C: roller() },
        loads: [down(si('300 N'), si('2 m'))],
      }),
    );
    expectExactly(found.up('A'), '100 N');
    expectExactly(found.up('C'), '200 N');
    const EI = (si('12 GPa') * (si('40 mm') * si('80 mm') ** 3)) / 12;
    const curve = elasticCurve(found.result, EI, [0, si('3 m')]);
    expectPrinted(curve.sag.value, '7.09 mm');
    expectPrinted(curve.sag.x, '1.633 m');
    // The slope at C is printed as 0.487 deg, which is wrong.
    expectPrinted(curve.slope(si('3 m')), '0.466 deg');
  });
});

describe('Popov, Engineering Mechanics of Solids', () => {
  test('5.2: a triangular load on part of the span', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('5 m') },
        supports: { A: pin, B: roller() },
        loads: [spread([0, si('10 N/m')], 'A', si('3 m'))],
      }),
    );
    expectExactly(found.up('A'), '9 N');
    expectExactly(found.up('B'), '6 N');
  });

  test('5.2, page 231: a couple and two forces', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('0.4 m') },
        supports: { A: pin, B: roller() },
        loads: [
          turn(-si('200 N m'), si('0.1 m')),
          down(si('100 N'), si('0.2 m')),
          down(si('160 N'), si('0.3 m')),
        ],
      }),
    );
    expectExactly(found.up('A'), '-410 N');
    expectExactly(found.up('B'), '670 N');
  });
});

describe('Junnarkar, Mechanics of Structures', () => {
  // The book counts in tons. Any force may stand for one, as all of its data are in tons too.
  const ton = si('1 kip');

  test('chapter 5, example 3: what a joist can carry', () => {
    const f = 7.5 * ton * si('1 in') ** -2;
    const allowed = (f * si('618 in^4')) / si('8 in');
    const L = si('24 ft');
    const uniform = solved(
      beam({
        points: { A: 0, B: L },
        supports: { A: pin, B: roller() },
        loads: [spread(ton / L, 'A', 'B')],
      }),
    );
    const central = solved(
      beam({
        points: { A: 0, B: L },
        supports: { A: pin, B: roller() },
        loads: [down(ton, L / 2)],
      }),
    );
    expectPrinted(allowed / uniform.greatest.value, '16.1');
    expectPrinted(allowed / uniform.greatest.value / 24, '0.671');
    expectPrinted(allowed / central.greatest.value, '8.05');
  });

  test('chapter 5, example 8: what a rolled section can carry', () => {
    const inertia =
      (si('5 in') * si('12 in') ** 3 - si('4.65 in') * si('10.9 in') ** 3) / 12;
    const allowed = (7.5 * ton * si('1 in') ** -2 * inertia) / si('6 in');
    const L = si('16 ft');
    const found = solved(
      beam({
        points: { A: 0, B: L },
        supports: { A: pin, B: roller() },
        loads: [spread(ton / L, 'A', 'B')],
      }),
    );
    expectPrinted(allowed / found.greatest.value, '11.36');
    expectPrinted(allowed / found.greatest.value / 16, '0.71');
  });

  test('chapter 6, example 1: a timber cantilever', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('5 ft') },
        supports: { A: fixed },
        loads: [spread(si('120 lb/ft'), 'A', si('3 ft')), down(si('150 lb'), 'B')],
      }),
    );
    const EI = (si('1.5e6 psi') * (si('3 in') * si('6 in') ** 3)) / 12;
    expectPrinted(elasticCurve(found.result, EI, 'left end').sag.value, '0.1823 in');
  });

  test('chapter 6, example 3: the load that bends a beam by a quarter of an inch', () => {
    const L = si('12 ft');
    const found = solved(
      beam({
        points: { A: 0, B: L },
        supports: { A: pin, B: roller() },
        loads: [spread(si('1 lb') / L, 'A', 'B')],
      }),
    );
    const EI = (si('1.5e6 psi') * (si('4 in') * si('9 in') ** 3)) / 12;
    const each = elasticCurve(found.result, EI, [0, L]).sag.value;
    // 2343.75; the book lets the fraction go.
    expect(Math.floor(si('0.25 in') / each)).toBe(2343);
    expectExactly(si('0.25 in') / each, '2343.75');
  });

  test('chapter 6, example 8: where two forces bend a beam most', () => {
    const L = si('20 ft');
    const found = solved(
      beam({
        points: { A: 0, B: L },
        supports: { A: pin, B: roller() },
        loads: [down(3 * ton, si('4 ft')), down(4 * ton, si('15 ft'))],
      }),
    );
    const EI = 13000 * ton * si('1 in') ** -2 * si('220 in^4');
    const curve = elasticCurve(found.result, EI, [0, L]);
    expectPrinted(curve.sag.x, '10.26 ft');
    expectPrinted(curve.sag.value, '0.4488 in');
  });

  test('chapter 6, example 9: a trapezoidal load', () => {
    const L = si('18 ft');
    const perFoot = ton / si('1 ft');
    const found = solved(
      beam({
        points: { A: 0, B: L },
        supports: { A: pin, B: roller() },
        loads: [spread([perFoot, 3 * perFoot], 'A', 'B')],
      }),
    );
    expectExactly(found.up('A') / ton, '15');
    expectExactly(found.up('B') / ton, '21');
    const EI = 13000 * ton * si('1 in') ** -2 * si('1149 in^4');
    const curve = elasticCurve(found.result, EI, [0, L]);
    // Printed as 9.18 ft, from a trial solution; the root is 9.1747 ft, and the sag is the same to all its digits.
    expect(Math.abs(curve.sag.x - si('9.18 ft'))).toBeLessThan(si('0.01 ft'));
    expectPrinted(curve.sag.value, '0.3164 in');
  });
});
