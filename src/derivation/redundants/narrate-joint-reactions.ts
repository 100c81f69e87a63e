import {
  call,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import {
  actsAlongBeam,
  valueOfUnknown,
  type Restraint,
  type Unknown,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { acuteAngle } from '../direction.ts';
import { isCouple } from '../narrators/narrate-sum.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { value } from '../printing.ts';
import type { Step } from '../steps.ts';
import { footSymbol, springSymbol } from './narrate-compatibility.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { footFigure, stiffnessFigure } from './support-shares.ts';
import { rigidityFigure } from './rigidity.ts';
import { movementSymbolOf, unknownUnit, type SlopeSetting } from './slope-setting.ts';
import { atJoint, footOf } from './narrate-joints.ts';

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
