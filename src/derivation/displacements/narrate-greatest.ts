import {
  exactly,
  name,
  quotient,
  sum,
  withConversion,
  type Expression,
  type Statement,
  type StatementLine,
  type Symbol,
} from '../../equation/index.ts';
import { displayUnit, pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { lengthText, tidy, value } from '../printing.ts';
import { pointAt } from '../case-context.ts';
import type { DisplacementStep } from '../steps.ts';
import { stationSymbol } from '../symbols.ts';
import { bendingFigure } from './bending-units.ts';
import { constantsAtStation } from './constants.ts';
import type { GreatestDeflection } from './greatest-deflections.ts';
import { integratedAt, type Integration } from './integrate-bending.ts';
import { rigidityTimes } from './narrate-integration.ts';
import { deflectionSymbol, slopeSymbol } from './stiffness-symbols.ts';
import { termsAtStation } from './write-terms.ts';

type GreatestStep = Extract<DisplacementStep, { kind: 'greatest-deflection' }>;

/** Where a deflection is greatest, and how great, from the integrated curve. */
export function narrateGreatest(
  context: CaseContext,
  integration: Integration,
  extreme: GreatestDeflection,
): GreatestStep {
  const { place, x } = extreme;
  return {
    kind: 'greatest-deflection',
    way: extreme.value < 0 ? 'down' : 'up',
    place: place.kind,
    at: placeAtStation(context, x),
    ...(place.kind === 'zero-slope'
      ? {
          between: betweenOf(context, integration, place.between),
          root: rootOf(context, integration, x),
        }
      : {}),
    value: valueOf(context, integration, extreme),
  };
}

/** E I θ or E I v at a station, written out in figures. */
function workedAt(
  context: CaseContext,
  integration: Integration,
  { x, times }: { readonly x: number; readonly times: 1 | 2 },
): Expression {
  const terms = [
    ...termsAtStation(context, integration.bending.terms, { x, times }),
    ...constantsAtStation(context, integration, { x, times }),
  ];
  return terms.length === 0 ? exactly(0, pureUnit) : sum(...terms);
}

/** The slopes where the curve begins and ends to fall: inside the stretch that is worked. */
function betweenOf(
  context: CaseContext,
  integration: Integration,
  between: readonly [number, number],
): NonNullable<GreatestStep['between']> {
  const { from, to } = integration.bending;
  const ends = [Math.max(between[0], from), Math.min(between[1], to)] as const;
  return {
    from: placeAtStation(context, ends[0]),
    to: placeAtStation(context, ends[1]),
    statement: {
      lines: ends.map((x): StatementLine => {
        const at = tidy(context.printing, 'length', x);
        return {
          left: rigidityTimes(context, integration, { symbol: slopeSymbol, at }),
          chain: [
            { sign: '=', of: workedAt(context, integration, { x, times: 1 }) },
            {
              sign: '=',
              of: bendingFigure(context.printing, 1, integratedAt(integration, x, 1)),
            },
          ],
        };
      }),
    },
  };
}

function rootOf(context: CaseContext, integration: Integration, x: number): Statement {
  const at = tidy(context.printing, 'length', x);
  return {
    lines: [
      {
        left: name(stationSymbol),
        chain: [{ sign: '=', of: at }],
        boxed: true,
        recheck: 'none',
      },
      {
        left: rigidityTimes(context, integration, { symbol: slopeSymbol, at }),
        chain: [{ sign: '=', of: workedAt(context, integration, { x, times: 1 }) }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: exactly(0, pureUnit) }], recheck: 'closure' },
    ],
  };
}

/** The letter of a greatest deflection: v_min down, v_max up. */
export function greatestSymbol(which: 'max' | 'min'): Symbol {
  const meaning =
    which === 'min' ? 'greatest deflection downward' : 'greatest deflection upward';
  return { ...deflectionSymbol, subscript: which, meaning };
}

function valueOf(
  context: CaseContext,
  integration: Integration,
  { which, value: v, x }: GreatestDeflection,
): Statement {
  const { printing, structure } = context;
  const { EI } = integration.bending;
  const at = tidy(printing, 'length', x);
  const times = bendingFigure(printing, 2, integratedAt(integration, x, 2));
  const worked = withConversion(
    quotient(times, bendingFigure(printing, 1, EI)),
    displayUnit(printing.system, 'deflection'),
  );
  return {
    lines: [
      {
        left: rigidityTimes(context, integration, { symbol: deflectionSymbol, at }),
        chain: [{ sign: '=', of: workedAt(context, integration, { x, times: 2 }) }],
      },
      { chain: [{ sign: '=', of: times }] },
      { left: name(greatestSymbol(which)), chain: [{ sign: '=', of: worked }] },
      {
        chain: [{ sign: '=', of: value(printing, 'deflection', v) }],
        boxed: true,
        margin: `at ${pointAt(structure, x) ?? lengthText(printing, x)}`,
      },
    ],
  };
}
