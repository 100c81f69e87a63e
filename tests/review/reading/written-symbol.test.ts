import { expect, test } from 'vitest';
import { writtenSymbol } from '../../../src/review/reading/written-symbol.ts';

test.each([
  ['RA', 'R', 'A'],
  ['R_A', 'R', 'A'],
  ['V1', 'V', '1'],
  ['P', 'P', undefined],
  ['__proto__', '__proto__', undefined],
])('%s is set as its letter with the rest below', (text, letter, subscript) => {
  expect(writtenSymbol(text)).toEqual({
    letter,
    ...(subscript === undefined ? {} : { subscript }),
    meaning: text,
  });
});
