import { describe, expect, test } from 'vitest';
import { beam, down, fixed, pin, roller, spread, turn } from '../support/beam.ts';
import { elasticCurve } from '../support/elastic-curve.ts';
import { expectExactly, expectPrinted, si } from '../support/in-words.ts';
import { solved } from '../support/solved.ts';

/*
 * S. S. Bhavikatti, Mechanics of Solids (chapter 9) and Strength of Materials (chapter 5); answers as
 * worked in the FOSSEE Textbook Companions (IIT Bombay, tbc-python.fossee.in); numbers only, seen.
 */

const inclined = (force: string, degrees: number, at: string) => {
  const size = si(force);
  const angle = (degrees * Math.PI) / 180;
  return { at: si(at), fx: size * Math.cos(angle), fy: -size * Math.sin(angle) };
};

describe('Mechanics of Solids, chapter 9', () => {
  test('9.1: inclined loads on a simple beam', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('12 m') },
        supports: { A: pin, B: roller() },
        loads: [
          down(si('10 kN'), si('4 m')),
          inclined('15 kN', 30, '6 m'),
          inclined('20 kN', 45, '10 m'),
        ],
      }),
    );
    expectPrinted(found.up('B'), '18.8684 kN');
    const [x, y] = [found.right('A'), found.up('A')];
    expectPrinted(Math.hypot(x, y), '29.989 kN');
    expectPrinted(Math.atan2(y, Math.abs(x)), '25.21 deg');
    // All horizontal parts push right, so that the pin pushes left.
    expect(x).toBeLessThan(0);
  });

  test('9.4: a cantilever', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('4 m') },
        supports: { A: fixed },
        loads: [
          spread(si('16 kN/m'), 'A', si('2 m')),
          down(si('20 kN'), si('2 m')),
          down(si('12 kN'), si('3 m')),
          down(si('10 kN'), 'B'),
        ],
      }),
    );
    expectExactly(found.up('A'), '74 kN');
    expectExactly(found.turn('A'), '148 kN m');
    expectExactly(found.least.value, '-148 kN m');
  });

  test('9.5: a cantilever with a couple', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('5 m') },
        supports: { A: fixed },
        loads: [
          spread(si('20 kN/m'), 'A', si('2 m')),
          down(si('15 kN'), si('3 m')),
          turn(-si('30 kN m'), si('4 m')),
          down(si('10 kN'), 'B'),
        ],
      }),
    );
    expectExactly(found.up('A'), '65 kN');
    expectExactly(found.turn('A'), '165 kN m');
  });

  test('9.6: an overhang', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('5 m'), C: si('6.5 m') },
        supports: { A: pin, B: roller() },
        loads: [
          down(si('30 kN'), si('1 m')),
          spread(si('20 kN/m'), si('2 m'), 'B'),
          down(si('40 kN'), 'C'),
        ],
      }),
    );
    expectExactly(found.up('A'), '30 kN');
    expectExactly(found.up('B'), '100 kN');
    // Not printed there: 40 kN on an arm of 1.5 m.
    expectExactly(found.moment(si('5 m')), '-60 kN m');
  });

  test('9.7: two overhangs and a couple', () => {
    const found = solved(
      beam({
        points: { O: 0, A: si('2 m'), B: si('11 m'), E: si('13 m') },
        supports: { A: pin, B: roller() },
        loads: [
          spread(si('20 kN/m'), 'O', 'A'),
          down(si('60 kN'), si('6 m')),
          turn(-si('30 kN m'), si('9 m')),
          down(si('20 kN'), 'E'),
        ],
      }),
    );
    expectExactly(found.up('A'), '70 kN');
    expectExactly(found.up('B'), '50 kN');
  });
});

describe('Strength of Materials, chapter 5', () => {
  const cantilever = (
    length: string,
    ...loads: Parameters<typeof beam>[0]['loads'] & {}
  ) => solved(beam({ points: { A: 0, B: si(length) }, supports: { A: fixed }, loads }));
  const simple = (length: string, ...loads: Parameters<typeof beam>[0]['loads'] & {}) =>
    solved(
      beam({
        points: { A: 0, B: si(length) },
        supports: { A: pin, B: roller() },
        loads,
      }),
    );

  test('5.5.2: deflection of a cantilever under two forces', () => {
    const found = cantilever(
      '3 m',
      down(si('20 kN'), si('2 m')),
      down(si('30 kN'), si('3 m')),
    );
    const EI = si('2e5 N/mm^2') * si('2e8 mm^4');
    const curve = elasticCurve(found.result, EI, 'left end');
    expectPrinted(-curve.deflection(si('3 m')), '9.08 mm');
  });

  test('5.5.4: deflection of a cantilever under part uniform load and a tip force', () => {
    const found = cantilever(
      '3 m',
      spread(si('20 kN/m'), 0, si('2 m')),
      down(si('20 kN'), si('3 m')),
    );
    const EI = si('2e5 N/mm^2') * si('180e6 mm^4');
    const curve = elasticCurve(found.result, EI, 'left end');
    expectPrinted(-curve.deflection(si('3 m')), '6.85 mm');
  });

  test('5.5.11: a force and a couple at one place', () => {
    const found = simple(
      '6 m',
      down(si('30 kN'), si('4 m')),
      turn(-si('15 kN m'), si('4 m')),
    );
    expectExactly(found.up('A'), '7.5 kN');
    expectExactly(found.up('B'), '22.5 kN');
    const curve = elasticCurve(found.result, si('10000 kN m^2'), [0, si('6 m')]);
    // The companion prints the unit mm beside the number of metres.
    expectPrinted(-curve.deflection(si('4 m')), '0.0093 m');
  });

  test('5.5.14: two forces and part uniform load', () => {
    const found = simple(
      '5 m',
      down(si('20 kN'), si('1 m')),
      spread(si('10 kN/m'), si('1 m'), si('3 m')),
      down(si('30 kN'), si('4 m')),
    );
    expectExactly(found.up('A'), '34 kN');
    const curve = elasticCurve(found.result, si('12000 kN m^2'), [0, si('5 m')]);
    expectPrinted(-curve.deflection(si('1 m')), '0.00603 m');
    expectPrinted(-curve.deflection(si('3 m')), '0.00953 m');
    expectPrinted(-curve.deflection(si('4 m')), '0.0061 m');
  });

  test('5.5.16: deflection of a beam with an overhang', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('4 m'), C: si('6 m') },
        supports: { A: pin, B: roller() },
        loads: [down(si('40 kN'), si('2 m')), down(si('10 kN'), 'C')],
      }),
    );
    expectExactly(found.up('A'), '15 kN');
    expectExactly(found.up('B'), '35 kN');
    const curve = elasticCurve(found.result, 1, [0, si('4 m')]);
    expectPrinted(curve.deflection(si('2 m')), '-33.33 kN m^3');
    // Exactly none; the companion's figures leave −0.002.
    expectExactly(curve.deflection(si('6 m')), '0 N m^3');
  });
});
