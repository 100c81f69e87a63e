import {
  exactly,
  minus,
  product,
  sum,
  type Expression,
  type StatementLine,
} from '../../equation/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy } from '../printing.ts';
import type { DisplacementStep } from '../steps.ts';
import { bendingFigure } from './bending-units.ts';
import { sideOf, timesOf } from './condition-side.ts';
import { constantsAtStation } from './constants.ts';
import { tidyIn } from './exact-figure.ts';
import {
  constantsAt,
  type ConditionRow,
  type Integration,
} from './integrate-bending.ts';
import { rigidityTimes } from './narrate-integration.ts';
import { deflectionSymbol, slopeSymbol } from './stiffness-symbols.ts';
import { termsAtStation } from './write-terms.ts';

/** Conditions over and above the constants: an indeterminate member's redundants must have met them. */
export function narrateOtherConditions(
  context: CaseContext,
  integration: Integration,
): readonly DisplacementStep[] {
  const conditions = integration.others.map((row) => {
    const { what, point, x } = row.condition;
    const times = timesOf(row);
    const at = tidy(context.printing, 'length', x);
    const symbol = what === 'slope' ? slopeSymbol : deflectionSymbol;
    const terms = [
      ...termsAtStation(context, integration.bending.terms, { x, times }),
      ...constantsAtStation(context, integration, { x, times }),
    ];
    const slides =
      constantsAt(integration, x, times).length > 0 && row.condition.slide !== 0;
    const lines: readonly StatementLine[] = [
      {
        left: rigidityTimes(context, integration, { symbol, at }),
        chain: [
          { sign: '=', of: terms.length === 0 ? exactly(0, pureUnit) : sum(...terms) },
        ],
        recheck: 'none',
      },
      {
        chain: [{ sign: '=', of: closingSide(context, integration, row, slides) }],
        recheck: 'closure',
      },
    ];
    return { what, point, statement: { lines } };
  });
  return conditions.length === 0 ? [] : [{ kind: 'other-conditions', conditions }];
}

/** What an extra condition must come to: the support's movement, less what a slide along an inclined one takes. */
function closingSide(
  context: CaseContext,
  integration: Integration,
  row: ConditionRow,
  slides: boolean,
): Expression {
  const side = sideOf(context, integration, row);
  const index = integration.unknowns.findIndex(({ kind }) => kind === 'slide');
  const value = integration.values[index] ?? 0;
  if (!slides || value === 0) return side;
  const taken = product(
    tidyIn(context.printing, pureUnit, row.condition.slide),
    bendingFigure(context.printing, 2, value),
  );
  return sum(side, minus(taken));
}
