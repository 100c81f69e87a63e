import {
  internalForces,
  type InternalForces,
  type ShearAndMoment,
  type Sizes,
  type StationForce,
} from './internal-forces.ts';
import { loadsUnder, type CaseFactor, type FactoredLoad } from './loading.ts';
import { partsOf, pieceAt, pieceOfLoad, wholeOf, type Part } from './parts.ts';
import { extremesOf } from './piecewise/extremes.ts';
import type { Piecewise } from './piecewise.ts';
import { residualsOf } from './residuals.ts';
import { resultantsOf } from './resultants.ts';
import type { BeamResult, HingeForce, Reaction, Residual } from './solution.ts';
import type { BeamStructure, Support } from './structure.ts';
import { dropNoise } from './tolerances.ts';

/** A case or combination to be told: its mark, and what is loaded. */
export interface Entry {
  readonly mark: string;
  readonly loading: string | readonly CaseFactor[];
  /** Shear and moment just right of stations where they are known otherwise than from the reactions. */
  readonly anchors?: ReadonlyMap<number, ShearAndMoment>;
}

/**
 * Everything that follows from the reactions of a tidy structure, however they were found: forces
 * through hinges, internal forces, extremes, residuals. `components` holds the value of every restraint, support by
 * support.
 */
export function beamResult(
  structure: BeamStructure,
  { mark, loading, anchors }: Entry,
  components: readonly (readonly number[])[],
): BeamResult {
  const loads = loadsUnder(structure, loading);
  const reactions = structure.supports.map((support, index) =>
    reactionOf(support, components[index] ?? []),
  );
  const forces = structure.supports.map((support, index): StationForce => {
    const { x, y, moment } = reactions[index] ?? { x: 0, y: 0, moment: 0 };
    return { x: support.x, fx: x ?? 0, fy: y ?? 0, m: moment ?? 0 };
  });
  const sizes = sizesOf(structure, forces, loads);
  const hingeForces = hingeForcesOf(structure, forces, { loads, sizes });
  const inside = internalForces(
    structure,
    forces,
    loads,
    anchors === undefined ? sizes : { ...sizes, anchors },
  );
  const sums = residualsOf(structure, loading, { reactions, hingeForces });
  const residuals = [...sums, ...closingResiduals(inside, sizes)];
  const { axial, shear, moment } = inside;
  return {
    mark,
    reactions,
    hingeForces,
    axial,
    shear,
    moment,
    extremes: threeExtremes({ axial, shear, moment }),
    residuals,
  };
}

/** The extremes of all three internal forces. */
export function threeExtremes(
  curves: Readonly<Record<'axial' | 'shear' | 'moment', Piecewise>>,
): BeamResult['extremes'] {
  return {
    shear: extremesOf(curves.shear),
    moment: extremesOf(curves.moment),
    axial: extremesOf(curves.axial),
  };
}

/** A support's forces along the axes from those of its restraints; null where it gives none. */
function reactionOf(support: Support, components: readonly number[]): Reaction {
  const along = (axis: 0 | 1): number | null => {
    let given = false;
    let sum = 0;
    for (const [index, restraint] of support.restraints.entries()) {
      if (restraint.kind === 'moment' || restraint.direction[axis] === 0) continue;
      given = true;
      sum += restraint.direction[axis] * (components[index] ?? 0);
    }
    return given ? sum + 0 : null;
  };
  let moment: number | null = null;
  for (const [index, restraint] of support.restraints.entries()) {
    if (restraint.kind === 'moment') moment = (moment ?? 0) + (components[index] ?? 0);
  }
  return { point: support.point, x: along(0), y: along(1), moment, components };
}

/** The sum of sizes of all loads and reactions, and of their moments over the beam's length. */
function sizesOf(
  structure: BeamStructure,
  reactions: readonly StationForce[],
  loads: readonly FactoredLoad[],
): Sizes {
  const { from, to } = wholeOf(structure);
  let [force, couple] = [0, 0];
  for (const { fx, fy, m } of reactions) {
    force += Math.abs(fx) + Math.abs(fy);
    couple += Math.abs(m);
  }
  for (const { load, factor } of loads) {
    if (load.kind === 'couple') couple += Math.abs(factor * load.m);
    else if (load.kind === 'point')
      force += Math.abs(factor) * Math.hypot(load.fx, load.fy);
    else
      for (const { magnitude } of resultantsOf(load))
        force += Math.abs(factor) * magnitude;
  }
  const length = to - from;
  return { force: force + couple / length, moment: force * length + couple };
}

/** Everything on the pieces left of each hinge: what they do to the right. */
function hingeForcesOf(
  structure: BeamStructure,
  reactions: readonly StationForce[],
  { loads, sizes }: { readonly loads: readonly FactoredLoad[]; readonly sizes: Sizes },
): readonly HingeForce[] {
  const pieces = partsOf(structure);
  return structure.hinges.map(({ point, x }) => {
    const hinge = pieces.findIndex((piece) => piece.to === x);
    const left: Part = { from: pieces[0]?.from ?? x, to: x };
    let [fx, fy] = [0, 0];
    for (const reaction of reactions) {
      if (pieceAt(pieces, reaction.x) > hinge) continue;
      fx += reaction.fx;
      fy += reaction.fy;
    }
    for (const { load, factor } of loads) {
      if (load.kind === 'distributed') {
        for (const { magnitude, direction } of resultantsOf(load, left.from, left.to)) {
          fx += factor * magnitude * direction[0];
          fy += factor * magnitude * direction[1];
        }
      } else if (load.kind === 'point' && pieceOfLoad(pieces, load) <= hinge) {
        fx += factor * load.fx;
        fy += factor * load.fy;
      }
    }
    return {
      point,
      x: dropNoise(fx, sizes.force) + 0,
      y: dropNoise(fy, sizes.force) + 0,
    };
  });
}

/** What the diagrams leave beyond the right end. */
function closingResiduals(inside: InternalForces, sizes: Sizes): readonly Residual[] {
  const { axial, shear, moment } = inside.closing;
  return [
    { equation: 'closing axial', residual: axial, scale: sizes.force },
    { equation: 'closing shear', residual: shear, scale: sizes.force },
    { equation: 'closing moment', residual: moment, scale: sizes.moment },
  ];
}
