import { actsAlongBeam } from '../determinacy.ts';
import { resultantsOf, intensityAt } from '../resultants.ts';
import type { BeamStructure, Load, Restraint } from '../structure.ts';

/** A place where spans meet: a support or a hinge. Loads exactly there, and those of an overhang beyond it, are its own. */
export interface Joint {
  readonly point: string;
  readonly x: number;
  readonly isHinge: boolean;
  readonly restraints: readonly Restraint[];
  /** Upward force on the joint, of loads at it and of its overhang, N. */
  readonly force: number;
  /** Counterclockwise couples on the joint, those of its overhang about it included; at a hinge by side. */
  readonly couple: { readonly left: number; readonly right: number };
  /** The overhang beyond it, if it has one. */
  readonly overhang?: { readonly from: number; readonly to: number };
}

/** The joints of a tidy beam under one case, from left to right. */
export function jointsOf(structure: BeamStructure, mark: string): readonly Joint[] {
  const { supports, hinges, points } = structure;
  const stations = [
    ...new Set([...supports.map(({ x }) => x), ...hinges.map(({ x }) => x)]),
  ].sort((a, b) => a - b);
  const loads = structure.loads.filter((load) => load.case === mark);
  const first = points[0]?.x ?? 0;
  const last = points.at(-1)?.x ?? 0;
  return stations.map((x, index): Joint => {
    const from = index === 0 ? first : x;
    const to = index === stations.length - 1 ? last : x;
    const isHinge = hinges.some((hinge) => hinge.x === x);
    const own = ownLoads(loads, { x, from, to, isHinge });
    return {
      point: points.find((point) => point.x === x)?.name ?? '',
      x,
      isHinge,
      restraints: supports.filter((s) => s.x === x).flatMap((s) => s.restraints),
      ...own,
      ...(to > from ? { overhang: { from, to } } : {}),
    };
  });
}

/** Loads at the joint and on its overhang, brought to it. */
function ownLoads(
  loads: readonly Load[],
  at: {
    readonly x: number;
    readonly from: number;
    readonly to: number;
    readonly isHinge: boolean;
  },
): Pick<Joint, 'force' | 'couple'> {
  const { x, from, to, isHinge } = at;
  let force = 0;
  const couple = { left: 0, right: 0 };
  for (const load of loads) {
    if (load.kind === 'distributed') {
      const [start, end] = [Math.max(load.from, from), Math.min(load.to, to)];
      if (end <= start) continue;
      for (const { magnitude, direction, x: place } of resultantsOf(load, start, end)) {
        force += magnitude * direction[1];
        couple.left += magnitude * direction[1] * (place - x);
      }
    } else if (load.x >= from && load.x <= to) {
      if (load.kind === 'point') {
        force += load.fy;
        couple.left += load.fy * (load.x - x);
      } else if (isHinge && load.side === 'right') couple.right += load.m;
      else couple.left += load.m;
    }
  }
  return { force, couple };
}

/** A load of a span, measured from its left end: what stands strictly inside it. */
export function loadsInside(
  structure: BeamStructure,
  mark: string,
  { from, to }: { readonly from: number; readonly to: number },
): readonly Load[] {
  return structure.loads.flatMap((load): readonly Load[] => {
    if (load.case !== mark) return [];
    if (load.kind !== 'distributed') return load.x > from && load.x < to ? [load] : [];
    const [start, end] = [Math.max(load.from, from), Math.min(load.to, to)];
    if (end <= start || (load.y1 === 0 && load.y2 === 0)) return [];
    const [x1, y1] = intensityAt(load, start);
    const [x2, y2] = intensityAt(load, end);
    return [{ ...load, from: start, to: end, x1, y1, x2, y2 }];
  });
}

/** The restraint that holds a joint rigidly across the beam, if it has one. */
export function rigidAcross({ restraints }: Joint): Restraint | undefined {
  return restraints.find(
    (r) => r.kind === 'force' && !actsAlongBeam(r) && r.stiffness === undefined,
  );
}

/** The restraint of a kind that holds against turning: rigid or a spring. */
export function holdsTurning({ restraints }: Joint): Restraint | undefined {
  return restraints.find(({ kind }) => kind === 'moment');
}
