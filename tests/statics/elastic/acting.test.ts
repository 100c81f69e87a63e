import { describe, expect, test } from 'vitest';
import { actingOn } from '../../../src/statics/elastic/acting.ts';
import { elasticModel } from '../../../src/statics/elastic/elastic-model.ts';
import { beam, down, fixed, right, roller, spread, turn } from '../../support/beam.ts';

const structure = {
  ...beam({
    points: { A: 0, B: 4, C: 10 },
    supports: { A: fixed, C: roller() },
    hinges: ['B'],
    loads: [
      down(3, 4),
      turn(5, 4, { side: 'right' }),
      turn(6, 4, { side: 'left' }),
      spread([0, 8], 2, 10),
      right(7, 1),
    ],
  }),
  curvatures: [
    { id: 'T', case: 'all', from: 3, to: 5, curvature: 0.1 },
    { id: 'U', case: 'other', from: 3, to: 5, curvature: 9 },
  ],
};
const model = elasticModel(structure);
const acting = actingOn(model, structure, structure.loads, 'all');

describe('actingOn', () => {
  test('lays each load upon the bar that carries it, measured from its left end', () => {
    expect(acting.bars).toEqual([
      [
        { kind: 'force', at: 4, force: -3 },
        { kind: 'couple', at: 4, couple: 6 },
        { kind: 'spread', from: 2, to: 4, q1: -0, q2: -2 },
        { kind: 'curvature', from: 3, to: 4, curvature: 0.1 },
      ],
      [
        { kind: 'couple', at: 0, couple: 5 },
        { kind: 'spread', from: 0, to: 6, q1: -2, q2: -8 },
        { kind: 'curvature', from: 0, to: 1, curvature: 0.1 },
      ],
    ]);
  });

  test('adds up what pushes along the beam', () => {
    expect(acting.push).toBe(7);
  });

  test('moves feet and bends only for the case named', () => {
    const none = actingOn(model, structure, [], undefined);
    expect(none.bars).toEqual([[], []]);
    const restraint = {
      kind: 'force',
      direction: [0, 1],
      settlements: [{ case: 'all', value: 2 }],
    } as const;
    const [A, C] = structure.supports;
    const settled = {
      ...structure,
      supports: [A!, { ...C!, restraints: [restraint] }],
    };
    const [hold] = model.joints.at(-1)!.lifting;
    expect(actingOn(model, settled, [], 'all').foot(hold!)).toBe(2);
    expect(actingOn(model, settled, [], 'other').foot(hold!)).toBe(0);
  });
});
