import {
  figure,
  sum,
  zero,
  type Figure,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import { displayUnit, quantity as quantityOf } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import type { RangeStep } from '../steps/range-steps.ts';
import { columnDecimals } from './option-table.ts';
import { partsOf, type TakenApart, type TakenPart } from './option-values.ts';
import { displayOf, type Quantity } from './quantities.ts';

/** The sums of one group: for every quantity a line for its greatest and one for its least. */
export function rangeSums(
  context: MemberContext,
  apart: TakenApart,
  quantities: readonly Quantity[],
): RangeStep {
  return {
    kind: 'range-sums',
    of: quantities[0]?.group ?? 'moments',
    statement: {
      lines: quantities.flatMap((quantity) =>
        (['max', 'min'] as const).map((sense) =>
          sumLine(context, apart, quantity, sense),
        ),
      ),
    },
  };
}

/** `M_max(6 m) = 4.20 kN·m + 12.60 kN·m = 16.80 kN·m`, with the numbers of what is loaded beside it. */
function sumLine(
  context: MemberContext,
  apart: TakenApart,
  quantity: Quantity,
  sense: 'max' | 'min',
): StatementLine {
  const parts = partsOf(apart, quantity, sense);
  const decimals = columnDecimals(context, apart, quantity);
  const unit = displayUnit(context.printing.system, displayOf(quantity));
  const size = Math.max(Math.abs(quantity.ends.max), Math.abs(quantity.ends.min));
  const print = (si: number): Figure =>
    Math.abs(si) <= 1e-12 * size
      ? zero(unit)
      : figure(quantityOf(si / unit.inSi, unit), unit, {
          kind: 'decimals',
          count: decimals,
        });
  const terms = parts.flatMap(({ si }): readonly Term[] =>
    Math.abs(si) <= 1e-12 * size
      ? []
      : [{ sign: si < 0 ? -1 : 1, of: print(Math.abs(si)) }],
  );
  const total = { sign: '=' as const, of: print(quantity.ends[sense]) };
  return {
    left: quantity.left(sense),
    chain: terms.length < 2 ? [total] : [{ sign: '=', of: sum(...terms) }, total],
    margin: loadedNumbers(parts),
  };
}

/** The numbers of what stands, as far as the sum depends on it: `1, 3`. */
function loadedNumbers(parts: readonly TakenPart[]): string {
  const taken = parts.flatMap(({ number, matters }) =>
    number === undefined || !matters ? [] : [number],
  );
  return taken.length === 0 ? 'none' : taken.join(', ');
}
