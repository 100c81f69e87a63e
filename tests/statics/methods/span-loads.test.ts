import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  continuousBeam,
  fixedEndMoment,
  loadTerm,
  mirrored,
  simpleReaction,
  tidyStructure,
  type SpanLoad,
} from '../../../src/statics/index.ts';
import { continuous, down, spread } from './continuous.ts';

/** The loads of the first span of a beam of two, 6 m and 4 m long. */
function loadsOf(
  loads: Parameters<typeof continuous>[0]['loads'],
): readonly SpanLoad[] {
  const structure = continuous({ stations: [0, 6, 10], supports: 'prr', loads });
  return continuousBeam(tidyStructure(structure), 'L').spans[0]?.loads ?? [];
}

/** ∫ f ds / L of a load as many small forces. */
function bySmallForces(load: SpanLoad, f: (s: number) => number): number {
  if (load.kind === 'force') return load.force * f(load.at);
  if (load.kind === 'couple') {
    const e = 1e-4;
    return (load.couple * (f(load.at - e) - f(load.at + e))) / (2 * e);
  }
  const count = 4000;
  const step = (load.to - load.from) / count;
  let total = 0;
  for (let i = 0; i < count; i += 1) {
    const share = (i + 0.5) / count;
    const height =
      load.kind === 'uniform' ? 1 : load.greater === 'to' ? share : 1 - share;
    total +=
      load.intensity * height * step * f(load.from + share * (load.to - load.from));
  }
  return total;
}

describe('loads of a span', () => {
  const L = 6;

  test('have the tabulated load terms of a uniform load, a triangle, a force and a couple', () => {
    const [uniform] = loadsOf([spread(8, 8, 0, 6)]);
    expect(loadTerm(uniform!, L)).toBeCloseTo((8 * L ** 3) / 4, 9);
    const [triangle] = loadsOf([spread(0, 8, 0, 6)]);
    expect(loadTerm(triangle!, L)).toBeCloseTo((8 * 8 * L ** 3) / 60, 9);
    expect(loadTerm(mirrored(triangle!, L), L)).toBeCloseTo((7 * 8 * L ** 3) / 60, 9);
    const [force] = loadsOf([down(8, 2)]);
    expect(loadTerm(force!, L)).toBeCloseTo((8 * 2 * (36 - 4)) / 6, 9);
    const [couple] = loadsOf([{ kind: 'couple', x: 2, m: 5 }]);
    expect(loadTerm(couple!, L)).toBeCloseTo((5 * (3 * 4 - 36)) / 6, 9);
  });

  test('have the tabulated moments of fixed ends', () => {
    const [triangle] = loadsOf([spread(0, 8, 0, 6)]);
    expect(fixedEndMoment(triangle!, L)).toBeCloseTo((8 * L ** 2) / 20, 9);
    expect(fixedEndMoment(mirrored(triangle!, L), L)).toBeCloseTo((8 * L ** 2) / 30, 9);
    const [force] = loadsOf([down(8, 2)]);
    expect(fixedEndMoment(force!, L)).toBeCloseTo((8 * 4 * 4) / 36, 9);
  });

  test('are those of many small forces, wherever they stand', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('force', 'couple', 'spread'),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 19 }),
        fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 })),
        (kind, from, base, [w1, w2]) => {
          const a = from / 10;
          const loads = loadsOf([
            kind === 'force'
              ? down(w1, a)
              : kind === 'couple'
                ? { kind: 'couple', x: a, m: w1 }
                : spread(w1, w2, a, a + base / 10),
          ]);
          for (const load of loads.flatMap((one) => [one, mirrored(one, L)])) {
            const near = (f: (s: number) => number): number => bySmallForces(load, f);
            expect(loadTerm(load, L)).toBeCloseTo(
              near((s) => (s * (L * L - s * s)) / L),
              4,
            );
            expect(fixedEndMoment(load, L)).toBeCloseTo(
              near((s) => (s * s * (L - s)) / (L * L)),
              4,
            );
            expect(simpleReaction(load, L)).toBeCloseTo(
              near((s) => s / L),
              4,
            );
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('leave out what stands at the supports, which finds its way to them alone', () => {
    expect(loadsOf([down(8, 0), down(9, 6)])).toEqual([]);
  });

  test('take in a couple at an inner support, at the right end of the span left of it', () => {
    expect(loadsOf([{ kind: 'couple', x: 6, m: 5 }])).toMatchObject([
      { kind: 'couple', couple: 5, at: 6 },
    ]);
  });
});
