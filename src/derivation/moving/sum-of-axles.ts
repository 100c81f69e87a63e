import {
  cancelUnits,
  name,
  product,
  sum,
  type Expression,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import { areaUnder } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import type { GoverningEffect } from './governing-effects.ts';
import {
  areaSymbol,
  axleSymbol,
  laneSymbol,
  ordinateSymbol,
} from './moving-symbols.ts';
import { ordinatesUnder, ordinateUnit } from './ordinates.ts';

/** Σ Q η, the lane load's part added: in symbols, in numbers, and the result. */
export function sumStatement(
  context: CaseContext,
  effect: GoverningEffect,
  symbol: Symbol,
): Statement {
  const { printing } = context;
  const unit = ordinateUnit(effect);
  const under = ordinatesUnder(effect);
  const { value: whole } = effect.critical;
  const lane = laneTerms(context, effect);
  const symbols = under.map(({ index }) =>
    product(name(axleSymbol(index)), name(ordinateSymbol(index))),
  );
  const numbers = under.map(({ size, ordinate }) =>
    product(tidy(printing, 'force', size), value(printing, unit, ordinate)),
  );
  const result = value(printing, unit === 'length' ? 'moment' : 'force', whole);
  return {
    lines: [
      {
        left: name(symbol),
        chain: [{ sign: '=', of: sum(...symbols, ...lane.symbols) }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: sum(...numbers, ...lane.numbers) }] },
      { chain: [{ sign: '=', of: result }], boxed: true },
    ],
  };
}

/** The lane load times the area under it; nothing where there is none. */
function laneTerms(
  { printing }: CaseContext,
  effect: GoverningEffect,
): {
  readonly symbols: readonly Expression[];
  readonly numbers: readonly Expression[];
} {
  const { lane = 0 } = effect.train;
  if (lane === 0) return { symbols: [], numbers: [] };
  const area = effect.critical.place.lane.reduce(
    (total, { from, to }) => total + areaUnder(effect.line, from, to),
    0,
  );
  const isMoment = ordinateUnit(effect) === 'length';
  const figure = value(printing, isMoment ? 'area-under-line' : 'length', area);
  return {
    symbols: [product(name(laneSymbol), name(areaSymbol))],
    numbers: [cancelUnits(product(tidy(printing, 'force-per-length', lane), figure))],
  };
}
