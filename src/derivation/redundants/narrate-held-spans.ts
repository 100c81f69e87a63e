import {
  name,
  product,
  sum,
  type Figure,
  type Statement,
} from '../../equation/index.ts';
import type { SpanState } from '../../statics/index.ts';
import { displayUnit, powerOfUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { SlopeStep } from '../steps/slope-steps.ts';
import { heldByFormula, isByFormula } from './held-by-formula.ts';
import { flexibilities, simpleMoments, turnOfEnd } from './held-by-turns.ts';
import { referenceRigidity } from './rigidity.ts';
import { endsOf, spanName, type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';
import { oneHeld } from './one-end-held.ts';
import { isLoaded, turningEnds } from './span-ends.ts';
import { stiffnessLine } from './stiffness-line.ts';
import { stiffnessByFlexibility } from './stiffness-by-flexibility.ts';

type HeldSpan = Extract<SlopeStep, { kind: 'held-spans' }>['spans'][number];

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
