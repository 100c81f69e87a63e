import { describe, expect, test } from 'vitest';
import { determinacy, type Instability } from '../../src/statics/index.ts';
import {
  beam,
  fixed,
  guide,
  pin,
  roller,
  type SupportSketch,
} from '../support/beam.ts';

const points = { A: 0, B: 5, C: 10, D: 15, E: 20 };

function nameOf(
  supports: Readonly<Record<string, SupportSketch>>,
  hinges: readonly string[] = [],
): Instability | undefined {
  return determinacy(beam({ points, supports, hinges })).instability;
}

describe('nameInstability', () => {
  test('says that nothing holds the beam along its axis', () => {
    expect(nameOf({ A: roller(), E: roller() })).toEqual({ kind: 'no-x-restraint' });
    expect(nameOf({ A: roller(), C: roller(), E: roller() })).toEqual({
      kind: 'no-x-restraint',
    });
    expect(
      nameOf({ A: roller(), B: roller(), D: roller(), E: roller() }, ['C']),
    ).toEqual({ kind: 'no-x-restraint' });
  });

  test('says that reactions are too few where more than one movement of the whole is free', () => {
    expect(nameOf({ A: roller() })).toEqual({
      kind: 'too-few-reactions',
      unknowns: 1,
      equations: 3,
    });
    expect(nameOf({})).toEqual({
      kind: 'too-few-reactions',
      unknowns: 0,
      equations: 3,
    });
  });

  test('says parallel, with the direction of the reactions, upward or right', () => {
    const slanted = nameOf({ A: roller(60), C: roller(60), E: roller(240) });
    expect(slanted).toMatchObject({ kind: 'parallel' });
    const { direction } = slanted as Extract<Instability, { kind: 'parallel' }>;
    expect(direction[0]).toBeCloseTo(Math.cos(Math.PI / 3), 12);
    expect(direction[1]).toBeCloseTo(Math.sin(Math.PI / 3), 12);
    const leaning = nameOf({ A: roller(120), E: roller(120) });
    expect(
      (leaning as typeof slanted & { direction: number[] }).direction[0],
    ).toBeCloseTo(-0.5, 12);
    expect(nameOf({ A: guide, E: guide })).toEqual({
      kind: 'parallel',
      direction: [1, 0],
    });
    expect(nameOf({ A: guide })).toEqual({ kind: 'parallel', direction: [1, 0] });
  });

  test('says concurrent, with the point: the pin that a level roller points at', () => {
    expect(nameOf({ B: pin, E: roller(0) })).toEqual({
      kind: 'concurrent',
      x: 5,
      y: 0,
    });
    expect(nameOf({ E: pin })).toEqual({ kind: 'concurrent', x: 20, y: 0 });
  });

  test('says concurrent, with the point above the beam where three slanted rollers meet', () => {
    const name = nameOf({ A: roller(45), C: roller(90), E: roller(135) });
    expect(name).toEqual({ kind: 'concurrent', x: 10, y: expect.closeTo(10, 9) });
    const below = nameOf({ A: roller(-45), E: roller(45) });
    expect(below).toEqual({ kind: 'concurrent', x: 10, y: expect.closeTo(-10, 9) });
  });

  test('says mechanism, at one hinge between pin and roller', () => {
    expect(nameOf({ A: pin, E: roller() }, ['C'])).toEqual({
      kind: 'mechanism',
      hinges: ['C'],
    });
  });

  test('says mechanism at each of the hinges that turn, and leaves out one that does not', () => {
    // Two hinges in one span beside another that rightly hangs a piece.
    expect(nameOf({ A: fixed, E: pin }, ['B', 'C', 'D'])).toEqual({
      kind: 'mechanism',
      hinges: ['B', 'C', 'D'],
    });
    // The bar from A to B hangs rightly; the one beyond D does not.
    expect(nameOf({ A: roller(), C: fixed }, ['B', 'D'])).toEqual({
      kind: 'mechanism',
      hinges: ['D'],
    });
  });

  test('says mechanism at a hinge of a cantilever that nothing props', () => {
    expect(nameOf({ A: fixed }, ['C'])).toEqual({ kind: 'mechanism', hinges: ['C'] });
  });

  test('says mechanism of two pins with a hinge between, though the count is 0', () => {
    const found = determinacy(
      beam({ points, supports: { A: pin, E: pin }, hinges: ['C'] }),
    );
    expect(found).toMatchObject({ degree: 0, redundants: 1, mechanisms: 1 });
    expect(found.instability).toEqual({ kind: 'mechanism', hinges: ['C'] });
  });

  test('names what the whole beam can do before what its pieces can', () => {
    expect(nameOf({ A: roller(), E: roller() }, ['C'])).toEqual({
      kind: 'no-x-restraint',
    });
    expect(nameOf({ A: pin }, ['C'])).toEqual({ kind: 'concurrent', x: 0, y: 0 });
  });
});
