import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Expression } from '../../src/equation/index.ts';
import { mapFigures, mapParts, partsOf } from '../../src/equation/map-expression.ts';
import { anyExpression, momentSum, plain } from './samples.ts';

describe('walking an expression', () => {
  test('changing nothing gives the same expression', () => {
    fc.assert(
      fc.property(anyExpression, (expression) => {
        const same = (part: Expression): Expression => mapParts(part, same);
        expect(same(expression)).toEqual(expression);
      }),
    );
  });

  test('every figure is met once, in reading order', () => {
    let met = 0;
    const counted = mapFigures(momentSum, () => plain((met += 1)));
    expect(met).toBe(3);
    expect(partsOf(counted)).toHaveLength(2);
  });
});
