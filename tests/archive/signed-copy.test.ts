import { expect, test } from 'vitest';
import { compareSigned } from '../../src/archive/signed-copy.ts';

const bound = new Uint8Array([37, 80, 68, 70, 45, 1, 2, 3]);

test.each([
  ['adds to the end', [...bound, 9], 'same start', []],
  ['adds nothing', [...bound], 'same start', ['signed-adds-nothing']],
  ['changes a byte', [...bound.with(7, 4), 9], 'not compared', ['signed-not-compared']],
  ['is cut short', [...bound].slice(0, 6), 'not compared', ['signed-not-compared']],
])('a signed copy that %s', (_, signed, comparison, codes) => {
  const found = compareSigned(bound, new Uint8Array(signed), 's.pdf');
  expect(found.entry.comparison).toBe(comparison);
  expect(found.remarks.map(({ code }) => code)).toEqual(codes);
});
