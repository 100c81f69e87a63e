import {
  minus,
  name,
  number,
  plus,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type StatementLine,
} from '../../equation/index.ts';
import { slopeDeflection, threeMoment, type ThreeMoment } from '../../statics/index.ts';
import { displayUnit, pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { narrateSystem } from '../linear-system/narrate-system.ts';
import type { LinearSystem } from '../linear-system/system.ts';
import { narrateAlong } from '../narrators/narrate-along.ts';
import { reactionsFound } from '../narrators/reactions-found.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { asGiven, isInProjectUnit, tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { ContinuousStep } from '../steps/three-moment-steps.ts';
import {
  sinkSymbol,
  spansOf,
  supportMoment,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { narrateEndShears } from './narrate-end-shears.ts';
import {
  jointLoadSymbol,
  narrateJointLoads,
  narrateSimpleSpans,
  prepareLoads,
} from './narrate-joint-loads.ts';
import { narrateJointReactions } from './narrate-joint-reactions.ts';
import { narrateLoadTerms } from './narrate-load-terms.ts';
import { curvatureFigure, freeCurvatureSymbol, narrateRigidity } from './rigidity.ts';
import { spanName } from './slope-setting.ts';
import { knownSide, narrateSupportEquations } from './support-equations.ts';

/**
 * Three-moment equations for one case: the equation in general, the load terms of every span, one
 * equation a support, their solution, and from the moments at the supports every shear and reaction.
 */
export function narrateThreeMoment(context: CaseContext): readonly Step[] {
  const work = threeMoment(context.structure, context.mark);
  const slope = slopeDeflection(context.structure, context.mark);
  const { setting: named, steps: loads } = prepareLoads({ context, work: slope });
  const setting: ContinuousSetting = { ...named, beam: work.beam, terms: work.terms };
  const termSpans = narrateLoadTerms(setting, (support) => hasEquation(work, support));
  return [
    narrateRigidity(context),
    ...loads,
    ...narrateJointLoads(setting),
    openingStep(setting, work),
    ...(termSpans.length === 0
      ? []
      : [{ kind: 'load-terms', spans: termSpans } as const]),
    ...(work.equations.length === 0
      ? []
      : [
          narrateSupportEquations(setting, work),
          narrateSystem(systemOf(setting, work)),
        ]),
    ...narrateSimpleSpans(setting),
    narrateEndShears(setting, work.moments),
    ...narrateJointReactions(setting),
    ...narrateAlong(context),
    reactionsFound(context),
  ];
}

/** True of a support whose moment is not known. */
function hasEquation({ equations }: ThreeMoment, support: number): boolean {
  return equations.some((one) => one.support === support);
}

/** The equations gathered, with the moments that solve them. */
function systemOf(setting: ContinuousSetting, work: ThreeMoment): LinearSystem {
  const { system, figures } = setting.context.printing;
  const at = (support: number): number =>
    work.equations.findIndex((one) => one.support === support);
  return {
    figures,
    unknowns: work.equations.map(({ support }) => ({
      of: name(supportMoment(setting, support)),
      unit: displayUnit(system, 'moment'),
      value: work.moments[support] ?? 0,
    })),
    rows: work.equations.map((equation, index) => {
      const factors = work.equations.map(() => 0);
      const put = (support: number, factor: number): void => {
        if (at(support) >= 0) factors[at(support)] = factor;
      };
      put(equation.support - 1, equation.before);
      put(equation.support, equation.here);
      put(equation.support + 1, equation.after);
      return {
        number: index + 1,
        factors,
        known: knownSide(setting, work, equation),
        unit: displayUnit(system, 'rigidity'),
      };
    }),
  };
}

function openingStep(
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

const general = (letter: string, subscript: string, meaning: string): Expression =>
  name({ letter, subscript, meaning });

/** M_{i−1} L_i + 2 M_i (L_i + L_{i+1}) + M_{i+1} L_{i+1} = −6 A_i ā_i / L_i − 6 A_{i+1} b̄_{i+1} / L_{i+1}, and what moves. */
function generalEquation(setting: ContinuousSetting): Statement {
  const moment = (i: string): Expression =>
    general('M', i, 'bending moment at a support, numbered from left to right');
  const length = (i: string): Expression =>
    general('L', i, 'length of the span that ends at support i');
  const area = (i: string): Expression =>
    general('A', i, 'area of the moment diagram of a span on simple supports');
  const arm = (letter: string, i: string): Expression =>
    name({
      letter,
      subscript: i,
      bar: true,
      meaning: `distance of the centroid of such an area from the ${letter === 'a' ? 'left' : 'right'} end of its span`,
    });
  const next = 'i+1';
  const six = (letter: string, i: string): Expression =>
    quotient(product(number(6), area(i), arm(letter, i)), length(i));
  const hasSinks = setting.beam.supports.some(({ sinks }) => sinks !== 0);
  const sunk = (i: string): Expression => general('δ', i, 'settlement of a support');
  const EI = product(
    name({ letter: 'E', meaning: 'modulus of elasticity' }),
    name({ letter: 'I', meaning: 'second moment of area about the bending axis' }),
  );
  return {
    lines: [
      {
        left: sum(
          product(moment('i−1'), length('i')),
          product(number(2), moment('i'), sum(length('i'), length(next))),
          product(moment(next), length(next)),
        ),
        chain: [
          {
            sign: '=',
            of: sum(
              minus(six('a', 'i')),
              minus(six('b', next)),
              ...(hasSinks
                ? [
                    plus(
                      product(
                        number(6),
                        EI,
                        sum(
                          quotient(sum(sunk('i'), minus(sunk('i−1'))), length('i')),
                          quotient(sum(sunk('i'), minus(sunk(next))), length(next)),
                        ),
                      ),
                    ),
                  ]
                : []),
            ),
          },
        ],
        recheck: 'none',
      },
    ],
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

/** ψ of both ends of a warm span of one stiffness: `κ₀ L / 2`, or of a stretch `κ₀ (e² − c²) / 2L`. */
function warmTurns(setting: ContinuousSetting, one: OneSpan): readonly Statement[] {
  const { span, terms, symbols } = one;
  if (span.curvatures.length === 0 || terms.ratio === undefined) return [];
  const { context } = setting;
  const length = (si: number): Expression => tidy(context.printing, 'length', si);
  return ([0, 1] as const).map((end: End): Statement => {
    const parts = span.curvatures.map(({ from, to, curvature }) => {
      const [c, d] = end === 1 ? [from, to] : [span.length - to, span.length - from];
      const figure = curvatureFigure(context, curvature);
      const isWhole = c === 0 && d === span.length;
      return isWhole
        ? quotient(product(figure, length(span.length)), number(2))
        : quotient(
            product(figure, sum(power(length(d), 2), minus(power(length(c), 2)))),
            product(number(2), length(span.length)),
          );
    });
    const isWhole = span.curvatures.every(
      ({ from, to }) => from === 0 && to === span.length,
    );
    const symbolic: StatementLine['chain'] =
      isWhole && parts.length === 1
        ? [
            {
              sign: '=',
              of: quotient(
                product(name(freeCurvatureSymbol), name(symbols.length)),
                number(2),
              ),
            },
          ]
        : [];
    const left = name(symbols.warmTurn(end));
    const turn = end === 0 ? terms.left.turn : terms.right.turn;
    return {
      lines: [
        ...(symbolic.length === 0
          ? []
          : [{ left, chain: symbolic, recheck: 'none' as const }]),
        {
          ...(symbolic.length === 0 ? { left } : {}),
          chain: [{ sign: '=', of: sum(...parts) }],
        },
        {
          chain: [
            { sign: '=', of: figureIn(context.printing.figures, pureUnit, turn) },
          ],
        },
      ],
    };
  });
}
