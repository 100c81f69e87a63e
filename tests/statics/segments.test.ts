import { describe, expect, test } from 'vitest';
import { evaluatePolynomial, segmentsOf, solveBeam } from '../../src/statics/index.ts';
import { beam, down, pin, roller, spread, turn } from '../support/beam.ts';

const outcome = solveBeam(
  beam({
    points: { A: 2, B: 6, C: 12 },
    supports: { A: pin, C: roller() },
    loads: [down(10, 'B'), spread([0, 6], 'B', 'C'), turn(5, 'B')],
  }),
);
const segments = outcome.kind === 'beam' ? segmentsOf(outcome.results[0]!) : [];

describe('segmentsOf', () => {
  test('gives shear and moment over each stretch, from its own start and from the station’s origin', () => {
    expect(segments.map(({ from, to }) => [from, to])).toEqual([
      [2, 6],
      [6, 12],
    ]);
    for (const segment of segments) {
      for (const name of ['axial', 'shear', 'moment'] as const) {
        const f = segment[name];
        for (const s of [0, 1.5, 4]) {
          expect(evaluatePolynomial(f.global, segment.from + s)).toBeCloseTo(
            evaluatePolynomial(f.local, s),
            10,
          );
        }
        expect(f.start).toBe(f.local[0]);
        expect(f.end).toBeCloseTo(
          evaluatePolynomial(f.local, segment.to - segment.from),
          12,
        );
      }
    }
  });

  test('has degrees that follow the load: constant and straight, then square and cubic', () => {
    expect(segments.map(({ shear }) => shear.local.length)).toEqual([1, 3]);
    expect(segments.map(({ moment }) => moment.local.length)).toEqual([2, 4]);
  });

  test('finds the change of moment as the area under the shear, and the leap as minus the couple', () => {
    const [first, second] = segments;
    expect(first!.shearArea).toBeCloseTo(first!.moment.end - first!.moment.start, 12);
    expect(second!.shearArea).toBeCloseTo(
      second!.moment.end - second!.moment.start,
      12,
    );
    expect(first!.momentJump).toBeCloseTo(-5, 12);
    expect(second!.momentJump).toBe(0);
    expect(second!.moment.end).toBe(0);
  });
});
