import { describe, expect, test } from 'vitest';
import { elasticModel } from '../../../src/statics/elastic/elastic-model.ts';
import { beam, fixed, pin, roller, spring } from '../../support/beam.ts';

const points = { A: 0, B: 4, C: 6, D: 10 };

describe('elasticModel', () => {
  test('has joints at ends, supports, hinges and steps of stiffness, and at no load or other point', () => {
    const model = elasticModel({
      ...beam({ points, supports: { A: fixed, D: roller() }, hinges: ['B'] }),
      stiffness: [
        { from: 0, to: 7, EI: 2 },
        { from: 7, to: 8, EI: 2 },
        { from: 8, to: 10, EI: 5 },
      ],
    });
    expect(model.joints.map(({ x }) => x)).toEqual([0, 4, 8, 10]);
    expect(model.joints.map(({ hinged }) => hinged)).toEqual([
      false,
      true,
      false,
      false,
    ]);
    expect(model.bars.map(({ EI }) => EI)).toEqual([2, 2, 5]);
    expect(model.reach).toBe(4);
  });

  test('has one EI all along where none is given', () => {
    const model = elasticModel(beam({ points, supports: { A: fixed, D: roller() } }));
    expect(model.bars).toEqual([{ from: 0, to: 10, length: [10, 0], EI: 1 }]);
  });

  test('slides only where inclined restraints meet nothing rigid along the beam', () => {
    const slides = (A: typeof pin): boolean =>
      elasticModel(beam({ points, supports: { A, B: roller(), D: roller(60) } }))
        .slides;
    expect(slides(pin)).toBe(false);
    expect(slides(roller(120))).toBe(true);
    expect(slides(spring(9, 'x'))).toBe(true);
  });

  test('refuses a support of which two rigid restraints hold one movement', () => {
    const twice = [...roller(60).restraints, ...roller(120).restraints];
    const A = { type: 'roller', restraints: twice } as const;
    expect(() => elasticModel(beam({ points, supports: { A, D: pin } }))).toThrow(
      'two rigid restraints hold one movement at x = 0',
    );
  });
});
