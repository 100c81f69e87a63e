import {
  minus,
  name,
  plus,
  quotient,
  sum,
  type Statement,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import { tidy, value, type Printing } from '../printing.ts';
import type { ContinuousStep } from '../steps/three-moment-steps.ts';
import {
  coupleAtRight,
  spansOf,
  supportMoment,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { spanName } from './slope-setting.ts';

/** The upward forces on the ends of each span from the bending moments at its supports; at built-in ends the moment on the end too. */
export function narrateEndShears(
  setting: ContinuousSetting,
  moments: readonly number[],
): Extract<ContinuousStep, { kind: 'end-shears' }> {
  return {
    kind: 'end-shears',
    spans: spansOf(setting).map((one, index) => ({
      span: spanName(setting, one.state),
      statements: ([0, 1] as const).flatMap((end) => [
        shearAt(setting, one, { end, index, moments }),
        ...endMomentAt(setting, one, { end, support: index + end }),
      ]),
    })),
  };
}

/** `S_AB = S_AB,0 + (M_B − M_A) / L_AB`, with the other sign at the right end. */
function shearAt(
  setting: ContinuousSetting,
  { state, span, symbols, points }: OneSpan,
  at: {
    readonly end: End;
    readonly index: number;
    readonly moments: readonly number[];
  },
): Statement {
  const { printing } = setting.context;
  const { end, index, moments } = at;
  const { couple } = coupleAtRight(setting, index);
  const pair = [(moments[index + 1] ?? 0) + couple, 0 - (moments[index] ?? 0)];
  const { a, b } = state.stiffness.simple;
  const simple = end === 0 ? a : b;
  const left = name(symbols.force(end));
  const found = value(printing, 'force', state.shears[end]);
  const boxed: StatementLine = { chain: [{ sign: '=', of: found }], boxed: true };
  const figures = pair
    .filter((si) => si !== 0)
    .map((si) => termOf(printing, 'moment', si));
  if (figures.length === 0 && simple === 0) return { lines: [{ left, ...boxed }] };
  const sign = end === 0 ? 1 : -1;
  const difference = sum(
    name(supportMoment(setting, index + 1)),
    ...(couple === 0 ? [] : [name(jointLoadSymbol(points[1], 'couple'))]),
    minus(name(supportMoment(setting, index))),
  );
  const own = simple === 0 ? [] : [plus(name(symbols.simpleForce(end)))];
  const ownFigure = simple === 0 ? [] : [termOf(printing, 'force', simple)];
  const symbolic: StatementLine = {
    left,
    chain: [
      {
        sign: '=',
        of: sum(...own, { sign, of: quotient(difference, name(symbols.length)) }),
      },
    ],
    recheck: 'none',
  };
  if (figures.length === 0) return { lines: [symbolic, boxed] };
  const over = quotient(sum(...figures), tidy(printing, 'length', span.length));
  const numeric: StatementLine = {
    chain: [{ sign: '=', of: sum(...ownFigure, { sign, of: over }) }],
  };
  return { lines: [symbolic, numeric, boxed] };
}

/** A value as a term with its sign. */
function termOf(printing: Printing, what: 'force' | 'moment', si: number): Term {
  return { sign: si < 0 ? -1 : 1, of: value(printing, what, Math.abs(si)) };
}

/** At a built-in end the moment that acts on the span: counterclockwise it is the bending moment at the right end, less than nothing at the left. */
function endMomentAt(
  setting: ContinuousSetting,
  { state, symbols }: OneSpan,
  { end, support }: { readonly end: End; readonly support: number },
): readonly Statement[] {
  const isFixed = (setting.work.joints[support]?.restraints ?? []).some(
    ({ kind }) => kind === 'moment',
  );
  if (!isFixed) return [];
  const bending = name(supportMoment(setting, support));
  return [
    {
      lines: [
        {
          left: name(symbols.moment(end)),
          chain: [
            { sign: '=', of: end === 0 ? sum(minus(bending)) : bending },
            {
              sign: '=',
              of: value(setting.context.printing, 'moment', state.moments[end]),
            },
          ],
          recheck: 'none',
        },
      ],
    },
  ];
}
