import { expect, test } from 'vitest';
import { present } from '../../../src/project/shape/present.ts';

test('what is absent is left out, and what is false, empty or 0 stays', () => {
  const value = present<{ a?: string; b: number; c?: boolean; d?: string }>({
    a: undefined,
    b: 0,
    c: false,
    d: '',
  });
  expect(Object.keys(value)).toEqual(['b', 'c', 'd']);
});
