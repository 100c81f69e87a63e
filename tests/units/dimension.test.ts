import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dimension,
  divideDimensions,
  multiplyDimensions,
  powerOfDimension,
  sameButAngle,
  sameDimension,
} from '../../src/units/index.ts';

const anyDimension = fc.record({
  force: fc.integer({ min: -4, max: 4 }),
  length: fc.integer({ min: -4, max: 4 }),
  temperature: fc.integer({ min: -2, max: 2 }),
  angle: fc.integer({ min: -2, max: 2 }),
});

describe('dimensions', () => {
  test('dividing undoes multiplying', () => {
    fc.assert(
      fc.property(anyDimension, anyDimension, (a, b) => {
        expect(divideDimensions(multiplyDimensions(a, b), b)).toEqual(a);
      }),
    );
  });

  test('a square is a product with itself, and a root undoes it', () => {
    fc.assert(
      fc.property(anyDimension, (a) => {
        const square = powerOfDimension(a, 2);
        expect(square).toEqual(multiplyDimensions(a, a));
        expect(sameDimension(powerOfDimension(square, 0.5), a)).toBe(true);
      }),
    );
  });

  test('a moment per angle is told from a moment, unless the radian is read as a number', () => {
    const moment = dimension({ force: 1, length: 1 });
    const stiffness = dimension({ force: 1, length: 1, angle: -1 });
    expect(sameDimension(moment, stiffness)).toBe(false);
    expect(sameButAngle(moment, stiffness)).toBe(true);
    expect(sameButAngle(moment, dimension({ force: 1 }))).toBe(false);
  });
});
