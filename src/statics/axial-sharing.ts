import { actsAlongBeam } from './determinacy.ts';
import { loadsUnder } from './loading.ts';
import { resultantsOf } from './resultants.ts';
import type { BeamStructure } from './structure.ts';
import { dropNoise } from './tolerances.ts';

/** A restraint straight along the beam: where it is, which way it counts positive, and its spring if it has one. */
interface AxialRestraint {
  readonly support: number;
  readonly index: number;
  readonly x: number;
  readonly sense: number;
  readonly stiffness?: number;
}

/**
 * Shares the forces along the beam between several restraints along it, which statics alone
 * cannot. The beam is a bar of uniform EA: a force between two rigid restraints goes to them in
 * proportion to the opposite distances, one outside goes to the nearer. Beside a rigid
 * restraint a spring takes nothing, since the beam does not shorten; springs alone share in
 * proportion to their stiffness. Restraints at one station share equally.
 * — Gere & Timoshenko, Mechanics of Materials, statically indeterminate bars (from memory).
 *
 * `components` holds all other components, by support; the answer has those along x filled in.
 */
export function shareAxially(
  structure: BeamStructure,
  caseMark: string,
  components: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const restraints = axialRestraints(structure);
  const rigid = restraints.filter((restraint) => restraint.stiffness === undefined);
  const forces = forcesAlong(structure, caseMark, components);
  const shares =
    rigid.length > 0
      ? sharesOfRigid(rigid, forces)
      : sharesOfSprings(restraints, forces);
  const size = forces.reduce((sum, force) => sum + sizeOfForce(force), 0);
  return components.map((list, support) =>
    list.map((value, index) => {
      const isHere = (r: AxialRestraint): boolean =>
        r.support === support && r.index === index;
      if (!restraints.some(isHere)) return value;
      return dropNoise(shares.find(({ of }) => isHere(of))?.value ?? 0, size) + 0;
    }),
  );
}

function axialRestraints(structure: BeamStructure): readonly AxialRestraint[] {
  const found = structure.supports.flatMap((support, number) =>
    support.restraints.flatMap((restraint, index): readonly AxialRestraint[] => {
      if (restraint.kind === 'moment' || !actsAlongBeam(restraint)) return [];
      const { stiffness, direction } = restraint;
      const place = { support: number, index, x: support.x, sense: direction[0] };
      return [stiffness === undefined ? place : { ...place, stiffness }];
    }),
  );
  return [...found].sort((a, b) => a.x - b.x);
}

/** Forces along x to be held: at a station, or straight from one intensity to another. */
type AlongForce =
  | { readonly kind: 'point'; readonly x: number; readonly force: number }
  | {
      readonly kind: 'spread';
      readonly from: number;
      readonly to: number;
      readonly q1: number;
      readonly q2: number;
    };

function forcesAlong(
  structure: BeamStructure,
  caseMark: string,
  components: readonly (readonly number[])[],
): readonly AlongForce[] {
  const slanted = structure.supports.flatMap((support, number) =>
    support.restraints.flatMap((restraint, index): readonly AlongForce[] => {
      if (restraint.kind === 'moment' || actsAlongBeam(restraint)) return [];
      const force = restraint.direction[0] * (components[number]?.[index] ?? 0);
      return [{ kind: 'point', x: support.x, force }];
    }),
  );
  const loads = loadsUnder(structure, caseMark).flatMap(
    ({ load }): readonly AlongForce[] => {
      switch (load.kind) {
        case 'couple':
          return [];
        case 'point':
          return [{ kind: 'point', x: load.x, force: load.fx }];
        case 'distributed':
          return [
            { kind: 'spread', from: load.from, to: load.to, q1: load.x1, q2: load.x2 },
          ];
      }
    },
  );
  return [...slanted, ...loads];
}

function sizeOfForce(force: AlongForce): number {
  if (force.kind === 'point') return Math.abs(force.force);
  return (Math.abs(force.q1) + Math.abs(force.q2)) * (force.to - force.from);
}

interface Share {
  readonly of: AxialRestraint;
  readonly value: number;
}

function sharesOfRigid(
  rigid: readonly AxialRestraint[],
  forces: readonly AlongForce[],
): readonly Share[] {
  const stations = [...new Set(rigid.map(({ x }) => x))];
  return rigid.map((of) => {
    const at = stations.indexOf(of.x);
    const together = rigid.filter(({ x }) => x === of.x).length;
    const held = forces.reduce(
      (sum, force) => sum + partHeld(force, stations[at - 1], of.x, stations[at + 1]),
      0,
    );
    return { of, value: (-held / together) * of.sense + 0 };
  });
}

/** The part of a force that goes to the restraint at `x`, whose neighbours stand at `before` and `after`. */
function partHeld(
  force: AlongForce,
  before: number | undefined,
  x: number,
  after: number | undefined,
): number {
  if (force.kind === 'point') return force.force * shareAt(force.x, before, x, after);
  // The share is straight between restraints, so a resultant's share is that at its line of action.
  const { from, to, q1, q2 } = force;
  const load = {
    id: '',
    case: '',
    kind: 'distributed',
    from,
    to,
    x1: q1,
    x2: q2,
    y1: 0,
    y2: 0,
  } as const;
  const cuts = [
    from,
    ...[before, x, after].filter((c) => c !== undefined && c > from && c < to),
    to,
  ];
  return cuts.slice(1).reduce<number>((sum, end, index) => {
    const parts = resultantsOf(load, cuts[index], end);
    return parts.reduce(
      (held, part) =>
        held + part.magnitude * part.direction[0] * shareAt(part.x, before, x, after),
      sum,
    );
  }, 0);
}

function shareAt(
  at: number,
  before: number | undefined,
  x: number,
  after: number | undefined,
): number {
  if (at === x) return 1;
  const neighbour = at < x ? before : after;
  if (neighbour === undefined) return 1;
  return Math.max(0, (neighbour - at) / (neighbour - x));
}

function sharesOfSprings(
  springs: readonly AxialRestraint[],
  forces: readonly AlongForce[],
): readonly Share[] {
  const all = forces.reduce((sum, force) => {
    if (force.kind === 'point') return sum + force.force;
    return sum + ((force.q1 + force.q2) / 2) * (force.to - force.from);
  }, 0);
  const total = springs.reduce((sum, spring) => sum + (spring.stiffness ?? 0), 0);
  return springs.map((of) => ({
    of,
    value: ((-all * (of.stiffness ?? 0)) / total) * of.sense + 0,
  }));
}
