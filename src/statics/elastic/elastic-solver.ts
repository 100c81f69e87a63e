import type { ShearAndMoment } from '../internal-forces.ts';
import type { Agreement } from '../solution.ts';
import type { BeamStructure, Load } from '../structure.ts';
import { dropNoise } from '../tolerances.ts';
import { actingOn, atRest, type Acting } from './acting.ts';
import { byMoments } from './by-moments.ts';
import { byStiffness } from './by-stiffness.ts';
import {
  allowedDifference,
  differenceOf,
  scaleOf,
  type StateScale,
} from './compare-ways.ts';
import { elasticModel, type ElasticModel } from './elastic-model.ts';
import { componentsOf, solveSliding, type ElasticState } from './elastic-state.ts';

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
  /** Shear and moment just right of each joint inside the beam. */
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
  const rest = atRest(model);
  const first = solveSliding(model, stiffness.way, rest);
  const second = solveSliding(model, byMoments(model), rest);
  const { condition } = stiffness;
  const allowed = allowedDifference(model, condition);
  return {
    model,
    solve: (loads, movementsOf) => {
      const acting = actingOn(model, structure, loads, movementsOf);
      const other = first(acting);
      const state = second(acting);
      const scale = scaleOf(model, acting, state);
      const difference = differenceOf(state, other, scale);
      return {
        state,
        agreement: { difference, allowed, condition },
        components: tidyComponents(model, structure, { acting, state, scale }),
        anchors: anchorsOf(model, acting, state, scale),
      };
    },
  };
}

function tidyComponents(
  model: ElasticModel,
  structure: BeamStructure,
  solved: {
    readonly acting: Acting;
    readonly state: ElasticState;
    readonly scale: StateScale;
  },
): readonly (readonly number[])[] {
  const { acting, state, scale } = solved;
  const components = structure.supports.map(({ restraints }) =>
    restraints.map(() => 0),
  );
  for (const [hold, value] of componentsOf(model, acting, state)) {
    const size = hold.dy === 0 ? scale.moment : scale.force / Math.abs(hold.dy);
    const list = components[hold.support];
    if (list !== undefined) list[hold.index] = dropNoise(value, size) + 0;
  }
  return components;
}

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
    if (place === 0 || joint === undefined) continue;
    let [shear, moment] = [joint.shearRight, joint.momentRight];
    for (const load of acting.bars[place] ?? []) {
      if (load.kind === 'force' && load.at === 0) shear += load.force;
      if (load.kind === 'couple' && load.at === 0) moment -= load.couple;
    }
    anchors.set(x, {
      shear: dropNoise(shear, scale.force) + 0,
      moment: dropNoise(moment, scale.moment) + 0,
    });
  }
  return anchors;
}
