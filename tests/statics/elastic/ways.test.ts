import { describe, expect, test } from 'vitest';
import type { BeamStructure, Restraint } from '../../../src/statics/index.ts';
import {
  beam,
  down,
  fixed,
  guide,
  pin,
  right,
  roller,
  spread,
  spring,
  turn,
} from '../../support/beam.ts';
import { bothWays } from './both-ways.ts';

const EI = 50;
const stiff = (structure: BeamStructure): BeamStructure => {
  const [from, to] = [structure.points[0]!.x, structure.points.at(-1)!.x];
  return { ...structure, stiffness: [{ from, to, EI }] };
};

/** Both ways have to come to known values: the joint, the name of the value, the value. */
function expectBoth(
  structure: BeamStructure,
  known: readonly (readonly [
    joint: number,
    name:
      | 'v'
      | 'turnLeft'
      | 'turnRight'
      | 'momentLeft'
      | 'momentRight'
      | 'shearRight'
      | 'shearLeft',
    value: number,
  ])[],
): void {
  for (const [way, state] of Object.entries(bothWays(structure)))
    for (const [joint, name, value] of known)
      expect(
        state.joints[joint]![name],
        `${name} of joint ${joint} by ${way}`,
      ).toBeCloseTo(value, 12);
}

describe('the two ways of solving, each by itself,', () => {
  test('find P l³ / 3 EI and P l² / 2 EI at the tip of a cantilever', () => {
    const structure = stiff(
      beam({ points: { A: 0, B: 3 }, supports: { A: fixed }, loads: [down(4, 'B')] }),
    );
    expectBoth(structure, [
      [1, 'v', (-4 * 27) / 3 / EI],
      [1, 'turnLeft', (-4 * 9) / 2 / EI],
      [0, 'momentRight', -12],
      [0, 'shearRight', 4],
    ]);
  });

  test('find q l² / 8 at the fixed end of a propped beam, 5/8 of the load there', () => {
    const structure = stiff(
      beam({
        points: { A: 0, B: 4 },
        supports: { A: fixed, B: roller() },
        loads: [spread(6, 'A', 'B')],
      }),
    );
    expectBoth(structure, [
      [0, 'momentRight', (-6 * 16) / 8],
      [0, 'shearRight', (5 * 24) / 8],
      [1, 'turnLeft', (6 * 64) / 48 / EI],
    ]);
  });

  test('find q l² / 8 over the middle of two equal spans, and q l² / 12 where both ends are built in', () => {
    const loads = [spread(6, 0, 8)];
    const two = {
      points: { A: 0, B: 4, C: 8 },
      supports: { A: pin, B: roller(), C: roller() },
    };
    expectBoth(stiff(beam({ ...two, loads })), [
      [1, 'momentLeft', -12],
      [1, 'shearRight', 15],
      [1, 'turnLeft', 0],
    ]);
    const built = { points: { A: 0, C: 8 }, supports: { A: fixed, C: fixed } };
    expectBoth(stiff(beam({ ...built, loads })), [
      [0, 'momentRight', -32],
      [1, 'momentLeft', -32],
    ]);
  });

  test('give a settled middle support 48 EI s / l³ of two equal spans', () => {
    const sunk = {
      kind: 'force',
      direction: [0, 1],
      settlements: [{ case: 'all', value: 0.02 }],
    } as const;
    const structure = stiff(
      beam({
        points: { A: 0, B: 4, C: 8 },
        supports: { A: pin, B: { type: 'roller', restraints: [sunk] }, C: roller() },
      }),
    );
    const lift = (-48 * EI * 0.02) / 512;
    expectBoth(structure, [
      [1, 'v', -0.02],
      [1, 'momentLeft', (-lift * 8) / 4],
      [0, 'shearRight', -lift / 2],
    ]);
  });

  test('hold a beam between fixings straight under a free curvature, with the moment − EI κ', () => {
    const structure = {
      ...stiff(beam({ points: { A: 0, B: 5 }, supports: { A: fixed, B: fixed } })),
      curvatures: [{ id: 'T', case: 'all', from: 0, to: 5, curvature: -0.003 }],
    };
    expectBoth(structure, [
      [0, 'momentRight', EI * 0.003],
      [1, 'momentLeft', EI * 0.003],
      [0, 'shearRight', 0],
    ]);
  });

  test('share a force between a spring and a cantilever by their stiffnesses', () => {
    const k = 7;
    const structure = stiff(
      beam({
        points: { A: 0, B: 3 },
        supports: { A: fixed, B: spring(k) },
        loads: [down(4, 'B')],
      }),
    );
    const own = (3 * EI) / 27;
    expectBoth(structure, [
      [1, 'v', -4 / (k + own)],
      [0, 'shearRight', (4 * own) / (k + own)],
    ]);
  });

  test('turn a sprung fixing by what it gives over its stiffness', () => {
    const k = 11;
    const sprung: Restraint = { kind: 'moment', stiffness: k };
    const structure = stiff(
      beam({
        points: { A: 0, B: 6 },
        supports: {
          A: { type: 'pin', restraints: [...pin.restraints, sprung] },
          B: roller(),
        },
        loads: [spread(2, 'A', 'B')],
      }),
    );
    // θ (k + 3 EI / l) = q l³ / 24 EI · 3 EI / l, clockwise
    const angle = ((2 * 216) / 24 / EI) * ((3 * EI) / 6);
    const theta = -angle / (k + (3 * EI) / 6);
    expectBoth(structure, [
      [0, 'turnRight', theta],
      [0, 'momentRight', k * theta],
    ]);
  });

  test('have no moment and two slopes at a hinge, and put a couple on the side that it names', () => {
    const hinged = {
      points: { A: 0, H: 4, B: 10 },
      supports: { A: fixed, B: fixed },
      hinges: ['H'],
    };
    const couple = (side: 'left' | 'right'): BeamStructure =>
      stiff(beam({ ...hinged, loads: [turn(9, 'H', { side })] }));
    // The tips of two cantilevers move together: v = (m a²/2 − F a³/3) / EI on one side, F b³ / 3 EI on the other.
    const force = (9 * 16) / 2 / ((64 + 216) / 3);
    expectBoth(couple('left'), [
      [1, 'v', (force * 216) / 3 / EI],
      [1, 'turnLeft', (9 * 4 - (force * 16) / 2) / EI],
      [1, 'turnRight', (-force * 36) / 2 / EI],
      [1, 'momentRight', 0],
      [0, 'momentRight', 9 - force * 4],
    ]);
    const other = (9 * 36) / 2 / ((64 + 216) / 3);
    expectBoth(couple('right'), [
      [1, 'v', (-other * 64) / 3 / EI],
      [1, 'momentLeft', 0],
    ]);
  });

  test('bend each stretch by its own stiffness', () => {
    const structure = {
      ...beam({
        points: { A: 0, B: 5 },
        supports: { A: fixed },
        loads: [down(2, 'B')],
      }),
      stiffness: [
        { from: 0, to: 2, EI: 80 },
        { from: 2, to: 5, EI: 20 },
      ],
    };
    const v = -(2 * 125) / 3 / 80 - ((2 * 27) / 3) * (1 / 20 - 1 / 80);
    expectBoth(structure, [[2, 'v', v]]);
  });

  test('let a guide sink without turning', () => {
    const structure = stiff(
      beam({
        points: { A: 0, B: 4 },
        supports: { A: guide, B: fixed },
        loads: [down(6, 'A')],
      }),
    );
    expectBoth(structure, [
      [0, 'v', (-6 * 64) / 12 / EI],
      [0, 'turnRight', 0],
      [0, 'momentRight', 12],
      [1, 'momentLeft', -12],
    ]);
  });

  test('slide a beam along its inclined rollers until nothing pushes it', () => {
    // Of three rollers the outer two lean alike: a push slides the beam, which then bends over the middle one.
    const structure = stiff(
      beam({
        points: { A: 0, B: 4, C: 8 },
        supports: { A: roller(45), B: roller(), C: roller(45) },
        loads: [right(3, 'B')],
      }),
    );
    for (const state of Object.values(bothWays(structure))) {
      const [a, b, c] = state.joints;
      // Each leaning roller gives as much along x as upward: 3 + Ra + Rc = 0, Ra + Rb + Rc = 0.
      expect(a!.shearRight).toBeCloseTo(-1.5, 12);
      expect(b!.shearRight - b!.shearLeft).toBeCloseTo(3, 12);
      expect(a!.v).toBeCloseTo(-state.slide, 12);
      expect(c!.v).toBeCloseTo(-state.slide, 12);
      expect(state.slide).toBeCloseTo((3 * 512) / 48 / EI, 12);
    }
  });

  test('keep twelve digits on bars a hundred-thousandth as long as their neighbours', () => {
    const structure = {
      ...beam({
        points: { A: 0, B: 10 },
        supports: { A: fixed, B: roller() },
        loads: [spread(8, 'A', 'B')],
      }),
      stiffness: [
        { from: 0, to: 5, EI },
        { from: 5, to: 5.0001, EI: EI * (1 + 1e-13) },
        { from: 5.0001, to: 10, EI },
      ],
    };
    for (const state of Object.values(bothWays(structure)))
      expect(state.joints[0]!.momentRight / -100).toBeCloseTo(1, 12);
  });
});
