import { describe, expect, test } from 'vitest';
import { checkStructure } from '../../src/statics/check-structure.ts';
import { solveBeam } from '../../src/statics/index.ts';
import {
  beam,
  down,
  pin,
  roller,
  spread,
  turn,
  type BeamSketch,
} from '../support/beam.ts';

const good: BeamSketch = {
  points: { A: 0, B: 4, C: 10 },
  supports: { A: pin, C: roller() },
};

/** The good sketch with something changed. */
function changed(change: Partial<BeamSketch>): ReturnType<typeof beam> {
  return beam({ ...good, ...change });
}

describe('checkStructure', () => {
  test('lets a beam pass', () => {
    expect(() => checkStructure(beam(good))).not.toThrow();
  });

  test.each([
    [
      'points that do not run to the right',
      changed({ points: { A: 0, B: 12, C: 10 } }),
      'point C',
    ],
    ['a beam of one point', changed({ points: { A: 0, C: 0 } }), 'two ends'],
    ['a hinge at an end', changed({ hinges: ['C'] }), 'hinge C'],
    ['a hinge named twice', changed({ hinges: ['B', 'B'] }), 'hinge B'],
    [
      'a load off the beam',
      changed({ loads: [down(1, 10.5)] }),
      'load-1 is not on the beam',
    ],
    [
      'a spread load off the beam',
      changed({ loads: [spread(1, -2, 4)] }),
      'load-1 is not on the beam',
    ],
    [
      'a load of a case not listed',
      changed({ loads: [down(1, 2, { case: 'L' })], cases: ['D'] }),
      'no case',
    ],
    ['a force that is no number', changed({ loads: [down(NaN, 2)] }), 'not finite'],
    ['a couple without end', changed({ loads: [turn(Infinity, 2)] }), 'not finite'],
  ])('refuses %s', (_, structure, message) => {
    expect(() => checkStructure(structure)).toThrow(RangeError);
    expect(() => checkStructure(structure)).toThrow(message);
  });

  test('refuses a direction that is not of unit length, and a support beside the beam', () => {
    const long = {
      type: 'roller',
      restraints: [{ kind: 'force', direction: [0, 2] }],
    } as const;
    expect(() => checkStructure(changed({ supports: { A: pin, C: long } }))).toThrow(
      'length 2',
    );
    const structure = beam(good);
    const away = { ...structure, supports: [{ ...structure.supports[0]!, x: 11 }] };
    expect(() => checkStructure(away)).toThrow('support A');
  });

  test('is what every stage asks first: a spread load over no length is refused too', () => {
    expect(() => solveBeam(changed({ loads: [spread(1, 4, 4 + 1e-12)] }))).toThrow(
      'no length',
    );
  });
});
