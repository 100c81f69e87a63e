import {
  minus,
  name,
  plus,
  product,
  quotient,
  sum,
  type Figure,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { MomentDistribution } from '../../statics/index.ts';
import { displayUnit, powerOfUnit, pureUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy, value } from '../printing.ts';
import type { SpanFact } from '../steps/slope-steps.ts';
import {
  coupleAtRight,
  sinkSymbol,
  spansOf,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { startingMoments } from './distribution-table.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { referenceRigidity, rigidityFigure } from './rigidity.ts';
import { spanName } from './slope-setting.ts';
import { knownMoment, oneHeldValues, turningEnds } from './span-ends.ts';
import { workedLines } from './worked-lines.ts';

/** Where a support sinks, or an end has a moment that is known and not 0: what this adds to the moments held. */
export function narrateStarting(
  setting: ContinuousSetting,
  work: MomentDistribution,
): readonly SpanFact[] {
  const starts = startingMoments(work);
  return spansOf(setting).flatMap((one, index) => {
    const statements = ([0, 1] as const).flatMap((end) => {
      const start = starts[index];
      const found = (end === 0 ? start?.left : start?.right) ?? 0;
      const statement = startingAt(setting, one, {
        end,
        found,
        couple: end === 0 ? 0 : coupleAtRight(setting, index).couple,
      });
      return statement === undefined ? [] : [statement];
    });
    const chord = chordOf(setting, one);
    return statements.length === 0
      ? []
      : [{ span: spanName(setting, one.state), statements: [...chord, ...statements] }];
  });
}

/** The moment on an end that the distribution starts from. */
function startSymbol({ symbols, points }: OneSpan, end: End): Symbol {
  return {
    letter: 'M',
    subscript: `${symbols.moment(end).subscript ?? ''},0`,
    meaning: `moment on end ${points[end]} of the span ${points[0]} to ${points[1]} that the distribution starts from`,
  };
}

/** `E I ψ_AB = E I (δ_A − δ_B) / L_AB`, counterclockwise positive; nothing where the chord stays. */
function chordOf(
  { context, beam }: ContinuousSetting,
  { state, span, symbols }: OneSpan,
): readonly Statement[] {
  if (state.chord.constant === 0) return [];
  const { printing } = context;
  const EI = referenceRigidity(context);
  const length = (si: number): Figure => tidy(printing, 'length', si);
  const { left, right } = span;
  return [
    {
      lines: [
        {
          left: product(EI, name(symbols.chord)),
          chain: [
            {
              sign: '=',
              of: quotient(
                product(
                  EI,
                  sum(
                    name(sinkSymbol(left.point)),
                    minus(name(sinkSymbol(right.point))),
                  ),
                ),
                name(symbols.length),
              ),
            },
          ],
          recheck: 'none',
        },
        {
          chain: [
            {
              sign: '=',
              of: quotient(
                product(
                  rigidityFigure(context, beam.EI),
                  sum(length(left.sinks), {
                    sign: right.sinks < 0 ? 1 : -1,
                    of: length(Math.abs(right.sinks)),
                  }),
                ),
                length(span.length),
              ),
            },
          ],
        },
        {
          chain: [{ sign: '=', of: value(printing, 'rigidity', state.chord.constant) }],
        },
      ],
    },
  ];
}

/** A term of a starting moment, in symbols and in numbers. */
interface Part {
  readonly symbols: Term;
  readonly numbers: Term;
}

/** An end of a span with what its support and the other end bring to it. */
interface Start {
  readonly end: End;
  /** The moment that the distribution starts from there. */
  readonly found: number;
  /** A couple at the support, where it counts on this end. */
  readonly couple: number;
}

/** `F_AB − (k_AB + c_AB) E I ψ_AB`, or with the other end free `F_AB + r_AB M_BA − k_AB E I ψ_AB`; nothing where F_AB is all. */
function startingAt(
  setting: ContinuousSetting,
  one: OneSpan,
  { end, found, couple }: Start,
): Statement | undefined {
  const { state, symbols, points } = one;
  const { printing } = setting.context;
  if (state.ends[end].kind === 'known') return undefined;
  const moment = (si: number): Term => ({
    sign: si < 0 ? -1 : 1,
    of: value(printing, 'moment', Math.abs(si)),
  });
  const added = [
    ...knownPart(setting, one, end),
    ...chordPart(setting, one, end),
    ...(couple === 0
      ? []
      : [
          {
            symbols: minus(name(jointLoadSymbol(points[1], 'couple'))),
            numbers: moment(0 - couple),
          },
        ]),
  ];
  if (added.length === 0) return undefined;
  const { stiffness } = state;
  const both = end === 0 ? stiffness.fixed.a : stiffness.fixed.b;
  const held = turningEnds(state) === 'both' ? both : oneHeldValues(state, end).moment;
  const parts: readonly Part[] =
    held === 0
      ? added
      : [{ symbols: plus(name(symbols.held(end))), numbers: moment(held) }, ...added];
  return workedLines(
    name(startSymbol(one, end)),
    sum(...parts.map((part) => part.symbols)),
    {
      numbers: sum(...parts.map((part) => part.numbers)),
      found: value(printing, 'moment', found),
    },
  );
}

/** What a known moment at the other, free end brings: `r_AB M_BA`. */
function knownPart(
  { context }: ContinuousSetting,
  { state, symbols }: OneSpan,
  end: End,
): readonly Part[] {
  const other = end === 0 ? 1 : 0;
  const known = turningEnds(state) === 'both' ? 0 : knownMoment(state, other);
  if (known === 0) return [];
  const { printing } = context;
  return [
    {
      symbols: plus(product(name(symbols.carried(end)), name(symbols.moment(other)))),
      numbers: {
        sign: known < 0 ? -1 : 1,
        of: product(
          figureIn(printing.figures, pureUnit, oneHeldValues(state, end).carried),
          value(printing, 'moment', Math.abs(known)),
        ),
      },
    },
  ];
}

/** What the turn of the chord brings: `−(k_AB + c_AB) E I ψ_AB`, or `−k_AB E I ψ_AB` with the other end free. */
function chordPart(
  { context }: ContinuousSetting,
  { state, symbols }: OneSpan,
  end: End,
): readonly Part[] {
  const chord = state.chord.constant;
  if (chord === 0) return [];
  const { printing } = context;
  const { stiffness } = state;
  const isAlone = turningEnds(state) !== 'both';
  const own = end === 0 ? stiffness.aa : stiffness.bb;
  const k = isAlone ? oneHeldValues(state, end).k : own;
  const perLength = powerOfUnit(displayUnit(printing.system, 'length'), -1);
  const factor = (si: number): Figure => figureIn(printing.figures, perLength, si);
  const EI = referenceRigidity(context);
  const across = isAlone ? [] : [name(symbols.across)];
  return [
    {
      symbols: minus(
        product(sum(name(symbols.stiffness(end)), ...across), EI, name(symbols.chord)),
      ),
      numbers: {
        sign: chord < 0 ? 1 : -1,
        of: product(
          sum(factor(k), ...(isAlone ? [] : [factor(stiffness.ab)])),
          value(printing, 'rigidity', Math.abs(chord)),
        ),
      },
    },
  ];
}
