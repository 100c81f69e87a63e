import { describe, expect, test } from 'vitest';
import { superpose, solveBeam } from '../../src/statics/index.ts';
import { namedCombinations } from '../../src/standards/index.ts';
import { beam, down, fixed, pin, roller, spread, turn } from '../support/beam.ts';
import { elasticCurve } from '../support/elastic-curve.ts';
import { expectExactly, expectPrinted, si } from '../support/in-words.ts';
import { solved } from '../support/solved.ts';

/*
 * Standard handbook formulas, written down from memory and worked again there by a stiffness
 * method. All have E I = 200 GPa × 8356e4 mm⁴. Here the moments are integrated by the test; deflections of the
 * program, and beams with redundants, stand in deflections.test.ts and continuous-beams.test.ts.
 */
const EI = si('200 GPa') * si('8356e4 mm^4');

const simple = (
  length: string,
  ...loads: NonNullable<Parameters<typeof beam>[0]['loads']>
) =>
  solved(
    beam({ points: { A: 0, B: si(length) }, supports: { A: pin, B: roller() }, loads }),
  );
const cantilever = (
  length: string,
  ...loads: NonNullable<Parameters<typeof beam>[0]['loads']>
) => solved(beam({ points: { A: 0, B: si(length) }, supports: { A: fixed }, loads }));

describe('handbook formulas of simple beams (from memory)', () => {
  test('uniform load: w L / 2, w L² / 8, 5 w L⁴ / 384 E I', () => {
    const found = simple('8 m', spread(si('10 kN/m'), 'A', 'B'));
    expectExactly(found.up('A'), '40 kN');
    expectExactly(found.up('B'), '40 kN');
    expectExactly(found.greatest.value, '80 kN m');
    const curve = elasticCurve(found.result, EI, [0, si('8 m')]);
    expectPrinted(curve.sag.value, '31.91 mm');
  });

  test('a force at mid-span: P / 2, P L / 4, P L³ / 48 E I', () => {
    const found = simple('6 m', down(si('60 kN'), si('3 m')));
    expectExactly(found.up('A'), '30 kN');
    expectExactly(found.greatest.value, '90 kN m');
    expectPrinted(elasticCurve(found.result, EI, [0, si('6 m')]).sag.value, '16.16 mm');
  });

  test('a force anywhere: P a b / L, P a² b² / 3 E I L under it', () => {
    const found = simple('10 m', down(si('50 kN'), si('3 m')));
    expectExactly(found.up('A'), '35 kN');
    expectExactly(found.up('B'), '15 kN');
    expectExactly(found.greatest.value, '105 kN m');
    const curve = elasticCurve(found.result, EI, [0, si('10 m')]);
    expectPrinted(-curve.deflection(si('3 m')), '43.98 mm');
  });

  test('a triangle with its peak at mid-span: w L² / 12, w L⁴ / 120 E I', () => {
    const found = simple(
      '6 m',
      spread([0, si('12 kN/m')], 'A', si('3 m')),
      spread([si('12 kN/m'), 0], si('3 m'), 'B'),
    );
    expectExactly(found.up('A'), '18 kN');
    expectExactly(found.greatest.value, '36 kN m');
    expectPrinted(elasticCurve(found.result, EI, [0, si('6 m')]).sag.value, '7.755 mm');
  });

  test('a couple at one end: M / L, slopes M L / 3 E I and M L / 6 E I, M L² / (9 √3 E I)', () => {
    const found = simple('6 m', turn(-si('30 kN m'), 'A'));
    expectExactly(found.up('A'), '-5 kN');
    expectExactly(found.up('B'), '5 kN');
    const curve = elasticCurve(found.result, EI, [0, si('6 m')]);
    expectPrinted(-curve.slope(0), '0.003590 rad');
    expectPrinted(curve.slope(si('6 m')), '0.001795 rad');
    expectPrinted(curve.sag.value, '4.146 mm');
  });
});

describe('handbook formulas of cantilevers (from memory)', () => {
  test('uniform load: w L, w L² / 2, w L⁴ / 8 E I', () => {
    const found = cantilever('3 m', spread(si('20 kN/m'), 'A', 'B'));
    expectExactly(found.up('A'), '60 kN');
    expectExactly(found.turn('A'), '90 kN m');
    expectPrinted(elasticCurve(found.result, EI, 'left end').sag.value, '12.12 mm');
  });

  test('a force at the tip: P L, P L³ / 3 E I', () => {
    const found = cantilever('3 m', down(si('25 kN'), 'B'));
    expectExactly(found.turn('A'), '75 kN m');
    expectPrinted(elasticCurve(found.result, EI, 'left end').sag.value, '13.46 mm');
  });
});

describe('a floor beam by strength combinations (from memory)', () => {
  test('0.8 kip/ft dead and 1.2 kip/ft live on 30 ft', () => {
    const outcome = solveBeam(
      beam({
        points: { A: 0, B: si('30 ft') },
        supports: { A: pin, B: roller() },
        loads: [
          spread(si('0.8 kip/ft'), 'A', 'B', { case: 'D' }),
          spread(si('1.2 kip/ft'), 'A', 'B', { case: 'L' }),
        ],
      }),
    );
    if (outcome.kind !== 'beam') throw new Error('unsolved');
    const { combinations } = namedCombinations(
      { name: 'asce7-strength' },
      {
        cases: [
          { mark: 'D', kind: 'dead' },
          { mark: 'L', kind: 'live' },
        ],
        alternatives: [],
        standards: ['ASCE/SEI 7-22'],
      },
    );
    const results = combinations.map(({ mark, factors }) =>
      superpose(outcome.results, factors, mark),
    );
    const governing = results.reduce((best, result) =>
      result.extremes.moment.max.value > best.extremes.moment.max.value ? result : best,
    );
    expect(governing.mark).toBe('1.2D + 1.6L');
    expectExactly(governing.extremes.moment.max.value, '324 kip ft');
    expectExactly(governing.extremes.shear.max.value, '43.2 kip');
    const load = (mark: string): number =>
      results.find((result) => result.mark === mark)!.reactions[0]!.y! / si('15 ft');
    expectExactly(load('1.4D'), '1.12 kip/ft');
    expectExactly(load('1.2D + 1.6L'), '2.88 kip/ft');
  });
});
