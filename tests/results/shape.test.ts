import { describe, expect, test } from 'vitest';
import { misfitsOf, type Shape } from '../../src/results/shape.ts';

const shape: Shape = {
  kind: 'object',
  required: {
    name: { kind: 'text' },
    sizes: { kind: 'list', of: { kind: 'number' } },
    byMark: { kind: 'record', of: { kind: 'boolean' } },
  },
  optional: { count: { kind: 'number', whole: true } },
};

describe('misfitsOf', () => {
  test('finds none where a value fits', () => {
    expect(
      misfitsOf({ name: 'a', sizes: [1, 2.5], byMark: { 'D + L': true } }, shape),
    ).toEqual([]);
  });

  test('finds every misfit, top to bottom, with the keys that lead there', () => {
    const value = { sizes: [1, null], byMark: { 'D + L': 0, D: true }, count: 1.5 };
    expect(misfitsOf(value, shape)).toEqual([
      { path: 'name', expected: 'a text' },
      { path: 'sizes[1]', expected: 'a number' },
      { path: 'byMark["D + L"]', expected: 'true or false' },
      { path: 'count', expected: 'a whole number' },
    ]);
  });

  test('tells lists, objects and null apart', () => {
    expect(misfitsOf([], shape)).toEqual([{ path: '', expected: 'an object' }]);
    expect(misfitsOf(null, shape)).toEqual([{ path: '', expected: 'an object' }]);
    expect(misfitsOf({}, { kind: 'list', of: shape })).toEqual([
      { path: '', expected: 'a list' },
    ]);
  });
});
