import type { ShearAndMoment } from '../internal-forces.ts';
import { rounded, type DoubleDouble } from '../linear/double-double.ts';
import type { Agreement } from '../solution.ts';
import type { BeamStructure, Load } from '../structure.ts';
import { dropNoise } from '../tolerances.ts';
import { actingOn, type Acting } from './acting.ts';
import { componentsOf } from './components.ts';
import { byMoments } from './by-moments.ts';
import { byStiffness } from './by-stiffness.ts';
import {
  allowedDifference,
  differenceOf,
  scaleOf,
  type StateScale,
} from './compare-ways.ts';
import { elasticModel, type ElasticModel, type Hold } from './elastic-model.ts';
import { roundedState, type ElasticState } from './elastic-state.ts';
import { solveSliding } from './solve-sliding.ts';

/** Bending of one structure, factored both ways. */
export interface ElasticSolver {
  readonly model: ElasticModel;
  /** Solves both ways for loads, and for the settlements and free curvatures of the case named. */
  readonly solve: (
    loads: readonly Load[],
    movementsOf: string | undefined,
  ) => ElasticSolution;
}

/** What both ways found. */
export interface ElasticSolution {
  /**
   * The state found with moments as unknowns. Its equations stay well conditioned where bars are
   * very short, which those of joint movements do not, so it is the one reported.
   */
  readonly state: ElasticState;
  readonly agreement: Agreement;
  /** The value of every restraint, by support; 0 for those straight along the beam. */
  readonly components: readonly (readonly number[])[];
  /** Shear and moment just right of each joint. */
  readonly anchors: ReadonlyMap<number, ShearAndMoment>;
}

/**
 * Makes the bending of a tidy, stable structure ready to be solved.
 *
 * @throws RangeError where two rigid restraints of one support hold the same movement.
 */
export function elasticSolver(structure: BeamStructure): ElasticSolver {
  const model = elasticModel(structure);
  const stiffness = byStiffness(model);
  const first = solveSliding(model, stiffness.way);
  const second = solveSliding(model, byMoments(model));
  const { condition } = stiffness;
  const allowed = allowedDifference(model, condition);
  return {
    model,
    solve: (loads, movementsOf) => {
      const acting = actingOn(model, structure, loads, movementsOf);
      const found = second(acting);
      const state = roundedState(found);
      const scale = scaleOf(model, acting, state);
      const other = roundedState(first(acting));
      const difference = Math.max(differenceOf(state, other, scale), figures);
      return {
        state,
        agreement: { difference, allowed, condition },
        components: tidyComponents(
          structure,
          componentsOf(model, acting, found),
          scale,
        ),
        anchors: anchorsOf(model, acting, state, scale),
      };
    },
  };
}

/** Components by support and restraint, what is only rounding left out. */
function tidyComponents(
  structure: BeamStructure,
  found: ReadonlyMap<Hold, DoubleDouble>,
  scale: StateScale,
): readonly (readonly number[])[] {
  const components = structure.supports.map(({ restraints }) =>
    restraints.map(() => 0),
  );
  for (const [hold, value] of found) {
    const size = hold.dy === 0 ? scale.moment : scale.force / Math.abs(hold.dy);
    const list = components[hold.support];
    if (list !== undefined)
      list[hold.index] = dropNoise(rounded(value), size, rounding) + 0;
  }
  return components;
}

/** No two figures are known to agree more nearly than the numbers that hold them. */
const figures = Number.EPSILON / 2;

/** Both ways work with 32 digits, so that only the rounding of their results is noise. */
const rounding = 1e-15;

/** A bar's state begins beyond all loads of its left joint: couples right at its start are taken off. */
function anchorsOf(
  model: ElasticModel,
  acting: Acting,
  { joints }: ElasticState,
  scale: StateScale,
): ReadonlyMap<number, ShearAndMoment> {
  const anchors = new Map<number, ShearAndMoment>();
  for (const [place, { x }] of model.joints.entries()) {
    const joint = joints[place];
    if (joint === undefined) continue;
    let [shear, moment] = [joint.shearRight, joint.momentRight];
    for (const load of acting.bars[place] ?? []) {
      if (load.kind === 'force' && load.at === 0) shear += load.force;
      if (load.kind === 'couple' && load.at === 0) moment -= load.couple;
    }
    anchors.set(x, {
      shear: dropNoise(shear, scale.force, rounding) + 0,
      moment: dropNoise(moment, scale.moment, rounding) + 0,
    });
  }
  return anchors;
}
