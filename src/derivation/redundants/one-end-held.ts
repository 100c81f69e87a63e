import {
  name,
  number,
  product,
  quotient,
  sum,
  type Figure,
  type Statement,
} from '../../equation/index.ts';
import type { SpanState } from '../../statics/index.ts';
import { displayUnit, powerOfUnit, pureUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { value } from '../printing.ts';
import { heldByFormula } from './held-by-formula.ts';
import { flexibilities, turnOfEnd } from './held-by-turns.ts';
import { referenceRigidity } from './rigidity.ts';
import { type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';
import { isLoaded, knownMoment, oneHeldValues } from './span-ends.ts';
import { stiffnessLine } from './stiffness-line.ts';

/** The stiffness of the one held end of a span while the other turns freely, and the moment that loads leave there. */
export function oneHeld(
  setting: SlopeSetting,
  span: SpanState,
  { end, isByTurns }: { readonly end: 0 | 1; readonly isByTurns: boolean },
): readonly Statement[] {
  const hasKnown = knownMoment(span, end === 0 ? 1 : 0) !== 0;
  return isByTurns
    ? heldOneByTurns(setting, span, { end, hasKnown })
    : heldOneByFormula(setting, span, { end, hasKnown });
}

interface HeldEnd {
  readonly end: 0 | 1;
  /** True where the moment on the other end is known and not 0. */
  readonly hasKnown: boolean;
}

/** `k_AB = 3 / L`; of the moments with both ends held, half of the other arrives here when that is let go. */
function heldOneByFormula(
  setting: SlopeSetting,
  span: SpanState,
  { end, hasKnown }: HeldEnd,
): readonly Statement[] {
  const symbols = spanSymbols(setting, span);
  const { k } = oneHeldValues(span, end);
  const half = quotient(number(1), number(2));
  const carried: Statement = {
    lines: [{ left: name(symbols.carried(end)), chain: [{ sign: '=', of: half }] }],
  };
  return [
    stiffnessLine(setting, span, {
      symbols: [symbols.stiffness(end)],
      times: 3,
      found: k,
    }),
    ...(hasKnown || isLoaded(span) ? [carried] : []),
    ...(isLoaded(span)
      ? [...heldByFormula(setting, span, false), letGo(setting, span, end)]
      : []),
  ];
}

/** `F_AB = F_AB,0 − r_AB F_BA,0`. */
function letGo(setting: SlopeSetting, span: SpanState, end: 0 | 1): Statement {
  const { printing } = setting.context;
  const symbols = spanSymbols(setting, span);
  const other = end === 0 ? 1 : 0;
  const fixed = [span.stiffness.fixed.a, span.stiffness.fixed.b] as const;
  const size = value(printing, 'moment', Math.abs(fixed[other]));
  const carried = product(name(symbols.carried(end)), name(symbols.held(other, '0')));
  return {
    lines: [
      {
        left: name(symbols.held(end)),
        chain: [
          {
            sign: '=',
            of: sum(name(symbols.held(end, '0')), { sign: -1, of: carried }),
          },
        ],
        recheck: 'none',
      },
      {
        chain: [
          {
            sign: '=',
            of: sum(value(printing, 'moment', fixed[end]), {
              sign: fixed[other] < 0 ? 1 : -1,
              of: quotient(size, number(2)),
            }),
          },
        ],
      },
      {
        chain: [
          { sign: '=', of: value(printing, 'moment', oneHeldValues(span, end).moment) },
        ],
      },
    ],
  };
}

/** `k_AB = 1 / f_AA`, and the moment from the turn of the end on simple supports. */
function heldOneByTurns(
  setting: SlopeSetting,
  span: SpanState,
  { end, hasKnown }: HeldEnd,
): readonly Statement[] {
  const symbols = spanSymbols(setting, span);
  const { printing } = setting.context;
  const { k, carried } = oneHeldValues(span, end);
  const own = end === 0 ? 'aa' : 'bb';
  const length = displayUnit(printing.system, 'length');
  const figure = (si: number): Figure => figureIn(printing.figures, length, si);
  const f = span.stiffness.flexibility;
  const stiffness: Statement = {
    lines: [
      {
        left: name(symbols.stiffness(end)),
        chain: [{ sign: '=', of: quotient(number(1), name(symbols.flexibility(own))) }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: quotient(number(1), figure(f[own])) }] },
      {
        chain: [
          { sign: '=', of: figureIn(printing.figures, powerOfUnit(length, -1), k) },
        ],
      },
    ],
  };
  const share: Statement = {
    lines: [
      {
        left: name(symbols.carried(end)),
        chain: [{ sign: '=', of: quotient(figure(f.ab), figure(f[own])) }],
      },
      { chain: [{ sign: '=', of: figureIn(printing.figures, pureUnit, carried) }] },
    ],
  };
  return [
    ...flexibilities(setting, span, hasKnown ? [own, 'ab'] : [own]),
    stiffness,
    ...(hasKnown ? [share] : []),
    ...(isLoaded(span)
      ? [...turnOfEnd(setting, span, end), heldAloneFromTurn(setting, span, end)]
      : []),
  ];
}

/** `F_AB = −k_AB E I φ_AB`, the other end free to turn. */
function heldAloneFromTurn(
  setting: SlopeSetting,
  span: SpanState,
  end: 0 | 1,
): Statement {
  const symbols = spanSymbols(setting, span);
  const { printing } = setting.context;
  const { k, moment } = oneHeldValues(span, end);
  const turn = end === 0 ? span.stiffness.turns.a : span.stiffness.turns.b;
  const perLength = powerOfUnit(displayUnit(printing.system, 'length'), -1);
  return {
    lines: [
      {
        left: name(symbols.held(end)),
        chain: [
          {
            sign: '=',
            of: sum({
              sign: -1,
              of: product(
                name(symbols.stiffness(end)),
                referenceRigidity(setting.context),
                name(symbols.turn(end)),
              ),
            }),
          },
        ],
        recheck: 'none',
      },
      {
        chain: [
          {
            sign: '=',
            of: sum({
              sign: -1,
              of: product(
                figureIn(printing.figures, perLength, k),
                value(printing, 'rigidity', turn),
              ),
            }),
          },
        ],
      },
      { chain: [{ sign: '=', of: value(printing, 'moment', moment) }] },
    ],
  };
}
