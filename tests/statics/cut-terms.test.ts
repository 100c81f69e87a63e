import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  solveBeam,
  termsOfCutSum,
  valueOfCutForce,
  valueOfUnknown,
  type BeamResult,
  type CutTerm,
} from '../../src/statics/index.ts';
import { beam, down, pin, roller, turn } from '../support/beam.ts';
import { determinateBeam } from '../support/random-beam.ts';

const structure = beam({
  points: { A: 0, B: 6, H: 12, C: 21 },
  supports: { A: pin, C: roller() },
  loads: [down(8.4, 'B'), turn(2, 'H')],
});

function name({ source, factor }: CutTerm): readonly [string, number] {
  switch (source.kind) {
    case 'cut':
      return [source.force, factor];
    case 'load':
      return [source.id, factor];
    case 'reaction':
      return [`${source.point}${source.index}`, factor];
    case 'hinge':
      return [source.point, factor];
  }
}

describe('termsOfCutSum', () => {
  test('shows shear down and moment counterclockwise on the part left of a cut', () => {
    const cut = { x: 12, side: 'left' } as const;
    const up = termsOfCutSum(
      structure,
      'all',
      { to: cut },
      { kind: 'forces', along: 'y' },
    );
    expect(up.map(name)).toEqual([
      ['A0', 0],
      ['A1', 1],
      ['axial', 0],
      ['shear', -1],
      ['moment', 0],
      ['load-1', -1],
    ]);
    const about = termsOfCutSum(
      structure,
      'all',
      { to: cut },
      { kind: 'moments', about: 12 },
    );
    expect(about.map(name)).toEqual([
      ['A0', 0],
      ['A1', -12],
      ['axial', 0],
      ['shear', 0],
      ['moment', 1],
      ['load-1', 6],
    ]);
  });

  test('turns them round on the part right of it, and puts what stands at the station on one part only', () => {
    const after = { x: 12, side: 'right' } as const;
    const sum = { kind: 'moments', about: 12 } as const;
    expect(termsOfCutSum(structure, 'all', { from: after }, sum).map(name)).toEqual([
      ['C0', 9],
      ['axial', 0],
      ['shear', 0],
      ['moment', -1],
    ]);
    const before = { x: 12, side: 'left' } as const;
    expect(
      termsOfCutSum(structure, 'all', { from: before }, sum).map(name),
    ).toContainEqual(['load-2', 1]);
  });

  test('balances on any slice of any beam', () => {
    const share = fc.integer({ min: 0, max: 30 });
    const side = fc.constantFrom('left' as const, 'right' as const);
    fc.assert(
      fc.property(
        determinateBeam,
        fc.tuple(share, share),
        fc.tuple(side, side),
        (random, shares, sides) => {
          const outcome = solveBeam(random);
          if (outcome.kind !== 'beam') throw new Error('a determinate beam is solved');
          // At named points, where things stand, and between them.
          const stations = random.points.flatMap(({ x }, i) => [
            x,
            (x + (random.points[i + 1]?.x ?? x)) / 2,
          ]);
          const [from, to] = shares
            .map((s) => stations[s % stations.length]!)
            .sort((a, b) => a - b);
          fc.pre(to! > from!);
          const part = {
            from: { x: from!, side: sides[0] },
            to: { x: to!, side: sides[1] },
          };
          for (const result of outcome.results) {
            for (const sum of [
              { kind: 'forces', along: 'x' },
              { kind: 'forces', along: 'y' },
              { kind: 'moments', about: from! + 1 },
            ] as const) {
              const terms = termsOfCutSum(random, result.mark, part, sum).map(
                (term) => term.factor * worth(result, term),
              );
              const size = terms.reduce((a, b) => a + Math.abs(b), 0);
              const total = terms.reduce((a, b) => a + b, 0);
              expect(Math.abs(total)).toBeLessThanOrEqual(1e-8 * Math.max(size, 1e5));
            }
          }
        },
      ),
    );
  });

  test('refuses cuts with nothing between them', () => {
    const sum = { kind: 'forces', along: 'y' } as const;
    const at = (
      x: number,
      side: 'left' | 'right',
    ): { x: number; side: 'left' | 'right' } => ({ x, side });
    expect(() =>
      termsOfCutSum(
        structure,
        'all',
        { from: at(6, 'right'), to: at(6, 'right') },
        sum,
      ),
    ).toThrow(RangeError);
    expect(() =>
      termsOfCutSum(structure, 'all', { from: at(8, 'left'), to: at(6, 'right') }, sum),
    ).toThrow(RangeError);
    expect(() => termsOfCutSum(structure, 'all', { to: at(22, 'left') }, sum)).toThrow(
      RangeError,
    );
  });

  test('takes the point itself as a part: what stands there, between a cut on either side', () => {
    const part = { from: { x: 6, side: 'left' }, to: { x: 6, side: 'right' } } as const;
    const terms = termsOfCutSum(structure, 'all', part, { kind: 'forces', along: 'y' });
    expect(terms.map(name)).toContainEqual(['load-1', -1]);
  });
});

function worth(result: BeamResult, { source, magnitude }: CutTerm): number {
  switch (source.kind) {
    case 'cut':
      return valueOfCutForce(result, source);
    case 'load':
      return magnitude!;
    case 'reaction':
    case 'hinge':
      return valueOfUnknown(result, source);
  }
}
