import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  criticalPlace,
  influenceBasis,
  influenceLine,
  rollingTrain,
  valueAt,
  type BeamStructure,
  type CriticalPlace,
  type Effect,
  type Piecewise,
  type Train,
} from '../../../src/statics/index.ts';
import { beam, fixed, pin, roller } from '../../support/beam.ts';
import { randomTrain, solverFor, sumAtPlace, train } from '../../support/rolling.ts';

function lineOf(structure: BeamStructure, effect: Effect): Piecewise {
  const basis = influenceBasis(structure, solverFor(structure));
  if (basis === undefined) throw new Error('the ways disagree');
  return influenceLine(basis, effect);
}

function worst(line: Piecewise, one: Train, sense: 'max' | 'min'): CriticalPlace {
  return criticalPlace(rollingTrain(one), line, sense);
}

const simple = beam({ points: { A: 0, B: 24 }, supports: { A: pin, B: roller() } });
const propped = beam({
  points: { A: 0, B: 10, C: 18, D: 20 },
  supports: { A: fixed, B: roller(), C: roller() },
});
const hinged = beam({
  points: { A: -3, B: 0, C: 4, D: 12, E: 14 },
  supports: { B: pin, D: roller(), E: roller() },
  hinges: ['C'],
});

describe('criticalPlace', () => {
  // Hibbeler, Structural Analysis, section on influence lines for a series of loads (from memory):
  // a load stands at the peak of the line, and the others where they then fall.
  test('puts an axle on the peak of a moment line', () => {
    const line = lineOf(simple, { kind: 'station', of: 'moment', x: 12, side: 'left' });
    const { value, place } = worst(
      line,
      train([2, 10], [4], { travel: 'right' }),
      'max',
    );
    expect(value).toBeCloseTo(10 * 6 + 2 * 4, 12);
    expect(place.axles).toEqual([
      { index: 0, x: 16 },
      { index: 1, x: 12 },
    ]);
  });

  test('puts an axle on the greater side of the leap of a shear line', () => {
    const line = lineOf(simple, { kind: 'station', of: 'shear', x: 6, side: 'left' });
    const up = worst(line, train([10], []), 'max');
    expect(up.value).toBeCloseTo(7.5, 12);
    const down = worst(line, train([10], []), 'min');
    expect(down.value).toBeCloseTo(-2.5, 12);
  });

  test('finds no effect on the wrong side of zero: the train may be off the beam', () => {
    const line = lineOf(simple, { kind: 'station', of: 'moment', x: 12, side: 'left' });
    const { value, place } = worst(line, train([2, 10], [4]), 'min');
    expect(value).toBe(0);
    expect(place.axles).toEqual([]);
  });

  test('turns the train round where it may travel both ways', () => {
    const line = lineOf(simple, { kind: 'reaction', point: 'A', component: 'y' });
    const both = worst(line, train([8, 32], [6], { travel: 'both' }), 'max');
    expect(both.value).toBeCloseTo(32 + (8 * 18) / 24, 12);
    expect(both.place.direction).toBe('right');
    const one = worst(line, train([8, 32], [6], { travel: 'left' }), 'max');
    expect(one.value).toBeCloseTo(32, 12);
  });

  test('stretches a variable spacing so that each group stands at its own best', () => {
    const two = beam({
      points: { A: 0, B: 10, C: 20 },
      supports: { A: pin, B: roller(), C: roller() },
    });
    const line = lineOf(two, { kind: 'station', of: 'moment', x: 10, side: 'left' });
    const { value, place } = worst(line, train([1, 1], [[2, 15]]), 'min');
    // Each axle at its own peak, 10/√3 from an outer support: −L/(6√3) each.
    expect(value).toBeCloseTo((-2 * 10) / (6 * Math.sqrt(3)), 12);
    const [front, back] = place.axles.map(({ x }) => x).sort((a, b) => a - b);
    expect(front).toBeCloseTo(10 / Math.sqrt(3), 7);
    expect(back).toBeCloseTo(20 - 10 / Math.sqrt(3), 7);
  });

  test('lays the lane load only where it makes things worse, and leaves relieving axles out where asked', () => {
    const line = lineOf(hinged, { kind: 'station', of: 'moment', x: 8, side: 'left' });
    const lane = worst(line, train([1], [], { lane: 2 }), 'max');
    // Only what stands on the overhang left of B lifts the hinge, and so sags the beam at 8.
    expect(lane.place.lane).toEqual([{ from: -3, to: 0 }]);
    const kept = worst(line, train([1, 1], [9]), 'max').value;
    const out = worst(line, train([1, 1], [9], { relieving: 'left out' }), 'max');
    expect(out.value).toBeGreaterThanOrEqual(kept);
    for (const { x } of out.place.axles)
      expect(valueAt(line, x, 'left')).toBeGreaterThan(0);
  });

  test.each([
    ['a simple beam', simple],
    ['a propped beam with an overhang', propped],
    ['a hinged beam with overhangs', hinged],
  ])('is never beaten by trying many places on %s', (_, structure) => {
    const [start, end] = [structure.points[0]!.x, structure.points.at(-1)!.x];
    const length = end - start;
    fc.assert(
      fc.property(
        randomTrain(length),
        fc.integer({ min: 1, max: 52 }).map((n) => start + (n * length) / 53),
        fc.constantFrom('shear', 'moment'),
        fc.tuple(
          fc.constantFrom('max', 'min' as const),
          fc.array(fc.constantFrom(0, 0.31, 0.5, 0.77, 1), {
            minLength: 3,
            maxLength: 3,
          }),
        ),
        (one, x, of, [sense, shares]) => {
          const line = lineOf(structure, { kind: 'station', of, x, side: 'left' });
          const found = worst(line, { ...one, lane: 0 }, sense);
          const sign = sense === 'max' ? 1 : -1;
          const scale = length * one.axles.reduce((sum, axle) => sum + axle, 0);
          const directions =
            one.travel === 'both' ? (['right', 'left'] as const) : [one.travel];
          for (const direction of directions) {
            for (let step = -400; step <= 800; step += 3) {
              const front = start + (step / 400) * length;
              const tried = sumAtPlace(line, one, { front, direction, shares, sense });
              expect(sign * tried).toBeLessThanOrEqual(
                sign * found.value + 1e-9 * scale,
              );
            }
          }
          // And the place found gives what is claimed for it.
          const { place, approach } = found;
          const claimed = place.axles.reduce((sum, { index, x: at }) => {
            const sides = (['left', 'right'] as const).map((side) =>
              valueAt(line, at, side),
            );
            const ordinate =
              approach === 0
                ? sign * Math.max(...sides.map((value) => sign * value))
                : sides[approach < 0 ? 0 : 1]!;
            return sum + one.axles[index]! * ordinate;
          }, 0);
          expect(Math.abs(claimed - found.value)).toBeLessThan(1e-9 * scale);
        },
      ),
      { numRuns: 25 },
    );
  });
});
