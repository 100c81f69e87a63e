import { shareAxially } from './axial-sharing.ts';
import { beamResult } from './beam-result.ts';
import { componentsByStatics, staticsSolver } from './by-statics.ts';
import { actsAlongBeam, determinacyOf } from './determinacy.ts';
import { compatibilityOf } from './elastic/compatibility.ts';
import { elasticCurve } from './elastic/displacement.ts';
import { elasticSolver, type ElasticSolution } from './elastic/elastic-solver.ts';
import { equilibriumSystem } from './equilibrium-system.ts';
import type { BeamResult, Determinacy, Unsolved } from './solution.ts';
import type { BeamStructure, Load } from './structure.ts';
import { tidyLoads, tidyStructure } from './tidy-structure.ts';

/** A beam made ready to be solved, as often as one likes, for any loads whatever. */
export interface BeamSolver {
  readonly kind: 'solver';
  readonly determinacy: Determinacy;
  /** True where an indeterminate beam without E and I is solved with one EI all along. */
  readonly assumesConstantStiffness: boolean;
  /**
   * The state under the loads given, whatever their cases, told under `mark`. Settlements and free
   * curvatures act only where `movementsOf` names their case.
   *
   * ```
   * const solver = solverOf(structure);
   * if (solver.kind === 'solver') solver.state('unit', [load], { movementsOf: 'T' });
   * ```
   *
   * @throws RangeError where a load is not on the beam or is spread over no length.
   */
  readonly state: (
    mark: string,
    loads: readonly Load[],
    also?: { readonly movementsOf: string },
  ) => BeamState;
}

/** A state, or why there is none: the two ways of solving disagree. */
export type BeamState =
  | { readonly kind: 'state'; readonly result: BeamResult }
  | { readonly kind: 'unsolved'; readonly unsolved: Unsolved };

/** What making a beam ready comes to. */
export type SolverOutcome =
  BeamSolver | { readonly kind: 'unsolved'; readonly unsolved: Unsolved };

/**
 * Makes a beam ready: counts and factors once, so that each state costs only a substitution and
 * the telling of its result. Loads of the structure are not looked at.
 *
 * Statics alone solves what it can. Beyond that the axial problem stands apart (`shareAxially`),
 * and bending is solved by stiffness and by moments as unknowns, which have to agree.
 *
 * @throws RangeError where the structure is no beam: see `tidyStructure`.
 */
export function solverOf(structure: BeamStructure): SolverOutcome {
  const tidy = tidyStructure({ ...structure, loads: [] });
  const system = equilibriumSystem(tidy);
  const determinacy = determinacyOf(tidy, system);
  const unsolved = whyUnsolved(tidy, determinacy);
  if (unsolved !== undefined) return { kind: 'unsolved', unsolved };
  const isBent = isBendingRedundant(determinacy);
  const frame: Frame = {
    structure: tidy,
    determinacy,
    tidyLoads: tidyLoads(tidy),
    elastic: isBent || tidy.stiffness !== undefined ? elasticSolver(tidy) : undefined,
    statics: isBent ? undefined : staticsSolver(tidy, system),
  };
  return {
    kind: 'solver',
    determinacy,
    assumesConstantStiffness: isBent && tidy.stiffness === undefined,
    state: (mark, loads, also) => stateOf(frame, { mark, loads, ...also }),
  };
}

/** True where equilibrium leaves forces across the beam or moments open. */
function isBendingRedundant({ redundants, axialOnly }: Determinacy): boolean {
  return redundants > 0 && !axialOnly;
}

