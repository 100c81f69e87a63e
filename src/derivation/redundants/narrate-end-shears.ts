import {
  minus,
  name,
  plus,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { tidy, value } from '../printing.ts';
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
  const { context, beam } = setting;
  const { printing } = context;
  const { end, index, moments } = at;
  const { couple } = coupleAtRight(setting, index);
  const [a, b] = [moments[index] ?? 0, (moments[index + 1] ?? 0) + couple];
  const simple = end === 0 ? state.stiffness.simple.a : state.stiffness.simple.b;
  const sign = end === 0 ? 1 : -1;
  const moment = (si: number): Expression => value(printing, 'moment', Math.abs(si));
  const numbers: readonly Term[] = [
    ...(b === 0 ? [] : [{ sign: b < 0 ? -1 : 1, of: moment(b) } as const]),
    ...(a === 0 ? [] : [{ sign: a < 0 ? 1 : -1, of: moment(a) } as const]),
  ];
  const names = sum(
    name(supportMoment(setting, index + 1)),
    ...(couple === 0 ? [] : [name(jointLoadSymbol(points[1], 'couple'))]),
    minus(name(supportMoment(setting, index))),
  );
  const force = value(printing, 'force', state.shears[end]);
  const left = name(symbols.force(end));
  const boxed = { chain: [{ sign: '=' as const, of: force }], boxed: true };
  if (numbers.length === 0 && simple === 0) return { lines: [{ left, ...boxed }] };
  const terms = (pair: Expression, own: Expression, ownSign: 1 | -1): Expression =>
    sum(
      ...(simple === 0 ? [] : [{ sign: ownSign, of: own }]),
      ...(beam.spans.length === 0 ? [] : [sign === 1 ? plus(pair) : minus(pair)]),
    );
  const size = value(printing, 'force', Math.abs(simple));
  const ownSign = simple < 0 ? -1 : 1;
  return {
    lines: [
      {
        left,
        chain: [
          {
            sign: '=',
            of: terms(
              quotient(names, name(symbols.length)),
              name(symbols.simpleForce(end)),
              1,
            ),
          },
        ],
        recheck: 'none',
      },
      ...(numbers.length === 0
        ? []
        : [
            {
              chain: [
                {
                  sign: '=' as const,
                  of: terms(
                    quotient(sum(...numbers), tidy(printing, 'length', span.length)),
                    size,
                    ownSign,
                  ),
                },
              ],
            },
          ]),
      boxed,
    ],
  };
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
