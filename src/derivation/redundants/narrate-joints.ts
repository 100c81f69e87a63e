import {
  call,
  exactly,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import {
  actsAlongBeam,
  valueOfUnknown,
  type Joint,
  type JointUnknown,
  type Restraint,
  type Unknown,
} from '../../statics/index.ts';
import { displayUnit, divideUnits, pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { acuteAngle } from '../direction.ts';
import { isCouple } from '../narrators/narrate-sum.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { value } from '../printing.ts';
import type { Step } from '../steps.ts';
import { footSymbol, springSymbol } from './narrate-compatibility.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { footFigure, stiffnessFigure } from './narrate-movements.ts';
import { referenceRigidity, rigidityFigure } from './rigidity.ts';
import {
  movementSymbolOf,
  spanSymbols,
  unknownUnit,
  type SlopeSetting,
} from './slope-setting.ts';

/** Equilibrium of every joint that moves, in its own symbols. */
export function narrateJointEquilibrium(setting: SlopeSetting): readonly Step[] {
  const { work } = setting;
  if (work.unknowns.length === 0) return [];
  return [
    {
      kind: 'joint-equilibrium',
      equations: work.unknowns.map((unknown) => ({
        what: unknown.kind,
        point: work.joints[unknown.joint]?.point ?? '',
        statement: equilibriumOf(setting, unknown),
      })),
    },
  ];
}

function equilibriumOf(setting: SlopeSetting, unknown: JointUnknown): Statement {
  const { work, context } = setting;
  const joint = work.joints[unknown.joint];
  if (joint === undefined) throw new RangeError('no such joint');
  if (unknown.kind === 'slide') return slideEquilibrium(setting);
  const isTurn = unknown.kind === 'rotation';
  const spring = joint.restraints.find(
    (r) =>
      r.stiffness !== undefined &&
      (isTurn ? r.kind === 'moment' : r.kind === 'force' && !actsAlongBeam(r)),
  );
  const left: Term[] = atJoint(setting, unknown.joint, isTurn ? 'moment' : 'force');
  if (spring !== undefined) {
    const k = name(springSymbol(joint.point, spring.kind));
    const moved = name(movementSymbolOf(setting, unknown));
    const foot = footOf(context, spring);
    const through =
      foot === 0
        ? moved
        : sum(moved, { sign: 1, of: name(footSymbol(joint.point, spring.kind)) });
    left.push({ sign: 1, of: product(k, through) });
  }
  const { right, si } = rightOf(joint, isTurn);
  const zero = exactly(0, pureUnit);
  const of: Statement = {
    lines: [
      {
        left: left.length === 0 ? zero : sum(...left),
        chain: [
          { sign: '=', of: si === 0 ? zero : right },
          ...(si === 0
            ? []
            : [
                {
                  sign: '=' as const,
                  of: value(context.printing, isTurn ? 'moment' : 'force', si),
                },
              ]),
        ],
        recheck: 'none',
      },
    ],
  };
  return spring === undefined
    ? of
    : { lines: [...of.lines, ...springLines(setting, joint, { spring, unknown })] };
}

/** What loads at the joint leave on the right side. */
function rightOf(
  { point, couple, force }: Joint,
  isTurn: boolean,
): { readonly right: Expression; readonly si: number } {
  return isTurn
    ? { right: name(jointLoadSymbol(point, 'couple')), si: couple.left + couple.right }
    : {
        right: sum({ sign: -1, of: name(jointLoadSymbol(point, 'force')) }),
        si: force + 0,
      };
}

/** The moments or the upward forces on the ends of the spans at a joint. */
function atJoint(
  setting: SlopeSetting,
  joint: number,
  what: 'force' | 'moment',
): Term[] {
  return setting.work.spans.flatMap((span) => {
    const symbols = spanSymbols(setting, span);
    return ([0, 1] as const).flatMap((end): readonly Term[] =>
      span.joints[end] === joint
        ? [
            {
              sign: 1,
              of: name(what === 'moment' ? symbols.moment(end) : symbols.force(end)),
            },
          ]
        : [],
    );
  });
}

/** What a spring adds to the factor of its movement: `k_B / E I`, and to the right side where its foot moves. */
function springLines(
  setting: SlopeSetting,
  joint: Joint,
  { spring, unknown }: { readonly spring: Restraint; readonly unknown: JointUnknown },
): Statement['lines'] {
  const { context, work } = setting;
  const k = spring.stiffness ?? 0;
  const kind = spring.kind;
  const { system, figures } = context.printing;
  const unit = divideUnits(
    displayUnit(system, kind === 'moment' ? 'moment' : 'force'),
    unknownUnit(setting, unknown),
  );
  const symbol = name(springSymbol(joint.point, kind));
  const foot = footOf(context, spring);
  return [
    {
      left: quotient(symbol, referenceRigidity(context)),
      chain: [
        {
          sign: '=',
          of: quotient(
            stiffnessFigure(context, k, kind),
            rigidityFigure(context, work.EI),
          ),
        },
        { sign: '=', of: figureIn(figures, unit, k / work.EI) },
      ],
    },
    ...(foot === 0
      ? []
      : [
          {
            left: product(symbol, name(footSymbol(joint.point, kind))),
            chain: [
              {
                sign: '=' as const,
                of: product(
                  stiffnessFigure(context, k, kind),
                  footFigure(context, foot, kind),
                ),
              },
              {
                sign: '=' as const,
                of: value(context.printing, kind, k * foot),
              },
            ],
          },
        ]),
  ];
}

function footOf({ mark }: CaseContext, { settlements = [] }: Restraint): number {
  return settlements
    .filter((one) => one.case === mark)
    .reduce((all, one) => all + one.value, 0);
}

const pushSymbol: Symbol = {
  letter: 'P',
  subscript: 'x',
  meaning: 'sum of the loads along the member, rightward',
};

/** The forces along the member: what inclined supports give across it leans along it too. */
function slideEquilibrium(setting: SlopeSetting): Statement {
  const { work, context } = setting;
  const { figures } = context.printing;
  const terms = work.joints.flatMap((joint, index): readonly Term[] => {
    const inclined = joint.restraints.find(isInclined);
    if (inclined?.kind !== 'force') return [];
    const [dx, dy] = inclined.direction;
    const across = [
      ...atJoint(setting, index, 'force'),
      ...(joint.force === 0
        ? []
        : [{ sign: 1, of: name(jointLoadSymbol(joint.point, 'force')) } as const]),
    ];
    const ratio = figureIn(figures, pureUnit, Math.abs(dx / dy));
    const of = product(ratio, { kind: 'sum', terms: across });
    return across.length === 0 ? [] : [{ sign: dx / dy > 0 ? -1 : 1, of }];
  });
  const push = context.structure.loads.reduce((all, load) => {
    if (load.case !== context.mark || load.kind === 'couple') return all;
    if (load.kind === 'point') return all + load.fx;
    return all + ((load.x1 + load.x2) / 2) * (load.to - load.from);
  }, 0);
  const zero = exactly(0, pureUnit);
  return {
    lines: [
      {
        left: terms.length === 0 ? zero : sum(...terms),
        chain: [
          { sign: '=', of: name(pushSymbol) },
          { sign: '=', of: value(context.printing, 'force', push) },
        ],
        recheck: 'none',
      },
    ],
  };
}

function isInclined(restraint: Restraint): boolean {
  return (
    restraint.kind === 'force' &&
    restraint.direction[0] !== 0 &&
    restraint.direction[1] !== 0
  );
}

/** Every reaction across the member: of springs from their movement, of rigid supports from the ends that meet there. */
export function narrateJointReactions(setting: SlopeSetting): readonly Step[] {
  const { context } = setting;
  const statements = context.structure.supports.flatMap(({ point, x, restraints }) =>
    restraints.flatMap((restraint, index): readonly Statement[] => {
      if (actsAlongBeam(restraint)) return [];
      const unknown = { kind: 'reaction', point, index } as const;
      const at = setting.work.joints.findIndex((joint) => joint.x === x);
      return [
        restraint.stiffness === undefined
          ? fromEnds(setting, { unknown, restraint, at })
          : fromSpring(setting, { unknown, restraint, at }),
      ];
    }),
  );
  return [{ kind: 'joint-reactions', statements }];
}

interface AtJoint {
  readonly unknown: Extract<Unknown, { kind: 'reaction' }>;
  readonly restraint: Restraint;
  readonly at: number;
}

/** `R_B = S_BA + S_BC + Q_B`; `M_A = M_AB − C_A`; over the sine of its angle for an inclined support. */
function fromEnds(
  setting: SlopeSetting,
  { unknown, restraint, at }: AtJoint,
): Statement {
  const { context, work } = setting;
  const { printing } = context;
  const isMoment = restraint.kind === 'moment';
  const joint = work.joints[at];
  if (joint === undefined) throw new RangeError('no such joint');
  const own = isMoment ? -(joint.couple.left + joint.couple.right) : -joint.force;
  const what = isMoment ? 'couple' : 'force';
  const values = work.spans.flatMap((span) =>
    ([0, 1] as const).flatMap((end) =>
      span.joints[end] === at ? [isMoment ? span.moments[end] : span.shears[end]] : [],
    ),
  );
  const symbols: Term[] = [
    ...atJoint(setting, at, isMoment ? 'moment' : 'force'),
    ...(own === 0
      ? []
      : [
          {
            sign: isMoment ? -1 : 1,
            of: name(jointLoadSymbol(joint.point, what)),
          } as const,
        ]),
  ];
  const numbers = [...values, own]
    .filter((si) => si !== 0)
    .map((si): Term => ({
      sign: si < 0 ? -1 : 1,
      of: value(printing, isMoment ? 'moment' : 'force', Math.abs(si)),
    }));
  const over = (terms: readonly Term[]): Expression =>
    leaning(context, restraint, terms);
  return found(context, unknown, {
    symbols: over(symbols),
    ...(numbers.length === 0 ? {} : { numbers: over(numbers) }),
  });
}

function leaning(
  { printing }: CaseContext,
  restraint: Restraint,
  terms: readonly Term[],
): Expression {
  if (restraint.kind === 'moment') return sum(...terms);
  const [dx, dy] = restraint.direction;
  const upward =
    dx === 0
      ? sum(...terms)
      : quotient(sum(...terms), call('sin', acuteAngle(printing, [dx, dy])));
  return dy < 0 ? sum({ sign: -1, of: upward }) : upward;
}

/** `R_B = −k_B (v_B + Δ_B)`. */
function fromSpring(
  setting: SlopeSetting,
  { unknown, restraint, at }: AtJoint,
): Statement {
  const { context, work } = setting;
  const { printing } = context;
  const { kind, stiffness: k = 0 } = restraint;
  const joint = work.joints[at];
  const movement = work.unknowns.find(
    (one) =>
      one.joint === at && one.kind === (kind === 'moment' ? 'rotation' : 'deflection'),
  );
  if (joint === undefined || movement === undefined) return found(context, unknown, {});
  const foot = footOf(context, restraint);
  const unit = unknownUnit(setting, movement);
  const moved = quotient(
    figureIn(printing.figures, unit, Math.abs(movement.value)),
    rigidityFigure(context, work.EI),
  );
  const symbols = sum(
    name(movementSymbolOf(setting, movement)),
    ...(foot === 0 ? [] : [name(footSymbol(joint.point, kind))]),
  );
  const numbers: Term[] = [
    ...(movement.value === 0
      ? []
      : [{ sign: movement.value < 0 ? -1 : 1, of: moved } as const]),
    ...(foot === 0
      ? []
      : [
          {
            sign: foot < 0 ? -1 : 1,
            of: footFigure(context, Math.abs(foot), kind),
          } as const,
        ]),
  ];
  const minus = (of: Expression): Expression => sum({ sign: -1, of });
  return found(context, unknown, {
    symbols: minus(product(name(springSymbol(joint.point, kind)), symbols)),
    ...(numbers.length === 0
      ? {}
      : {
          numbers: minus(product(stiffnessFigure(context, k, kind), sum(...numbers))),
        }),
  });
}

/** The lines of one reaction; without numbers where they are all 0. */
function found(
  context: CaseContext,
  unknown: Unknown,
  of: { readonly symbols?: Expression; readonly numbers?: Expression },
): Statement {
  const what = isCouple(context, unknown) ? 'moment' : 'force';
  const of_ = value(context.printing, what, valueOfUnknown(context.result, unknown));
  const left = name(context.symbols.unknown(unknown));
  const boxed = { chain: [{ sign: '=' as const, of: of_ }], boxed: true };
  if (of.symbols === undefined) return { lines: [{ left, ...boxed }] };
  return {
    lines: [
      { left, chain: [{ sign: '=', of: of.symbols }], recheck: 'none' },
      ...(of.numbers === undefined
        ? []
        : [{ chain: [{ sign: '=' as const, of: of.numbers }] }]),
      boxed,
    ],
  };
}
