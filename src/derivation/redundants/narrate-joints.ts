import {
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
  type Joint,
  type JointUnknown,
  type Restraint,
} from '../../statics/index.ts';
import { displayUnit, divideUnits, pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { value } from '../printing.ts';
import type { Step } from '../steps.ts';
import { footSymbol, springSymbol } from './narrate-compatibility.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { footFigure, stiffnessFigure } from './support-shares.ts';
import { referenceRigidity, rigidityFigure } from './rigidity.ts';
import { movementSymbolOf, unknownUnit, type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';

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
export function atJoint(
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

/** How far the foot of a restraint moves against it in the case. */
export function footOf({ mark }: CaseContext, { settlements = [] }: Restraint): number {
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
