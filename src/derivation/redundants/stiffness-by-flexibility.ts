import {
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Figure,
  type Statement,
} from '../../equation/index.ts';
import type { SpanState } from '../../statics/index.ts';
import { displayUnit, powerOfUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';

/** `k_AB = f_BB / (f_AA f_BB − f_AB²)` and its like, from the flexibilities. */
export function stiffnessByFlexibility(
  setting: SlopeSetting,
  span: SpanState,
): readonly Statement[] {
  const { context } = setting;
  const symbols = spanSymbols(setting, span);
  const { flexibility: f, aa, bb, ab } = span.stiffness;
  const length = displayUnit(context.printing.system, 'length');
  const figure = (si: number): Figure => figureIn(context.printing.figures, length, si);
  const over = (read: (which: 'aa' | 'bb' | 'ab') => Expression): Expression =>
    sum(product(read('aa'), read('bb')), {
      sign: -1,
      of: product(read('ab'), read('ab')),
    });
  const named = (which: 'aa' | 'bb' | 'ab'): Expression =>
    name(symbols.flexibility(which));
  const numbers = (which: 'aa' | 'bb' | 'ab'): Expression => figure(f[which]);
  const perLength = (si: number): Figure =>
    figureIn(context.printing.figures, powerOfUnit(length, -1), si);
  return (
    [
      ['bb', symbols.stiffness(0), aa],
      ['aa', symbols.stiffness(1), bb],
      ['ab', symbols.across, ab],
    ] as const
  ).map(([which, symbol, si]): Statement => ({
    lines: [
      {
        left: name(symbol),
        chain: [{ sign: '=', of: quotient(named(which), over(named)) }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: quotient(numbers(which), over(numbers)) }] },
      { chain: [{ sign: '=', of: perLength(si) }] },
    ],
  }));
}
