import { minus, name, product, sum, type StatementLine } from '../../equation/index.ts';
import type { ThreeMoment } from '../../statics/index.ts';
import { pureUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { asGiven, isInProjectUnit, tidy, value } from '../printing.ts';
import type { ContinuousStep } from '../steps/three-moment-steps.ts';
import {
  sinkSymbol,
  spansOf,
  supportMoment,
  type ContinuousSetting,
  type OneSpan,
} from './continuous-setting.ts';
import { generalEquation } from './general-equation.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { spanName } from './slope-setting.ts';
import { warmTurns } from './warm-turns.ts';

/** True of a support whose moment is not known. */
export function hasEquation({ equations }: ThreeMoment, support: number): boolean {
  return equations.some((one) => one.support === support);
}

/** What three-moment equations begin with: the unknown moments, the equation in general, lengths, moments known beforehand, settlements, warmth. */
export function narrateRowOfSpans(
  setting: ContinuousSetting,
  work: ThreeMoment,
): Extract<ContinuousStep, { kind: 'three-moments' }> {
  const { beam } = setting;
  const spans = spansOf(setting);
  const last = beam.supports.length - 1;
  const sinks = sinkLines(setting);
  return {
    kind: 'three-moments',
    spans: spans.map(({ state }) => spanName(setting, state)),
    unknowns: work.equations.map(({ support }) => supportMoment(setting, support)),
    general: generalEquation(setting),
    fixed: work.equations.flatMap(({ support }) =>
      support === 0 || support === last ? [beam.supports[support]?.point ?? ''] : [],
    ),
    known: [
      ...(beam.ends.left.kind === 'fixed' ? [] : [knownMoment(setting, 0)]),
      ...(beam.ends.right.kind === 'fixed' ? [] : [knownMoment(setting, last)]),
    ],
    lengths: {
      lines: spans.flatMap((one) => lengthLines(setting, one)),
    },
    hasRatios: spans.some(
      ({ terms }) => terms.ratio !== undefined && terms.ratio !== 1,
    ),
    hasSteps: spans.some(({ terms }) => terms.ratio === undefined),
    ...(sinks.length === 0 ? {} : { sinks: { lines: sinks } }),
    warmTurns: spans.flatMap((one, index) =>
      warmTurns(setting, one).filter((_, end) => hasEquation(work, index + end)),
    ),
  };
}

/** A moment that statics alone gives: 0 at a free end, else what is beyond the support brings. */
function knownMoment(
  setting: ContinuousSetting,
  support: number,
): Extract<ContinuousStep, { kind: 'three-moments' }>['known'][number] {
  const { beam, context } = setting;
  const end = support === 0 ? beam.ends.left : beam.ends.right;
  const point = beam.supports[support]?.point ?? '';
  const left = name(supportMoment(setting, support));
  const found = value(context.printing, 'moment', end.moment);
  const joint = setting.work.joints[support];
  const brings = (joint?.couple.left ?? 0) + (joint?.couple.right ?? 0);
  const couple = name(jointLoadSymbol(point, 'couple'));
  const chain: StatementLine['chain'] =
    brings === 0
      ? [{ sign: '=', of: found }]
      : [
          { sign: '=', of: support === 0 ? sum(minus(couple)) : couple },
          { sign: '=', of: found },
        ];
  return {
    point,
    isFree: end.kind === 'simple',
    statement: {
      lines: [{ left, chain, ...(brings === 0 ? {} : { recheck: 'none' }) }],
    },
  };
}

/** `L_AB = 6 m`; `λ_AB = 2 L_AB = 12 m` where the stiffness is not the reference. */
function lengthLines(
  { context }: ContinuousSetting,
  { span, symbols, terms }: OneSpan,
): readonly StatementLine[] {
  const { printing } = context;
  const length = tidy(printing, 'length', span.length);
  const own: StatementLine = {
    left: name(symbols.length),
    chain: [{ sign: '=', of: length }],
  };
  const { ratio } = terms;
  if (ratio === undefined || ratio === 1) return [own];
  return [
    own,
    {
      left: name(symbols.counted),
      chain: [
        {
          sign: '=',
          of: product(figureIn(printing.figures, pureUnit, ratio), length),
        },
        { sign: '=', of: tidy(printing, 'length', terms.cross) },
      ],
    },
  ];
}

/** Settlements that turn a chord, brought into the unit of lengths. */
function sinkLines({ context, beam }: ContinuousSetting): readonly StatementLine[] {
  const { printing, definition, mark } = context;
  if (beam.supports.every(({ sinks }) => sinks === 0)) return [];
  return beam.supports.map(({ point, sinks }): StatementLine => {
    const left = name(sinkSymbol(point));
    const found = tidy(printing, 'length', sinks);
    const given = definition.supports.find((one) => one.point === point)?.settlement;
    const isGiven =
      given?.case === mark &&
      sinks !== 0 &&
      !isInProjectUnit(printing, 'length', given.value);
    return {
      left,
      chain: [
        ...(isGiven ? [{ sign: '=' as const, of: asGiven(given.value) }] : []),
        { sign: '=', of: found },
      ],
    };
  });
}
