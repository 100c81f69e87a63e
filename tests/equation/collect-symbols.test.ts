import { describe, expect, test } from 'vitest';
import {
  collectSymbols,
  functionOf,
  integral,
  product,
  symbolText,
  zero,
} from '../../src/equation/index.ts';
import { giv, momentSum, sym, symbol } from './samples.ts';

describe('symbols for the notation list', () => {
  test('come once each, in order of appearance, from both sides of every line', () => {
    const statement = {
      lines: [
        {
          left: sym('M'),
          chain: [{ sign: '=', of: product(sym('R', 'C'), sym('a')) }],
        },
        { chain: [{ sign: '=', of: momentSum }] },
        {
          left: functionOf(symbol('V'), sym('x')),
          chain: [
            {
              sign: '=',
              of: integral(sym('w'), {
                variable: symbol('s'),
                from: zero(),
                to: giv('2 m'),
              }),
            },
          ],
        },
      ],
    } as const;
    expect(collectSymbols([statement]).map(symbolText)).toEqual([
      'M', 'R_C', 'a', 'V', 'x', 'w', 's',
    ]); // prettier-ignore
  });
});
