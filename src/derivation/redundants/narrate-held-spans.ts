import {
  name,
  number,
  product,
  quotient,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type { SpanState } from '../../statics/index.ts';
import { displayUnit, powerOfUnit, pureUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { SlopeStep } from '../steps/slope-steps.ts';
import { heldByFormula, isByFormula } from './held-by-formula.ts';
import {
  flexibilities,
  simpleMoments,
  stiffnessByFlexibility,
  turnOfEnd,
} from './held-by-turns.ts';
import { referenceRigidity } from './rigidity.ts';
import { endsOf, spanName, spanSymbols, type SlopeSetting } from './slope-setting.ts';

type HeldSpan = Extract<SlopeStep, { kind: 'held-spans' }>['spans'][number];

/** Which ends of a span turn with their joints. */
export type TurningEnds = 'both' | 0 | 1 | 'none';

/** The ends of a span that turn as unknowns or with what holds them. */
export function turningEnds({ ends: [a, b] }: SpanState): TurningEnds {
  if (a.kind === 'turns') return b.kind === 'turns' ? 'both' : 0;
  return b.kind === 'turns' ? 1 : 'none';
}

/** True where loads or warmth leave moments on held ends. */
export function isLoaded({ stiffness }: SpanState): boolean {
  return stiffness.turns.a !== 0 || stiffness.turns.b !== 0;
}

/** How stiff each span's ends are against turning, and the moments on them held fast. */
export function narrateHeldSpans(setting: SlopeSetting): readonly Step[] {
  const spans = setting.work.spans.flatMap((span): readonly HeldSpan[] => {
    const turning = turningEnds(span);
    if (turning === 'none') return [];
    const isByTurns = !isByFormula(span.stiffness);
    const held = turning === 'both' ? undefined : endsOf(setting, span)[turning].point;
    const statements =
      turning === 'both'
        ? bothHeld(setting, span, isByTurns)
        : oneHeld(setting, span, { end: turning, isByTurns });
    return [
      {
        span: spanName(setting, span),
        ...(held === undefined ? {} : { held }),
        isByTurns,
        stretches: isByTurns ? simpleMoments(setting, span) : [],
        statements,
      },
    ];
  });
  return spans.length === 0 ? [] : [{ kind: 'held-spans', spans }];
}

function bothHeld(
  setting: SlopeSetting,
  span: SpanState,
  isByTurns: boolean,
): readonly Statement[] {
  const symbols = spanSymbols(setting, span);
  const { aa, ab } = span.stiffness;
  if (!isByTurns) {
    return [
      stiffnessLine(setting, span, {
        symbols: [symbols.stiffness(0), symbols.stiffness(1)],
        times: 4,
        found: aa,
      }),
      stiffnessLine(setting, span, { symbols: [symbols.across], times: 2, found: ab }),
      ...(isLoaded(span) ? heldByFormula(setting, span, true) : []),
    ];
  }
  return [
    ...flexibilities(setting, span, ['aa', 'bb', 'ab']),
    ...stiffnessByFlexibility(setting, span),
    ...(isLoaded(span)
      ? [
          ...turnOfEnd(setting, span, 0),
          ...turnOfEnd(setting, span, 1),
          heldFromTurns(setting, span, 0),
          heldFromTurns(setting, span, 1),
        ]
      : []),
  ];
}

function oneHeld(
  setting: SlopeSetting,
  span: SpanState,
  { end, isByTurns }: { readonly end: 0 | 1; readonly isByTurns: boolean },
): readonly Statement[] {
  const symbols = spanSymbols(setting, span);
  const { context } = setting;
  const { printing } = context;
  const { k, carried, moment } = oneHeldValues(span, end);
  const hasKnown = knownMoment(span, end === 0 ? 1 : 0) !== 0;
  const ratio = (of: Expression): Statement => ({
    lines: [{ left: name(symbols.carried(end)), chain: [{ sign: '=', of }] }],
  });
  if (!isByTurns) {
    const fixed = [span.stiffness.fixed.a, span.stiffness.fixed.b] as const;
    const other = end === 0 ? 1 : 0;
    const half = quotient(number(1), number(2));
    const needsRatio = hasKnown || isLoaded(span);
    return [
      stiffnessLine(setting, span, {
        symbols: [symbols.stiffness(end)],
        times: 3,
        found: k,
      }),
      ...(needsRatio ? [ratio(half)] : []),
      ...(isLoaded(span)
        ? [
            ...heldByFormula(setting, span, false),
            {
              lines: [
                {
                  left: name(symbols.held(end)),
                  chain: [
                    {
                      sign: '=' as const,
                      of: sum(name(symbols.held(end, '0')), {
                        sign: -1,
                        of: product(
                          name(symbols.carried(end)),
                          name(symbols.held(other, '0')),
                        ),
                      }),
                    },
                  ],
                  recheck: 'none' as const,
                },
                {
                  chain: [
                    {
                      sign: '=' as const,
                      of: sum(value(printing, 'moment', fixed[end]), {
                        sign: fixed[other] < 0 ? 1 : -1,
                        of: quotient(
                          value(printing, 'moment', Math.abs(fixed[other])),
                          number(2),
                        ),
                      }),
                    },
                  ],
                },
                {
                  chain: [
                    { sign: '=' as const, of: value(printing, 'moment', moment) },
                  ],
                },
              ],
            },
          ]
        : []),
    ];
  }
  const own = end === 0 ? 'aa' : 'bb';
  const length = displayUnit(printing.system, 'length');
  const figure = (si: number): Figure => figureIn(printing.figures, length, si);
  const f = span.stiffness.flexibility;
  return [
    ...flexibilities(setting, span, hasKnown ? [own, 'ab'] : [own]),
    {
      lines: [
        {
          left: name(symbols.stiffness(end)),
          chain: [
            { sign: '=', of: quotient(number(1), name(symbols.flexibility(own))) },
          ],
          recheck: 'none',
        },
        {
          chain: [
            { sign: '=', of: figureIn(printing.figures, powerOfUnit(length, -1), k) },
          ],
          recheck: 'none',
        },
      ],
    },
    ...(hasKnown
      ? [
          {
            lines: [
              {
                left: name(symbols.carried(end)),
                chain: [
                  { sign: '=' as const, of: quotient(figure(f.ab), figure(f[own])) },
                ],
              },
              {
                chain: [
                  {
                    sign: '=' as const,
                    of: figureIn(printing.figures, pureUnit, carried),
                  },
                ],
              },
            ],
          },
        ]
      : []),
    ...(isLoaded(span)
      ? [...turnOfEnd(setting, span, end), heldAloneFromTurn(setting, span, end)]
      : []),
  ];
}

/** The moment known beforehand on an end, 0 on one that turns. */
export function knownMoment({ ends }: SpanState, end: 0 | 1): number {
  const one = ends[end];
  return one.kind === 'known' ? one.moment : 0;
}

/** Stiffness of the one held end while the other turns freely, the share of a moment that arrives there, and the moment held. */
export function oneHeldValues(
  { stiffness }: SpanState,
  end: 0 | 1,
): { readonly k: number; readonly carried: number; readonly moment: number } {
  const { flexibility: f, turns } = stiffness;
  const own = end === 0 ? f.aa : f.bb;
  const turn = end === 0 ? turns.a : turns.b;
  return { k: 1 / own, carried: f.ab / own, moment: -turn / own + 0 };
}

/** `k_AB = k_BA = 4 / L`, times the span's EI over the reference where they differ. */
function stiffnessLine(
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
  const ratio = (stiffness.stretches[0]?.EI ?? work.EI) / work.EI;
  const over =
    ratio === 1
      ? number(of.times)
      : product(number(of.times), figureIn(printing.figures, pureUnit, ratio));
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
            of: quotient(over, tidy(printing, 'length', stiffness.to - stiffness.from)),
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

/** `F_AB = −(k_AB E I φ_AB + c_AB E I φ_BA)`. */
function heldFromTurns(setting: SlopeSetting, span: SpanState, end: 0 | 1): Statement {
  const symbols = spanSymbols(setting, span);
  const { stiffness } = span;
  const { printing } = setting.context;
  const EI = referenceRigidity(setting.context);
  const other = end === 0 ? 1 : 0;
  const turns = [stiffness.turns.a, stiffness.turns.b] as const;
  const k = end === 0 ? stiffness.aa : stiffness.bb;
  const perLength = powerOfUnit(displayUnit(printing.system, 'length'), -1);
  const factor = (si: number): Figure => figureIn(printing.figures, perLength, si);
  const turn = (si: number): Figure => value(printing, 'rigidity', si);
  const found = end === 0 ? stiffness.fixed.a : stiffness.fixed.b;
  return {
    lines: [
      {
        left: name(symbols.held(end)),
        chain: [
          {
            sign: '=',
            of: sum(
              {
                sign: -1,
                of: product(name(symbols.stiffness(end)), EI, name(symbols.turn(end))),
              },
              {
                sign: -1,
                of: product(name(symbols.across), EI, name(symbols.turn(other))),
              },
            ),
          },
        ],
        recheck: 'none',
      },
      {
        chain: [
          {
            sign: '=',
            of: sum(
              { sign: -1, of: product(factor(k), turn(turns[end])) },
              { sign: -1, of: product(factor(stiffness.ab), turn(turns[other])) },
            ),
          },
        ],
      },
      { chain: [{ sign: '=', of: value(printing, 'moment', found) }] },
    ],
  };
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
