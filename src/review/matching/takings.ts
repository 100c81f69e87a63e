import {
  intensityAt,
  resultantsOf,
  type DistributedLoad,
  type Resultant,
  type Sum,
} from '../../statics/index.ts';
import type { MarkingContext } from '../marking-context.ts';

/** A shape into which a distributed load is taken, or the load with its one resultant. */
export type Shape = Omit<Resultant, 'shape'> & {
  readonly shape: Resultant['shape'] | 'trapezoid';
};

/**
 * How distributed loads are taken: in plain shapes, each load as one resultant, a trapezoid as two
 * triangles, or cut into stretches at stations.
 */
export type Taking =
  | { readonly kind: 'whole' | 'single' | 'triangles' }
  | { readonly kind: 'stretches'; readonly at: readonly number[] };

/** So many points are tried by themselves as the place where loads are cut. */
const mostCuts = 8;

/** Every sensible way to take the loads of a member in a sum, the likeliest first. */
export function takingsOf({ structure }: MarkingContext, sum: Sum): readonly Taking[] {
  const spread = structure.loads.filter((load) => load.kind === 'distributed');
  if (spread.length === 0) return [{ kind: 'whole' }];
  const isTrapezoid = ({ y1, y2 }: DistributedLoad): boolean =>
    y1 * y2 > 0 && y1 !== y2;
  const isMixed = spread.some(({ y1, y2 }) => y1 * y2 !== 0 && y1 !== y2);
  const places = [
    ...structure.points.map(({ x }) => x),
    ...spread.flatMap(({ from, to }) => [from, to]),
    ...(sum.kind === 'moments' ? [sum.about] : []),
  ];
  const inside = [...new Set(places)]
    .filter((x) => spread.some(({ from, to }) => x > from && x < to))
    .sort((a, b) => a - b);
  return [
    { kind: 'whole' },
    ...(isMixed ? [{ kind: 'single' } as const] : []),
    ...(spread.some(isTrapezoid) ? [{ kind: 'triangles' } as const] : []),
    ...(inside.length === 0 ? [] : [{ kind: 'stretches', at: inside } as const]),
    ...(inside.length < 2 ? [] : inside.slice(0, mostCuts)).map((x): Taking => ({
      kind: 'stretches',
      at: [x],
    })),
  ];
}

/** The shapes of a load, or of what of it stands on a stretch, as they are taken. */
export function shapesOf(
  load: DistributedLoad,
  { from, to }: { readonly from: number; readonly to: number },
  taking: Taking,
): readonly Shape[] {
  if (!(to > from)) return [];
  switch (taking.kind) {
    case 'whole':
      return resultantsOf(load, from, to);
    case 'single':
      return single(load, from, to);
    case 'triangles':
      return twoTriangles(load, from, to);
    case 'stretches': {
      const margin = 1e-9 * (to - from);
      const inner = taking.at.filter((x) => x > from + margin && x < to - margin);
      const stations = [from, ...inner, to];
      return stations
        .slice(1)
        .flatMap((end, index) => resultantsOf(load, stations[index] ?? from, end));
    }
  }
}

/** A load with its one resultant; in shapes where there is none that tells more. */
function single(load: DistributedLoad, from: number, to: number): readonly Shape[] {
  const shapes = resultantsOf(load, from, to);
  const [first, second] = shapes;
  if (first === undefined || second === undefined) return shapes;
  const along = ({ direction, magnitude }: Resultant): number =>
    magnitude * (direction[0] * first.direction[0] + direction[1] * first.direction[1]);
  const isOneWay =
    Math.abs(Math.abs(along(second)) - second.magnitude) <= 1e-9 * second.magnitude;
  const net = along(first) + along(second);
  // Nearly a couple, its resultant would stand far off.
  if (!isOneWay || Math.abs(net) < 0.05 * (first.magnitude + second.magnitude))
    return shapes;
  const x = (along(first) * first.x + along(second) * second.x) / net;
  const sense = net < 0 ? -1 : 1;
  return [
    {
      shape: 'trapezoid',
      from,
      to,
      start: Math.hypot(...intensityAt(load, from)),
      end: Math.hypot(...intensityAt(load, to)),
      direction: [sense * first.direction[0], sense * first.direction[1]],
      magnitude: Math.abs(net),
      x,
    },
  ];
}

/** A trapezoid as two triangles, each from the intensity at one end to nothing at the other. */
function twoTriangles(
  load: DistributedLoad,
  from: number,
  to: number,
): readonly Resultant[] {
  const [x1, y1] = intensityAt(load, from);
  const [x2, y2] = intensityAt(load, to);
  const isTrapezoid = y1 * y2 > 0 && y1 !== y2 && x1 === 0 && x2 === 0;
  if (!isTrapezoid) return resultantsOf(load, from, to);
  const base = { ...load, from, to, x1: 0, x2: 0 };
  return [
    ...resultantsOf({ ...base, y1, y2: 0 }),
    ...resultantsOf({ ...base, y1: 0, y2 }),
  ];
}
