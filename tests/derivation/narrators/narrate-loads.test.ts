import { describe, expect, test } from 'vitest';
import {
  derivedBeam,
  linesOfStatement,
  siProject,
  stepsOf,
} from '../../support/derived.ts';

const si = { 'project.yaml': siProject };

function resultants(
  rest: Readonly<Record<string, string>>,
  files: Readonly<Record<string, string>> = si,
) {
  return stepsOf(derivedBeam(rest, files).derivation, 'equations').flatMap((step) =>
    step.kind === 'resultant' ? [step] : [],
  );
}

describe('narrateLoads', () => {
  test('replaces a trapezoid by a rectangle and the triangle over it', () => {
    const found = resultants({
      points: '{ A: 0 m, B: 6 m }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { varying: [ 5 kN/m, 2 kN/m ] } ]',
    });
    expect(found.map(({ shape, isShare }) => [shape, isShare])).toEqual([
      ['rectangle', true],
      ['triangle', true],
    ]);
    expect(
      found.flatMap(({ size, place }) => [
        ...linesOfStatement(size),
        ...linesOfStatement(place),
      ]),
    ).toEqual([
      'W_1a = w_1a b_1a',
      '= 2 kN/m (6 m)',
      '= 12.00 kN',
      'x̄_1a = 6 m / 2 = 3 m',
      'W_1b = (1 / 2) w_1b b_1b',
      '= (1 / 2) (5 kN/m − 2 kN/m) (6 m)',
      '= 9.000 kN',
      'x̄_1b = 6 m / 3 = 2 m',
    ]);
  });

  test('works out the intensity where a hinge cuts a varying load', () => {
    const found = resultants({
      points: '{ A: 0 m, H: 4 m, B: 10 m }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads: '[ { varying: [ 1 kN/m, 6 kN/m ] } ]',
    });
    expect(
      found.flatMap(({ ordinates }) =>
        ordinates.flatMap(({ what, statement }) => [
          what,
          ...linesOfStatement(statement),
        ]),
      ),
    ).toEqual([
      'at-cut',
      'w_1(4 m) = 1 kN/m + (6 kN/m − 1 kN/m) (4 m) / (10 m) = 3 kN/m',
    ]);
    expect(
      found.map(
        ({ from, to, symbol }) => `${symbol.subscript} ${from.point} ${to.point}`,
      ),
    ).toEqual(['1a H B', '1b H B', '1c A H', '1d A H']);
  });

  test('finds where a load that changes sign passes through nothing', () => {
    const found = resultants({
      points: '{ A: 0 m, B: 6 m }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { varying: [ -2 kN/m, 4 kN/m ] } ]',
    });
    expect(found.map(({ direction }) => direction)).toEqual(['up', 'down']);
    expect(
      found.flatMap(({ ordinates }) =>
        ordinates.flatMap(({ statement }) => linesOfStatement(statement)),
      ),
    ).toEqual(['x_0 = 2 kN/m (6 m) / (2 kN/m + 4 kN/m) = 2 m']);
  });

  test('brings what is given in another unit into that of the sums', () => {
    const { derivation } = derivedBeam(
      {
        points: '{ A: 0 ft, B: 20 ft }',
        supports: '{ A: pin, B: roller }',
        loads: '[ { point: 900 lb, at: 5 ft }, { uniform: 60 plf } ]',
        self_weight: 'all',
        section: 'W12x26',
      },
      { 'loads.yaml': 'cases: { all: { kind: dead } }\n' },
    );
    const [step] = stepsOf(derivation, 'equations').filter(
      ({ kind }) => kind === 'conversion',
    );
    expect(step?.kind === 'conversion' ? linesOfStatement(step.statement) : []).toEqual(
      [
        'P_1 = 900 lb = 0.9 kip',
        'w_2 = 60 plf = 0.06 kip/ft',
        'w_3 = 26 plf = 0.026 kip/ft',
      ],
    );
  });

  test('names each share of a load once, whatever the number of sums that use it', () => {
    const found = resultants({
      points: '{ A: 0 m, B: 5 m, E: 6.2 m, F: 10.8 m, C: 12 m, D: 17 m }',
      supports: '{ A: pin, B: roller, C: roller, D: roller }',
      hinges: '[ E, F ]',
      loads: '[ { uniform: 3 kN/m } ]',
    });
    expect(found.map(({ symbol }) => symbol.subscript)).toEqual(['1a', '1b', '1c']);
  });
});
