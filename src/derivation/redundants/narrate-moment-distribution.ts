import {
  name,
  quotient,
  sum,
  type Figure,
  type Statement,
  type Symbol,
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
import type { Step } from '../steps.ts';
import type { ContinuousStep } from '../steps/three-moment-steps.ts';
import {
  spansOf,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { distributionTable } from './distribution-table.ts';
import { forceFound } from './narrate-ends-found.ts';
import { narrateHeldSpans } from './narrate-held-spans.ts';
import {
  narrateJointLoads,
  narrateSimpleSpans,
  prepareLoads,
} from './narrate-joint-loads.ts';
import { narrateJointReactions } from './narrate-joint-reactions.ts';
import { narrateRigidity } from './rigidity.ts';
import { spanName } from './slope-setting.ts';
import { narrateStarting } from './starting-moments.ts';

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
