import {
  name,
  number,
  product,
  quotient,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type { SpanState } from '../../statics/index.ts';
import { displayUnit, powerOfUnit, pureUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy } from '../printing.ts';
import { type SlopeSetting } from './slope-setting.ts';

/** `k_AB = k_BA = 4 / L`, times the span's EI over the reference where they differ. */
export function stiffnessLine(
  { context, work }: SlopeSetting,
  { stiffness }: SpanState,
  of: {
    readonly symbols: readonly Symbol[];
    readonly times: number;
    readonly found: number;
  },
): Statement {
  const { printing } = context;
  const length = displayUnit(printing.system, 'length');
  const ratio = work.EI / (stiffness.stretches[0]?.EI ?? work.EI);
  const L = tidy(printing, 'length', stiffness.to - stiffness.from);
  const under =
    ratio === 1 ? L : product(figureIn(printing.figures, pureUnit, ratio), L);
  const [first, ...others] = of.symbols;
  const left = first === undefined ? number(of.times) : name(first);
  return {
    lines: [
      {
        left,
        chain: [
          ...others.map((symbol) => ({ sign: '=' as const, of: name(symbol) })),
          {
            sign: '=',
            of: quotient(number(of.times), under),
          },
        ],
      },
      {
        chain: [
          {
            sign: '=',
            of: figureIn(printing.figures, powerOfUnit(length, -1), of.found),
          },
        ],
      },
    ],
  };
}
