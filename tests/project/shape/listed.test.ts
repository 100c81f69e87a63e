import { expect, test } from 'vitest';
import { listed } from '../../../src/project/shape/listed.ts';

test('a hint lists a dozen names and says where there are more', () => {
  expect(listed(['A', 'B'])).toBe('A, B');
  expect(listed(new Set(Array.from({ length: 14 }, (_, at) => `P${at}`)))).toBe(
    'P0, P1, P2, P3, P4, P5, P6, P7, P8, P9, P10, P11 and others',
  );
});
