import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  forceFromRight,
  momentFromRight,
} from '../../src/derivation/moment-from-right.ts';
import { toLinear } from '../../src/equation/index.ts';
import { keyStations, valueAt } from '../../src/statics/index.ts';
import { folderOf } from '../support/beam-file.ts';
import { claimed, derivedBeam, derivedFolder, siProject } from '../support/derived.ts';
import { determinateBeam } from '../support/random-beam.ts';

function contextOf(rest: Readonly<Record<string, string>>) {
  const { project, work } = derivedBeam(rest, { 'project.yaml': siProject });
  return claimed(project, work, work.solution.results[0]!);
}

describe('momentFromRight', () => {
  test('writes the stretch that the cut makes as an area, and what stands whole as its resultant', () => {
    const context = contextOf({
      points: '{ A: 0 m, B: 6 m, C: 8 m }',
      supports: '{ A: pin, B: roller }',
      loads:
        '[ { uniform: 2 kN/m, from: A, to: B }, { uniform: 3 kN/m, from: B, to: C } ]',
    });
    expect(toLinear(momentFromRight(context, 4, 'left').expression)).toBe(
      '13.00 kN (2 m) − 2 kN/m (2 m) (1 m) − 6.000 kN (3 m)',
    );
  });

  test('counts a couple at the cut only where the cut lies to its left', () => {
    const context = contextOf({
      points: '{ A: 0 m, B: 6 m }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { couple: 6 kN m, at: 2 m, turn: clockwise } ]',
    });
    expect(momentFromRight(context, 2, 'left').total).toBeCloseTo(-2000);
    expect(momentFromRight(context, 2, 'right').total).toBeCloseTo(4000);
  });

  test('takes a slanted reaction by the sine of its angle', () => {
    const context = contextOf({
      points: '{ A: 0 m, B: 6 m }',
      supports: '{ A: pin, B: { type: roller, normal: 60 deg } }',
      loads: '[ { point: 6 kN, at: 2 m } ]',
    });
    expect(toLinear(momentFromRight(context, 2, 'right').expression)).toBe(
      '2.309 kN sin(60°) (4 m)',
    );
  });

  test('agrees with the curves of any beam on both sides of every key station', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const { project, works } = derivedFolder(folderOf(structure));
        for (const work of works) {
          for (const result of work.solution.results) {
            const context = claimed(project, work, result);
            const size =
              1 +
              Math.abs(result.extremes.moment.max.value) +
              Math.abs(result.extremes.moment.min.value);
            for (const { x, shear } of keyStations(context.structure, result).slice(
              1,
              -1,
            )) {
              const { total, scale } = momentFromRight(context, x, 'right');
              expect(
                Math.abs(total - valueAt(result.moment, x, 'right')),
              ).toBeLessThanOrEqual(1e-9 * (scale + size));
              const force = forceFromRight(context, { x, side: 'right', along: 'y' });
              expect(Math.abs(force.total - shear.right)).toBeLessThanOrEqual(
                1e-9 * (force.scale + Math.abs(shear.right) + 1),
              );
            }
          }
        }
      }),
      { numRuns: 10 },
    );
  });
});
