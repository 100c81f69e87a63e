import { actsAlongBeam } from '../determinacy.ts';
import type { BeamStructure, Restraint } from '../structure.ts';
import { holdsTurning, rigidAcross, type Joint } from './joints.ts';
import {
  constantForm,
  sumOfForms,
  unknownForm,
  type LinearForm,
} from './linear-form.ts';

/** An unknown movement, not solved yet. */
export interface UnknownMovement {
  readonly kind: 'rotation' | 'deflection' | 'slide';
  /** Which joint; of the slide of the whole beam along its axis, the first. */
  readonly joint: number;
}

/** The joints of a beam and their movements, times EI₀, in terms of the unknown ones. */
export interface Frame {
  readonly joints: readonly Joint[];
  readonly mark: string;
  readonly EI: number;
  readonly unknowns: readonly UnknownMovement[];
  /** None where the turn of a joint does not count: at hinges and simple ends. */
  readonly rotations: readonly (LinearForm | undefined)[];
  readonly deflections: readonly LinearForm[];
  /** Of the whole beam along its axis, rightward. */
  readonly slide: LinearForm;
}

/** Which movements are unknown, and every joint's movements in terms of them. */
export function movementsOf(
  structure: BeamStructure,
  of: { readonly joints: readonly Joint[]; readonly mark: string; readonly EI: number },
): Frame {
  const { joints, mark, EI } = of;
  const unknowns: UnknownMovement[] = [];
  const indices = joints.map((joint, index) => {
    const at = (kind: UnknownMovement['kind']): number =>
      unknowns.push({ kind, joint: index }) - 1;
    const turns = isTurning(joints, index) && !isRigid(holdsTurning(joint));
    const rotation = turns ? at('rotation') : undefined;
    const deflection = rigidAcross(joint) === undefined ? at('deflection') : undefined;
    return { rotation, deflection };
  });
  const slides = slidesFreely(structure)
    ? unknowns.push({ kind: 'slide', joint: 0 }) - 1
    : undefined;
  const count = unknowns.length;
  const rigidAlong = structure.supports
    .flatMap(({ restraints }) => restraints)
    .find((r) => actsAlongBeam(r) && r.stiffness === undefined);
  const slide =
    slides === undefined
      ? constantForm(-EI * footOf(rigidAlong, mark) * directionOf(rigidAlong)[0], count)
      : unknownForm(slides, count);
  return {
    joints,
    mark,
    EI,
    unknowns,
    slide,
    rotations: joints.map((joint, index) => {
      const { rotation } = indices[index] ?? {};
      if (rotation !== undefined) return unknownForm(rotation, count);
      return isTurning(joints, index)
        ? constantForm(-EI * footOf(holdsTurning(joint), mark), count)
        : undefined;
    }),
    deflections: joints.map((joint, index) => {
      const { deflection } = indices[index] ?? {};
      if (deflection !== undefined) return unknownForm(deflection, count);
      const rigid = rigidAcross(joint);
      const [dx, dy] = directionOf(rigid);
      const foot = constantForm((-EI * footOf(rigid, mark)) / dy, count);
      return sumOfForms([
        [1, foot],
        [-dx / dy, slide],
      ]);
    }),
  };
}

/** True where the turn of the joint counts: spans meet rigidly there, or something holds it against turning. */
function isTurning(joints: readonly Joint[], index: number): boolean {
  const joint = joints[index];
  if (joint === undefined || joint.isHinge) return false;
  const isInner = index > 0 && index < joints.length - 1;
  return isInner || holdsTurning(joint) !== undefined;
}

function isRigid(restraint: Restraint | undefined): boolean {
  return restraint !== undefined && restraint.stiffness === undefined;
}

/** True where no restraint straight along the beam is rigid and inclined ones tie its slide to its bending. */
function slidesFreely({ supports }: BeamStructure): boolean {
  const all = supports.flatMap(({ restraints }) => restraints);
  const isInclined = all.some(
    (r) => r.kind === 'force' && r.direction[0] !== 0 && r.direction[1] !== 0,
  );
  return isInclined && !all.some((r) => actsAlongBeam(r) && r.stiffness === undefined);
}

/** Where a restraint acts; up where there is none. */
export function directionOf(
  restraint: Restraint | undefined,
): readonly [number, number] {
  return restraint?.kind === 'force' ? restraint.direction : [0, 1];
}

/** The movement of a restraint's foot against its direction in a case. */
export function footOf(restraint: Restraint | undefined, mark: string): number {
  return (restraint?.settlements ?? [])
    .filter((one) => one.case === mark)
    .reduce((sum, { value }) => sum + value, 0);
}
