import { describe, expect, test } from 'vitest';
import { checkStructure } from '../../src/statics/check-structure.ts';
import { solveBeam } from '../../src/statics/index.ts';
import {
  beam,
  down,
  pin,
  roller,
  spring,
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

  test('refuses a stiffness with a gap, of no size or short of an end, and springs and curvatures that are none', () => {
    const structure = beam(good);
    const stretch = (from: number, to: number, EI: number = 1) => ({ from, to, EI });
    const refused = (more: Partial<typeof structure>, message: string): void =>
      expect(() => checkStructure({ ...structure, ...more })).toThrow(message);
    refused({ stiffness: [stretch(0, 4), stretch(5, 10)] }, 'no stiffness from x = 4');
    refused({ stiffness: [stretch(0, 9)] }, 'no stiffness from x = 9');
    refused({ stiffness: [stretch(0, 10, 0)] }, 'EI = 0');
    refused({ stiffness: [stretch(0, 0), stretch(0, 10)] }, 'for no length');
    const bend = { id: 'T', case: 'all', from: 2, to: 4, curvature: 1 };
    refused({ curvatures: [{ ...bend, to: 11 }] }, 'curvature T is not on the beam');
    refused(
      { curvatures: [{ ...bend, to: 2 }] },
      'curvature T is spread over no length',
    );
    refused({ curvatures: [{ ...bend, curvature: NaN }] }, 'curvature T is not finite');
    expect(() =>
      checkStructure(changed({ supports: { A: pin, C: spring(0) } })),
    ).toThrow('support C has a spring of 0');
  });

  test('is what every stage asks first: a spread load over no length is refused too', () => {
    expect(() => solveBeam(changed({ loads: [spread(1, 4, 4 + 1e-12)] }))).toThrow(
      'no length',
    );
  });
});
