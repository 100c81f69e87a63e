import { name, sum, type Statement, type Symbol } from '../../equation/index.ts';
import type { SpanState, SpanStiffness } from '../../statics/index.ts';
import { value } from '../printing.ts';
import { type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';
import { heldByLoad, heldByWarmth } from './held-by-load.ts';
import type { HeldByLoad } from './held-letters.ts';

/** True where the moments of a span held fast follow load by load: one stiffness, and warmth over all of it or none. */
export function isByFormula({
  isPrismatic,
  hasFreeCurvature,
  stretches,
}: SpanStiffness): boolean {
  const curvatures = new Set(stretches.map(({ functions }) => functions[1]?.[0] ?? 0));
  return isPrismatic && (!hasFreeCurvature || curvatures.size === 1);
}

/**
 * Moments on the ends of a span of one stiffness, both held fast: each load by its formula, a spread
 * one as a row of small forces; then their sum.
 * — Wilson & Maney, University of Illinois Bulletin 80, 1915; P a b² / L² from any handbook (from memory).
 */
export function heldByFormula(
  setting: SlopeSetting,
  span: SpanState,
  both: boolean,
): readonly Statement[] {
  const symbols = spanSymbols(setting, span);
  const { stiffness } = span;
  const parts = [
    ...stiffness.loads.flatMap((load) => heldByLoad(setting, stiffness, load)),
    ...heldByWarmth(setting, stiffness),
  ];
  const totals = [stiffness.fixed.a, stiffness.fixed.b] as const;
  return ([0, 1] as const).flatMap((end): readonly Statement[] => {
    const total = symbols.held(end, both ? undefined : '0');
    const [only] = parts;
    if (parts.length === 1 && only !== undefined)
      return [partStatement(setting, total, { part: only, end })];
    const each = parts.map((part) =>
      partStatement(setting, symbols.held(end, part.number), { part, end }),
    );
    const figures = parts
      .map(({ values }) => values[end])
      .filter((si) => si !== 0)
      .map((si) => value(setting.context.printing, 'moment', si));
    const found = value(setting.context.printing, 'moment', totals[end]);
    if (figures.length === 0) return each;
    return [
      ...each,
      {
        lines: [
          { left: name(total), chain: [{ sign: '=', of: sum(...figures) }] },
          { chain: [{ sign: '=', of: found }] },
        ],
      },
    ];
  });
}

function partStatement(
  { context }: SlopeSetting,
  symbol: Symbol,
  { part, end }: { readonly part: HeldByLoad; readonly end: 0 | 1 },
): Statement {
  const found = value(context.printing, 'moment', part.values[end]);
  return {
    lines: [
      {
        left: name(symbol),
        chain: [{ sign: '=', of: part.symbolic[end] }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: part.numeric[end] }] },
      { chain: [{ sign: '=', of: found }] },
    ],
  };
}
