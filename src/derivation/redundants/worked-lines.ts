import type { Expression, Figure, Statement } from '../../equation/index.ts';

/** `left = in symbols`, then with numbers, then the value. */
export function workedLines(
  left: Expression,
  symbols: Expression,
  { numbers, found }: { readonly numbers: Expression; readonly found: Figure },
): Statement {
  return {
    lines: [
      { left, chain: [{ sign: '=', of: symbols }], recheck: 'none' },
      { chain: [{ sign: '=', of: numbers }] },
      { chain: [{ sign: '=', of: found }] },
    ],
  };
}
