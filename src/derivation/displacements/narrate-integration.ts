import {
  functionOf,
  name,
  number,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type StatementLine,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { value } from '../printing.ts';
import type { DisplacementStep } from '../steps.ts';
import { stationSymbol } from '../symbols.ts';
import { bendingFigure } from './bending-units.ts';
import { constantsOfX, constantSymbol } from './constants.ts';
import { type Integration } from './integrate-bending.ts';
import { partsWithin, stiffnessParts } from './stiffness-along.ts';
import {
  curvatureOfCurveSymbol,
  deflectionSymbol,
  rigiditySymbols,
  slopeSymbol,
} from './stiffness-symbols.ts';
import { isPart } from './worked-stretch.ts';
import { termsOfX } from './write-terms.ts';

/** E I times v″, θ or v at a place, as the left side of a line. */
export function rigidityTimes(
  context: CaseContext,
  { bending }: Integration,
  of: { readonly symbol: Symbol; readonly at: Expression },
): Expression {
  const [E, I] = rigiditySymbols(context, bending.from);
  return product(name(E), name(I), functionOf(of.symbol, of.at));
}

/** E I v″ in singularity functions, and integrated once and twice with its constants. */
export function narrateIntegration(
  context: CaseContext,
  integration: Integration,
): DisplacementStep {
  const { bending, origin } = integration;
  const { terms, from, to } = bending;
  const x = name(stationSymbol);
  const line = (symbol: Symbol, all: readonly Term[]): StatementLine => ({
    left: rigidityTimes(context, integration, { symbol, at: x }),
    chain: [
      {
        sign: '=',
        of: all.length === 0 ? value(context.printing, 'moment', 0) : sum(...all),
      },
    ],
    recheck: 'none',
  });
  const inFigures = (times: 0 | 1 | 2): readonly Term[] =>
    termsOfX(context, terms, { times, as: 'figures' });
  return {
    kind: 'integration',
    from: placeAtStation(context, from),
    to: placeAtStation(context, to),
    isPart: isPart(context, bending),
    isStepped: partsWithin(stiffnessParts(context.structure), bending).length > 1,
    hasHinges: integration.unknowns.some(({ kind }) => kind === 'hinge'),
    rates: bending.rates,
    symbolic: {
      lines: [
        line(
          curvatureOfCurveSymbol,
          termsOfX(context, terms, { times: 0, as: 'letters' }),
        ),
      ],
    },
    numeric: {
      lines: [
        line(curvatureOfCurveSymbol, inFigures(0)),
        line(slopeSymbol, [...inFigures(1), ...constantsOfX(context, integration, 1)]),
        line(deflectionSymbol, [
          ...inFigures(2),
          ...constantsOfX(context, integration, 2),
        ]),
      ],
    },
    ...(origin === 0 ? {} : { origin: placeAtStation(context, origin) }),
  };
}

/** How much the slope changes at each hinge of the stretch: `Δθ_H = c_H / (E I)`. */
export function narrateHingeSlopes(
  context: CaseContext,
  { unknowns, values, bending }: Integration,
): readonly DisplacementStep[] {
  const { printing } = context;
  const hinges = unknowns.flatMap((unknown, index) => {
    if (unknown.kind !== 'hinge') return [];
    const constant = values[index] ?? 0;
    const change: Symbol = {
      letter: 'Δθ',
      subscript: unknown.point,
      meaning: `change of slope at the hinge ${unknown.point}, from left to right`,
    };
    const [E, I] = rigiditySymbols(context, bending.from);
    const statement: Statement = {
      lines: [
        {
          left: name(change),
          chain: [
            {
              sign: '=',
              of: quotient(name(constantSymbol(unknown)), product(name(E), name(I))),
            },
          ],
          recheck: 'none',
        },
        {
          chain: [
            {
              sign: '=',
              of:
                constant === 0
                  ? number(0)
                  : quotient(
                      bendingFigure(printing, 1, constant),
                      bendingFigure(printing, 1, bending.EI),
                    ),
            },
            { sign: '=', of: value(printing, 'angle', constant / bending.EI) },
          ],
        },
      ],
    };
    return [{ point: unknown.point, statement }];
  });
  return hinges.length === 0 ? [] : [{ kind: 'hinge-slopes', hinges }];
}
