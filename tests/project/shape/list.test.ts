import { describe, expect, test } from 'vitest';
import { listOf, oneOrMore } from '../../../src/project/shape/list.ts';
import { numberFrom } from '../../../src/project/shape/number.ts';
import { text } from '../../../src/project/shape/text.ts';
import { readAs } from '../../support/reading.ts';

const number = numberFrom({ from: 0, to: 9 });

describe('a list', () => {
  test('leaves out what does not fit, and tells of each', () => {
    expect(readAs(listOf(number), '[ 1, x, 3, 44 ]')).toEqual({
      value: [1, 3],
      findings: [
        'wrong-shape 5-6 a number from 0 to 9 belongs here, not `x`',
        'number-out-of-range 11-13 a number from 0 to 9 belongs here, not 44',
      ],
    });
  });

  test('is empty where nothing is given, unless it must not be', () => {
    expect(readAs(listOf(number), '~').value).toEqual([]);
    expect(readAs(listOf(number, { atLeast: 1 }), '~').value).toBeUndefined();
    expect(readAs(listOf(number, { atLeast: 1 }), '[]').findings).toEqual([
      'wrong-count 0-2 1 or more items belong in this list, not 0',
    ]);
  });

  test('of a set length is whole or nothing', () => {
    const pair = listOf(number, { atLeast: 2, atMost: 2 });
    expect(readAs(pair, '[ 1, 2 ]').value).toEqual([1, 2]);
    expect(readAs(pair, '[ 1, x ]').value).toBeUndefined();
    expect(readAs(pair, '[ 1, 2, 3 ]').findings).toEqual([
      'wrong-count 0-11 2 items belong in this list, not 3',
    ]);
  });

  test('tells of a number that a comma cut in two, and not of numbers with a space between', () => {
    expect(readAs(listOf(text), '[1,250 lb, 2,500 lb]').findings).toEqual([
      'comma-in-number 1-9 the comma ends the entry: this reads as `1` and `250 lb`',
      'comma-in-number 11-19 the comma ends the entry: this reads as `2` and `500 lb`',
    ]);
    expect(readAs(listOf(text), '[ 1, 250 lb ]').findings).toEqual([]);
  });

  test('may be one item by itself', () => {
    expect(readAs(oneOrMore(number), '7').value).toEqual([7]);
    expect(readAs(oneOrMore(number), '[ 7, 8 ]').value).toEqual([7, 8]);
    expect(readAs(oneOrMore(number), 'x').value).toBeUndefined();
  });
});
