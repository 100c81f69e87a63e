import type { BeamStructure } from '../../statics/index.ts';

/** A span between neighbouring supports, or an overhang: its stations, and the points at its ends. */
export interface BeamSpan {
  readonly from: number;
  readonly to: number;
  readonly start: string;
  readonly end: string;
}

/**
 * The spans and overhangs of a beam from left to right: stretches between what holds it in y and
 * its ends. A hinge ends none, and neither does a support that leaves y free.
 */
export function spansOf({
  points,
  supports,
}: Pick<BeamStructure, 'points' | 'supports'>): readonly BeamSpan[] {
  const holding = supports.filter(({ restraints }) =>
    restraints.some((one) => one.kind === 'force' && one.direction[1] !== 0),
  );
  const places = new Map<number, string>();
  for (const { name, x } of [points[0], points.at(-1)].filter(
    (one) => one !== undefined,
  ))
    places.set(x, name);
  for (const { point, x } of holding) places.set(x, point);
  const ends = [...places].sort(([one], [other]) => one - other);
  return ends.slice(1).map(([to, end], index) => {
    const [from = to, start = end] = ends[index] ?? [];
    return { from, to, start, end };
  });
}
