import { actsAlongBeam } from '../determinacy.ts';
import type { BeamStructure, Restraint } from '../structure.ts';
import { asked, type SpanForms } from './end-moments.ts';
import {
  directionOf,
  footOf,
  type Frame,
  type UnknownMovement,
} from './joint-movements.ts';
import { rigidAcross } from './joints.ts';
import { constantForm, sumOfForms, type LinearForm } from './linear-form.ts';

/** One equation of equilibrium: Σ factor · unknown = known. */
export interface JointEquation {
  readonly of: UnknownMovement['kind'];
  readonly joint: number;
  readonly factors: readonly number[];
  readonly known: number;
}

/** The equation of equilibrium that belongs to an unknown movement. */
export function equationOf(
  structure: BeamStructure,
  of: {
    readonly frame: Frame;
    readonly spans: readonly SpanForms[];
    readonly unknown: UnknownMovement;
    readonly mark: string;
  },
): JointEquation {
  const { frame, spans, unknown, mark } = of;
  const form =
    unknown.kind === 'slide'
      ? slideForm(structure, { frame, spans, mark })
      : sumOfForms([
          ...asked(
            spans,
            unknown.joint,
            unknown.kind === 'rotation' ? 'moment' : 'force',
          ),
          ...ownTerms(frame, unknown),
        ]);
  return {
    of: unknown.kind,
    joint: unknown.joint,
    factors: form.factors,
    known: -form.constant + 0,
  };
}

/** What acts on a joint itself, taken from what its spans ask: loads, and springs, which resist. */
export function ownTerms(
  frame: Frame,
  { kind, joint: at }: UnknownMovement,
): readonly (readonly [number, LinearForm])[] {
  const { joints, rotations, deflections, unknowns } = frame;
  const joint = joints[at];
  const count = unknowns.length;
  if (joint === undefined) return [];
  const load =
    kind === 'rotation' ? joint.couple.left + joint.couple.right : joint.force;
  const movement = kind === 'rotation' ? rotations[at] : deflections[at];
  const springs = joint.restraints.filter(
    (r) =>
      r.stiffness !== undefined &&
      (kind === 'rotation'
        ? r.kind === 'moment'
        : r.kind === 'force' && !actsAlongBeam(r)),
  );
  return [
    [-1, constantForm(load, count)],
    ...springs.flatMap((spring) =>
      springTerms(frame, spring, { movement, slide: frame.slide, kind }),
    ),
  ];
}

function springTerms(
  { EI, mark, unknowns }: Frame,
  spring: Restraint,
  of: {
    readonly movement: LinearForm | undefined;
    readonly slide: LinearForm;
    readonly kind: UnknownMovement['kind'];
  },
): readonly (readonly [number, LinearForm])[] {
  const k = spring.stiffness ?? 0;
  const foot = constantForm(k * footOf(spring, mark), unknowns.length);
  const movement = of.movement ?? constantForm(0, unknowns.length);
  if (of.kind === 'rotation')
    return [
      [k / EI, movement],
      [1, foot],
    ];
  const [dx, dy] = directionOf(spring);
  return [
    [(k * dy * dy) / EI, movement],
    [(k * dx * dy) / EI, of.slide],
    [dy, foot],
  ];
}

/** The forces along the beam, inclined restraints among them, signed so that the equations stay symmetric. */
function slideForm(
  structure: BeamStructure,
  of: {
    readonly frame: Frame;
    readonly spans: readonly SpanForms[];
    readonly mark: string;
  },
): LinearForm {
  const { frame, spans, mark } = of;
  const count = frame.unknowns.length;
  const terms: (readonly [number, LinearForm])[] = [
    [-1, constantForm(pushOf(structure, mark), count)],
  ];
  for (const [at, joint] of frame.joints.entries()) {
    const across: UnknownMovement = { kind: 'deflection', joint: at };
    const rigid = rigidAcross(joint);
    const [dx, dy] = directionOf(rigid);
    if (rigid !== undefined && dx !== 0) {
      const given = [...asked(spans, at, 'force'), ...ownTerms(frame, across)];
      for (const [times, form] of given) terms.push([(-dx / dy) * times, form]);
    }
    for (const spring of joint.restraints) {
      if (spring.stiffness === undefined || spring.kind !== 'force') continue;
      const [sx, sy] = spring.direction;
      if (sx === 0) continue;
      const k = spring.stiffness;
      terms.push(
        [(k * sx * sx) / frame.EI, frame.slide],
        [(k * sx * sy) / frame.EI, frame.deflections[at] ?? constantForm(0, count)],
        [sx * k * footOf(spring, mark), constantForm(1, count)],
      );
    }
  }
  return sumOfForms(terms);
}

/** The sum of loads along x, N. */
function pushOf({ loads }: BeamStructure, mark: string): number {
  return loads.reduce((sum, load) => {
    if (load.case !== mark || load.kind === 'couple') return sum;
    if (load.kind === 'point') return sum + load.fx;
    return sum + ((load.x1 + load.x2) / 2) * (load.to - load.from);
  }, 0);
}
