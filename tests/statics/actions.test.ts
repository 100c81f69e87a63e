import { describe, expect, test } from 'vitest';
import { actionsOn, unknownActionsOn } from '../../src/statics/actions.ts';
import { partsOf, wholeOf } from '../../src/statics/index.ts';
import { tidyStructure } from '../../src/statics/tidy-structure.ts';
import { beam, down, pin, roller, spread, turn } from '../support/beam.ts';

const structure = tidyStructure(
  beam({
    points: { A: 0, B: 4, H: 6, C: 10 },
    supports: { C: roller(), H: roller(), A: pin },
    hinges: ['H'],
    loads: [
      down(1, 'H'),
      turn(2, 'H', { side: 'right' }),
      turn(3, 'H', { side: 'left' }),
      spread(1, 'B', 'C'),
    ],
  }),
);
const whole = wholeOf(structure);
const [left, right] = partsOf(structure);

describe('actionsOn', () => {
  test('counts everything on exactly one piece, and on the whole once', () => {
    const loads = (part: typeof whole): readonly string[] =>
      actionsOn(structure, 'all', part).flatMap(({ source }) =>
        source.kind === 'load' ? [source.id] : [],
      );
    expect(loads(whole)).toEqual(['load-1', 'load-2', 'load-3', 'load-4']);
    expect(loads(left!)).toEqual(['load-1', 'load-3', 'load-4']);
    expect(loads(right!)).toEqual(['load-2', 'load-4']);
  });

  test('gives a support at a hinge to the piece on its left, and lists supports from left to right', () => {
    const points = (part: typeof whole): readonly string[] =>
      unknownActionsOn(structure, part).flatMap(({ source }) =>
        source.kind === 'reaction' ? [source.point] : [],
      );
    expect(points(whole)).toEqual(['A', 'A', 'H', 'C']);
    expect(points(left!)).toEqual(['A', 'A', 'H']);
    expect(points(right!)).toEqual(['C']);
  });

  test('shows no hinge force on the whole', () => {
    const kinds = unknownActionsOn(structure, whole).map(({ source }) => source.kind);
    expect(kinds).not.toContain('hinge');
  });
});