function whyUnsolved(
  structure: BeamStructure,
  determinacy: Determinacy,
): Unsolved | undefined {
  if (!determinacy.stable) return { reason: 'unstable', determinacy };
  if (!isBendingRedundant(determinacy)) return undefined;
  const restraints = structure.supports.flatMap((support) => support.restraints);
  const along = restraints.filter(actsAlongBeam);
  const moves = (of: typeof restraints): boolean =>
    of.some(({ settlements = [] }) => settlements.some(({ value }) => value !== 0));
  // How much of a movement along the beam its restraints share depends on EA, which nobody gives.
  if (along.length > 1 && moves(along)) return { reason: 'indeterminate', determinacy };
  if (structure.stiffness !== undefined) return undefined;
  const isInclined = restraints.some(
    (restraint) => !actsAlongBeam(restraint) && isLeaning(restraint),
  );
  const springy = restraints.some(
    (restraint) =>
      restraint.stiffness !== undefined && (isInclined || !actsAlongBeam(restraint)),
  );
  const bows = (structure.curvatures ?? []).some(({ curvature }) => curvature !== 0);
  return springy || bows || moves(restraints)
    ? { reason: 'needs-stiffness', determinacy }
    : undefined;
}

function isLeaning(
  restraint: BeamStructure['supports'][number]['restraints'][number],
): boolean {
  return restraint.kind === 'force' && restraint.direction[0] !== 0;
}

/** What was made ready. */
interface Frame {
  readonly structure: BeamStructure;
  readonly determinacy: Determinacy;
  readonly tidyLoads: (loads: readonly Load[]) => readonly Load[];
  readonly elastic: ReturnType<typeof elasticSolver> | undefined;
  readonly statics: ReturnType<typeof staticsSolver> | undefined;
}

interface Asked {
  readonly mark: string;
  readonly loads: readonly Load[];
  readonly movementsOf?: string;
}

function stateOf(frame: Frame, { mark, loads, movementsOf }: Asked): BeamState {
  const { determinacy, elastic, statics } = frame;
  const structure: BeamStructure = {
    ...frame.structure,
    loads: frame.tidyLoads(loads).map((load) => ({ ...load, case: mark })),
    cases: [mark],
  };
  const solution = elastic?.solve(structure.loads, movementsOf);
  if (statics !== undefined) {
    const components = componentsByStatics(structure, statics, { mark, determinacy });
    const result = beamResult(structure, { mark, loading: mark }, components);
    return withDisplacement(frame, result, solution, movementsOf);
  }
  if (solution === undefined) throw new RangeError('neither statics nor stiffness');
  const { agreement, anchors } = solution;
  if (!(agreement.difference <= agreement.allowed))
    return disagreement(determinacy, mark, agreement);
  const components = sharedAlong(structure, mark, solution.components);
  const result = beamResult(structure, { mark, loading: mark, anchors }, components);
  return withDisplacement(frame, { ...result, agreement }, solution, movementsOf);
}

/** The result with its elastic curve, where the stiffness is known. */
function withDisplacement(
  { structure, determinacy, elastic }: Frame,
  result: BeamResult,
  solution: ElasticSolution | undefined,
  movementsOf: string | undefined,
): BeamState {
  if (
    solution === undefined ||
    elastic === undefined ||
    structure.stiffness === undefined
  )
    return { kind: 'state', result };
  const free = (structure.curvatures ?? []).filter(
    ({ case: of }) => of === movementsOf,
  );
  const curve = elasticCurve(elastic.model, solution.state, result.moment, free);
  const told = { ...result, displacement: curve.displacement };
  const misfits = compatibilityOf(structure, told, movementsOf).map(
    ({ residual, scale }) => (residual === 0 ? 0 : Math.abs(residual) / scale),
  );
  const { allowed, condition } = solution.agreement;
  const difference = misfits.reduce(
    (worst, one) => Math.max(worst, one),
    curve.mismatch,
  );
  return difference <= allowed
    ? { kind: 'state', result: told }
    : disagreement(determinacy, result.mark, { difference, allowed, condition });
}

function disagreement(
  determinacy: Determinacy,
  mark: string,
  agreement: ElasticSolution['agreement'],
): BeamState {
  const reason = 'ways-disagree';
  return { kind: 'unsolved', unsolved: { reason, determinacy, case: mark, agreement } };
}

/** The components that bending gives, and beside them those along the beam. */
function sharedAlong(
  structure: BeamStructure,
  mark: string,
  components: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const isHeldAlong = structure.supports.some(({ restraints }) =>
    restraints.some(actsAlongBeam),
  );
  return isHeldAlong ? shareAxially(structure, mark, components) : components;
}
