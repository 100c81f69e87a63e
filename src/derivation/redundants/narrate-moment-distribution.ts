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
import {
  momentDistribution,
  slopeDeflection,
  type MomentDistribution,
} from '../../statics/index.ts';
import { displayUnit, powerOfUnit, pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { narrateAlong } from '../narrators/narrate-along.ts';
import { reactionsFound } from '../narrators/reactions-found.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { ContinuousStep } from '../steps/three-moment-steps.ts';
import {
  coupleAtRight,
  sinkSymbol,
  spansOf,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { distributionTable, startingMoments } from './distribution-table.ts';
import { forceFound } from './narrate-ends-found.ts';
import { narrateHeldSpans } from './narrate-held-spans.ts';
import {
  jointLoadSymbol,
  narrateJointLoads,
  narrateSimpleSpans,
  prepareLoads,
} from './narrate-joint-loads.ts';
import { narrateJointReactions } from './narrate-joint-reactions.ts';
import { narrateRigidity, referenceRigidity, rigidityFigure } from './rigidity.ts';
import { spanName } from './slope-setting.ts';
import { knownMoment, oneHeldValues, turningEnds } from './span-ends.ts';

/**
 * Moment distribution for one case: stiffness of the ends, moments on them held fast, distribution factors,
 * the table down to its stopping rule, how far it is from the exact moments; and with these every shear and reaction.
 */
export function narrateMomentDistribution(context: CaseContext): readonly Step[] {
  const work = momentDistribution(context.structure, context.mark);
  const slope = slopeDeflection(context.structure, context.mark);
  const { setting: named, steps: loads } = prepareLoads({ context, work: slope });
  const setting: ContinuousSetting = { ...named, beam: work.beam, terms: work.terms };
  const starting = narrateStarting(setting, work);
  return [
    openingStep(setting, work),
    narrateRigidity(context),
    ...loads,
    ...narrateJointLoads(setting),
    ...narrateHeldSpans(setting),
    ...(starting.length === 0
      ? []
      : [{ kind: 'starting-moments', spans: starting } as const]),
    { kind: 'distribution-factors', joints: factorsOf(setting, work) },
    distributionTable(setting, work),
    ...narrateSimpleSpans(setting),
    {
      kind: 'end-shears',
      spans: spansOf(setting).map(({ state }) => ({
        span: spanName(setting, state),
        statements: ([0, 1] as const).map((end) => forceFound(setting, state, end)),
      })),
    },
    ...narrateJointReactions(setting),
    ...narrateAlong(context),
    reactionsFound(context),
  ];
}

function openingStep(
  setting: ContinuousSetting,
  { joints }: MomentDistribution,
): Extract<ContinuousStep, { kind: 'distribution' }> {
  const points = (
    kind: MomentDistribution['joints'][number]['kind'],
  ): readonly string[] =>
    joints.flatMap((joint, index) =>
      joint.kind === kind ? [setting.beam.supports[index]?.point ?? ''] : [],
    );
  return {
    kind: 'distribution',
    spans: spansOf(setting).map(({ state }) => spanName(setting, state)),
    turning: points('turns'),
    fixed: points('fixed'),
    released: points('released'),
  };
}

/** The share of a joint's unbalanced moment that an end takes. */
function shareSymbol({ symbols, points }: OneSpan, end: End): Symbol {
  return {
    letter: 'μ',
    subscript: symbols.moment(end).subscript ?? '',
    meaning: `share of an unbalanced moment at ${points[end]} that the span ${points[0]} to ${points[1]} takes`,
  };
}

/** `μ_BA = k_BA / (k_BA + k_BC)`, at every joint that turns. */
function factorsOf(
  setting: ContinuousSetting,
  { joints, stiffness }: MomentDistribution,
): Extract<ContinuousStep, { kind: 'distribution-factors' }>['joints'] {
  const { printing } = setting.context;
  const spans = spansOf(setting);
  const perLength = powerOfUnit(displayUnit(printing.system, 'length'), -1);
  return joints.flatMap((joint, index) => {
    const [before, after] = [spans[index - 1], spans[index]];
    if (joint.kind !== 'turns' || before === undefined || after === undefined)
      return [];
    const ends = [
      { one: before, end: 1, k: stiffness[index - 1]?.right ?? 0, share: joint.left },
      { one: after, end: 0, k: stiffness[index]?.left ?? 0, share: joint.right },
    ] as const;
    const figure = (k: number): Figure => figureIn(printing.figures, perLength, k);
    return [
      {
        point: setting.beam.supports[index]?.point ?? '',
        statements: ends.map(({ one, end, k, share }): Statement => ({
          lines: [
            {
              left: name(shareSymbol(one, end)),
              chain: [
                {
                  sign: '=',
                  of: quotient(
                    name(one.symbols.stiffness(end)),
                    sum(...ends.map((e) => name(e.one.symbols.stiffness(e.end)))),
                  ),
                },
              ],
              recheck: 'none',
            },
            {
              chain: [
                {
                  sign: '=',
                  of: quotient(figure(k), sum(...ends.map((e) => figure(e.k)))),
                },
              ],
            },
            { chain: [{ sign: '=', of: figureIn(printing.figures, pureUnit, share) }] },
          ],
        })),
      },
    ];
  });
}

/** Where a support sinks, or an end has a moment that is known and not 0: what this adds to the moments held. */
function narrateStarting(
  setting: ContinuousSetting,
  work: MomentDistribution,
): readonly { readonly span: string; readonly statements: readonly Statement[] }[] {
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

/** `F_AB − (k_AB + c_AB) E I ψ_AB`, or with the other end free `F_AB + r_AB M_BA − k_AB E I ψ_AB`. */
function startingAt(
  setting: ContinuousSetting,
  one: OneSpan,
  at: { readonly end: End; readonly found: number; readonly couple: number },
): Statement | undefined {
  const { end, found, couple } = at;
  const { state, symbols } = one;
  const { printing } = setting.context;
  const turning = turningEnds(state);
  const chord = state.chord.constant;
  const other = end === 0 ? 1 : 0;
  if (state.ends[end].kind === 'known') return undefined;
  const isAlone = turning !== 'both';
  const known = isAlone ? knownMoment(state, other) : 0;
  if (chord === 0 && known === 0 && couple === 0) return undefined;
  const { stiffness } = state;
  const alone = oneHeldValues(state, end);
  const k = isAlone ? alone.k : end === 0 ? stiffness.aa : stiffness.bb;
  const held = isAlone
    ? alone.moment
    : end === 0
      ? stiffness.fixed.a
      : stiffness.fixed.b;
  const perLength = powerOfUnit(displayUnit(printing.system, 'length'), -1);
  const factor = (si: number): Figure => figureIn(printing.figures, perLength, si);
  const moment = (si: number): Term => ({
    sign: si < 0 ? -1 : 1,
    of: value(printing, 'moment', Math.abs(si)),
  });
  const symbolTerms: Term[] = held === 0 ? [] : [plus(name(symbols.held(end)))];
  const numberTerms: Term[] = held === 0 ? [] : [moment(held)];
  if (known !== 0) {
    symbolTerms.push(
      plus(product(name(symbols.carried(end)), name(symbols.moment(other)))),
    );
    numberTerms.push({
      sign: known < 0 ? -1 : 1,
      of: product(
        figureIn(printing.figures, pureUnit, alone.carried),
        value(printing, 'moment', Math.abs(known)),
      ),
    });
  }
  if (chord !== 0) {
    const both = isAlone ? [] : [name(symbols.across)];
    const bothFigure = isAlone ? [] : [factor(stiffness.ab)];
    symbolTerms.push(
      minus(
        product(
          sum(name(symbols.stiffness(end)), ...both),
          referenceRigidity(setting.context),
          name(symbols.chord),
        ),
      ),
    );
    numberTerms.push({
      sign: chord < 0 ? 1 : -1,
      of: product(
        sum(factor(k), ...bothFigure),
        value(printing, 'rigidity', Math.abs(chord)),
      ),
    });
  }
  if (couple !== 0) {
    symbolTerms.push(minus(name(jointLoadSymbol(one.points[1], 'couple'))));
    numberTerms.push(moment(0 - couple));
  }
  return {
    lines: [
      {
        left: name(startSymbol(one, end)),
        chain: [{ sign: '=', of: sum(...symbolTerms) }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: sum(...numberTerms) }] },
      { chain: [{ sign: '=', of: value(printing, 'moment', found) }] },
    ],
  };
}
