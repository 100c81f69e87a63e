import {
  bendingRedundants,
  isFlexible,
  type BeamStructure,
  tidyStructure,
} from '../../statics/index.ts';

/** A hand method for redundants. */
export type HandMethod =
  'three-moment' | 'moment-distribution' | 'force' | 'slope-deflection';

/** The fact that decides for a method; a template puts it into words. */
export type MethodReason =
  /** Simple supports in a row: one unknown moment a support. */
  | 'continuous'
  /** The project asks for it, and it fits. */
  | 'asked-for'
  /** One or two redundants: released, they leave a structure that statics solves. */
  | 'few-redundants'
  /** What keeps the shorter methods out. */
  | 'springs'
  | 'guide'
  | 'hinges'
  | 'inclined'
  | 'stepped'
  | 'many-redundants';

/** The hand method for a member, and why. */
export interface MethodChoice {
  readonly method: HandMethod;
  readonly why: MethodReason;
  /** Unknowns of bending that equilibrium leaves open (forces along the beam apart). */
  readonly redundants: number;
}

/**
 * The hand method that an engineer would take for an indeterminate beam: three moments for simple
 * supports in a row (or moment distribution or slope-deflection, where `preferred` asks for it), the force method for
 * one or two redundants, slope-deflection for all else, which leaves no stable beam out.
 */
export function chooseMethod(given: BeamStructure, preferred?: string): MethodChoice {
  // Rounding in a direction or a station is no inclined support and no step.
  const structure = tidyStructure(given);
  const redundants = bendingRedundants(structure);
  if (isContinuous(structure)) {
    return preferred === 'moment-distribution' || preferred === 'slope-deflection'
      ? { method: preferred, why: 'asked-for', redundants }
      : { method: 'three-moment', why: 'continuous', redundants };
  }
  const obstacle = obstacleTo(structure, redundants);
  return obstacle === undefined
    ? { method: 'force', why: 'few-redundants', redundants }
    : { method: 'slope-deflection', why: obstacle, redundants };
}

/** Two or more spans on level rigid supports, built in at the beam's ends at most, without hinges; steps of stiffness are no obstacle. */
function isContinuous(structure: BeamStructure): boolean {
  const { supports, hinges, points } = structure;
  const [first, last] = [points[0]?.x, points.at(-1)?.x];
  const holds = supports.filter(({ restraints }) =>
    restraints.some((r) => r.kind === 'force' && r.direction[1] !== 0),
  );
  return (
    hinges.length === 0 &&
    holds.length > 2 &&
    holds.length === supports.length &&
    supports.every(
      ({ x, restraints }) =>
        restraints.every((r) => r.stiffness === undefined) &&
        !restraints.some(isInclined) &&
        (x === first || x === last || restraints.every(({ kind }) => kind === 'force')),
    )
  );
}

/** What keeps the force method out, the most telling first. */
function obstacleTo(
  structure: BeamStructure,
  redundants: number,
): MethodReason | undefined {
  const { supports, hinges } = structure;
  if (hinges.length > 0) return 'hinges';
  if (supports.some(({ restraints }) => restraints.some(isInclined))) return 'inclined';
  if (supports.some(({ type }) => type === 'guide')) return 'guide';
  if (redundants <= 2) return undefined;
  if (supports.some(({ restraints }) => restraints.some(isFlexible))) return 'springs';
  return stepsInsideSpan(structure) ? 'stepped' : 'many-redundants';
}

function isInclined(
  restraint: BeamStructure['supports'][number]['restraints'][number],
): boolean {
  return (
    restraint.kind === 'force' &&
    restraint.direction[0] !== 0 &&
    restraint.direction[1] !== 0
  );
}

/** True where the stiffness changes between two supports, or on an overhang. */
function stepsInsideSpan(structure: BeamStructure): boolean {
  const { stiffness, supports } = structure;
  return (stiffness ?? []).slice(1).some(({ from, EI }, index) => {
    const before = stiffness?.[index];
    if (before === undefined || before.EI === EI) return false;
    return !supports.some(({ x }) => Math.abs(x - from) <= 1e-9 * lengthOf(structure));
  });
}

function lengthOf({ points }: BeamStructure): number {
  return (points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0);
}
