import { actsAlongBeam } from '../determinacy.ts';
import { exactSum, type DoubleDouble } from '../linear/double-double.ts';
import { wholeOf } from '../parts.ts';
import type { BeamStructure, StiffnessStretch } from '../structure.ts';

/**
 * A beam as both ways of solving see it: joints where something holds it or changes, and bars of
 * one stiffness between them. Loads stand inside bars.
 *
 *      joint 0      joint 1   joint 2        joint 3
 *         ├── bar 0 ───┼── bar 1 ─┼─── bar 2 ────┤
 *         △            ○ hinge    △          EI₂ ends
 */
export interface ElasticModel {
  readonly joints: readonly ElasticJoint[];
  /** Bar i runs from joint i to joint i + 1. */
  readonly bars: readonly Bar[];
  /** Restraints straight along the beam, which feel only its slide. */
  readonly along: readonly Hold[];
  /**
   * Whether the slide of the beam along x is an unknown: it is where inclined restraints tie it to
   * the deflection and nothing rigid along x holds it.
   */
  readonly slides: boolean;
  /** Length of the longest bar, which ties the scale of moments to that of forces. */
  readonly reach: number;
}

/** A place where the beam is held, hinged, changes its stiffness or ends. */
export interface ElasticJoint {
  readonly x: number;
  readonly hinged: boolean;
  /** What holds the joint across the beam; at most one of them is rigid. */
  readonly lifting: readonly Hold[];
  /** What holds its rotation, left of the hinge where it has one; at most one of them is rigid. */
  readonly turning: readonly Hold[];
}

/** A restraint by its place in the structure. */
export interface Hold {
  readonly support: number;
  readonly index: number;
  /** The unit vector along which its force is positive; (0, 0) where it gives a moment. */
  readonly dx: number;
  readonly dy: number;
  /** N/m or N·m/rad; absent where it is rigid. */
  readonly stiffness?: number;
}

/** A stretch of one stiffness between neighbouring joints. */
export interface Bar {
  readonly from: number;
  readonly to: number;
  /** The difference of the stations, exactly. */
  readonly length: DoubleDouble;
  readonly EI: number;
}

/**
 * Finds joints and bars of a tidy structure; without a stiffness given, EI = 1 all along.
 *
 * @throws RangeError where two rigid restraints of one support hold the same movement.
 */
export function elasticModel(structure: BeamStructure): ElasticModel {
  const { from, to } = wholeOf(structure);
  const stretches = structure.stiffness ?? [{ from, to, EI: 1 }];
  const joints = jointsOf(structure, stretches);
  const bars = barsBetween(joints, stretches);
  const along = structure.supports.flatMap((_, support) =>
    holdsOf(structure, support).filter(({ dx, dy }) => dx !== 0 && dy === 0),
  );
  const inclined = joints.some(({ lifting }) => lifting.some(({ dx }) => dx !== 0));
  return {
    joints,
    bars,
    along,
    slides: inclined && !along.some(isRigid),
    reach: bars.reduce((most, bar) => Math.max(most, bar.length[0]), 0),
  };
}

/** True of a restraint that does not give way. */
export function isRigid({ stiffness }: Hold): boolean {
  return stiffness === undefined;
}

function jointsOf(
  structure: BeamStructure,
  stretches: readonly StiffnessStretch[],
): readonly ElasticJoint[] {
  const { from, to } = wholeOf(structure);
  const supportAt = new Map(structure.supports.map(({ x }, index) => [x, index]));
  const hinges = new Set(structure.hinges.map(({ x }) => x));
  const steps = stretches
    .slice(1)
    .filter(({ EI }, index) => EI !== stretches[index]?.EI)
    .map((stretch) => stretch.from);
  const stations = new Set([from, to, ...supportAt.keys(), ...hinges, ...steps]);
  return [...stations]
    .sort((a, b) => a - b)
    .map((x): ElasticJoint => {
      const support = supportAt.get(x);
      const holds = support === undefined ? [] : holdsOf(structure, support);
      const lifting = holds.filter(({ dy }) => dy !== 0);
      const turning = holds.filter(({ dx, dy }) => dx === 0 && dy === 0);
      for (const kind of [lifting, turning]) {
        if (kind.filter(isRigid).length > 1)
          throw new RangeError(`two rigid restraints hold one movement at x = ${x}`);
      }
      return { x, hinged: hinges.has(x), lifting, turning };
    });
}

function holdsOf(structure: BeamStructure, support: number): readonly Hold[] {
  const { restraints } = structure.supports[support] ?? { restraints: [] };
  return restraints.map((restraint, index): Hold => {
    const [dx, dy] = restraint.kind === 'moment' ? [0, 0] : restraint.direction;
    const { stiffness } = restraint;
    const place = { support, index, dx, dy: actsAlongBeam(restraint) ? 0 : dy };
    return stiffness === undefined ? place : { ...place, stiffness };
  });
}

function barsBetween(
  joints: readonly ElasticJoint[],
  stretches: readonly StiffnessStretch[],
): readonly Bar[] {
  let next = 0;
  return joints.slice(1).map(({ x: to }, index): Bar => {
    const from = joints[index]?.x ?? to;
    while (next + 1 < stretches.length && (stretches[next]?.to ?? to) <= from)
      next += 1;
    return { from, to, length: exactSum(to, -from), EI: stretches[next]?.EI ?? 1 };
  });
}
