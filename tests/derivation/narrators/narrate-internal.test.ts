import { describe, expect, test } from 'vitest';
import { toLinear } from '../../../src/equation/index.ts';
import {
  derivedBeam,
  linesOf,
  linesOfStatement,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';

const si = { 'project.yaml': siProject };

function internal(rest: Readonly<Record<string, string>>) {
  const { derivation } = derivedBeam(rest, si);
  return {
    steps: stepsOf(derivation, 'internal-forces'),
    lines: linesOf(derivation, 'internal-forces'),
  };
}

const simple = { points: '{ A: 0 m, B: 6 m }', supports: '{ A: pin, B: roller }' };

describe('narrateInternal', () => {
  test('gives shear and moment of every segment from its start', () => {
    const { lines } = internal({
      ...simple,
      loads: '[ { point: 12 kN, at: 2 m }, { uniform: 3 kN/m, from: 2 m, to: B } ]',
    });
    expect(lines).toEqual(
      expect.arrayContaining([
        'V(x) = 12.00 kN',
        'M(x) = 12.00 kN x',
        'V(x) = −3.000 kN/m (x − 2 m)',
        'M(x) = 24.00 kN·m − 1.500 kN/m (x − 2 m)²',
      ]),
    );
  });

  test('finds where a straight shear passes through 0', () => {
    const { lines } = internal({
      ...simple,
      loads: '[ { uniform: 3 kN/m, from: 2 m, to: B } ]',
    });
    expect(lines).toContain('x = 2 m + 4.000 kN / (3.000 kN/m) = 3.333 m');
  });

  test('finds it by a root where the load is a triangle from the start', () => {
    const { lines } = internal({
      ...simple,
      loads: '[ { varying: [ 0 kN/m, 6 kN/m ] } ]',
    });
    expect(lines).toContain('x = √(6.000 kN / (0.5000 kN/m²)) = 3.464 m');
  });

  test('finds it by the quadratic where the load is a trapezoid', () => {
    const { lines } = internal({
      ...simple,
      loads: '[ { varying: [ 2 kN/m, 8 kN/m ] } ]',
    });
    expect(lines).toContain(
      'x = (−2.000 kN/m + √((2.000 kN/m)² + 4 (0.5000 kN/m²) (12.00 kN))) / (2 (0.5000 kN/m²)) = 3.292 m',
    );
  });

  test('cuts the areas where the shear passes through 0, so that each changes the moment one way', () => {
    const { steps } = internal({ ...simple, loads: '[ { uniform: 2 kN/m } ]' });
    const { rows, units } = stepOf(steps, 'areas');
    expect(units).toEqual({ force: 'kN', moment: 'kN·m' });
    expect(
      rows.map(({ place, area, momentLeft }) =>
        [place.station, area, momentLeft].map((of) =>
          of === undefined ? '' : toLinear(of),
        ),
      ),
    ).toEqual([
      ['0 m', '9.000', '0'],
      ['3 m', '−9.000', '9.000'],
      ['6 m', '', '0'],
    ]);
  });

  test('tells both sides of a couple and of a fixed end', () => {
    const { steps } = internal({
      points: '{ A: 0 m, B: 2 m, C: 5 m }',
      supports: '{ A: fixed }',
      loads:
        '[ { couple: 4 kN m, at: B, turn: counterclockwise }, { point: 1 kN, at: C } ]',
    });
    const { rows, hasCouples } = stepOf(steps, 'areas');
    expect(hasCouples).toBe(true);
    expect(
      rows.map(
        ({ momentLeft, momentRight }) =>
          `${toLinear(momentLeft)} | ${toLinear(momentRight)}`,
      ),
    ).toEqual(['0 | −1.000', '1.000 | −3.000', '0 | 0']);
  });

  test('boxes each extreme with its place, and leaves out what is 0', () => {
    const { steps } = internal({ ...simple, loads: '[ { point: 12 kN, at: 2 m } ]' });
    const { statement } = stepOf(steps, 'extremes');
    expect(linesOfStatement(statement)).toEqual([
      'V_max = 8.000 kN',
      'V_min = −4.000 kN',
      'M_max = 16.00 kN·m',
    ]);
    expect(
      statement.lines.map(({ margin, boxed }) => [
        margin?.replace('\u00a0', ' '),
        boxed,
      ]),
    ).toEqual([
      ['at A', true],
      ['at 2 m', true],
      ['at 2 m', true],
    ]);
  });
});
