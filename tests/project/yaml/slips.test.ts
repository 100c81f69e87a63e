import { describe, expect, test } from 'vitest';
import {
  commaSlipHint,
  hashHint,
  hashSlipHint,
} from '../../../src/project/yaml/slips.ts';

describe('a comma inside a number', () => {
  test.each([
    ['1', '250 lb', 'write 1250 lb, or "1,250 lb"'],
    ['-12', '500', 'write -12500, or "-12,500"'],
    ['1', '250.5 plf', 'write 1250.5 plf, or "1,250.5 plf"'],
  ])('is seen in %s and %s', (head, tail, hint) => {
    expect(commaSlipHint(head, tail)).toBe(hint);
  });

  test.each([
    ['1', '25 lb'],
    ['1', '2500 lb'],
    ['1.5', '250 lb'],
    ['1 ft', '250 lb'],
    ['A', '250'],
    ['1234', '567'],
  ])('is not seen in %s and %s', (head, tail) => {
    expect(commaSlipHint(head, tail)).toBeUndefined();
  });
});

describe('a pound sign that begins a comment', () => {
  test('is seen on the line of the fault, and on the line where the brace opened', () => {
    expect(hashSlipHint('{ point: 500 #, at: B }\n', 2)).toBe(hashHint('500'));
    expect(hashSlipHint('a: 1\n- { point: 1,250 #, at: B }\n', 32)).toBe(
      hashHint('1,250'),
    );
    expect(hashHint('1,250')).toBe(
      '` #` starts a comment: write 1250 lb, or "1,250 #"',
    );
  });

  test('is not seen in a comment after words', () => {
    expect(hashSlipHint('a: [ b   # as built\n', 3)).toBeUndefined();
  });
});
