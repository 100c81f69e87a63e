import { describe, expect, test } from 'vitest';
import {
  dimension,
  dimensions,
  nameDimension,
  parseQuantity,
  sameDimension,
  unitsThatFit,
} from '../../src/units/index.ts';

describe('names of dimensions', () => {
  test('common dimensions have words with an article', () => {
    expect(nameDimension(dimensions.length)).toBe('a length');
    expect(nameDimension(dimensions['force-per-length'])).toBe('a force per length');
    expect(nameDimension(dimensions['rotational-stiffness'])).toBe(
      'a moment per angle',
    );
    expect(nameDimension(dimensions.pure)).toBe('a plain number');
  });

  test('a dimension without a name is spelled in SI units', () => {
    expect(nameDimension(dimension({ force: 2, length: -1 }))).toBe(
      'a quantity in N^2 m^-1',
    );
  });

  test.each(Object.entries(dimensions))(
    'every unit that is said to fit %s does fit it',
    (_, of) => {
      for (const unit of unitsThatFit(of)) {
        const { quantity } = parseQuantity(`1 ${unit}`, of);
        expect(quantity, unit).toBeDefined();
        expect(sameDimension(quantity!.dimension, of), unit).toBe(true);
      }
    },
  );
});
