import type { Load } from '../../statics/index.ts';

type Distributed = Extract<Load, { readonly kind: 'distributed' }>;

/**
 * The part of a distributed load between two stations, its sizes where it is cut read off the straight line
 * between its ends; undefined where nothing lies there. The load itself where it lies within.
 */
export function clipLoad(
  load: Distributed,
  { from, to }: { readonly from: number; readonly to: number },
): Distributed | undefined {
  const [start, end] = [Math.max(load.from, from), Math.min(load.to, to)];
  if (start >= end) return undefined;
  if (start === load.from && end === load.to) return load;
  const [x1, y1] = sizeAt(load, start);
  const [x2, y2] = sizeAt(load, end);
  return { ...load, from: start, to: end, x1, y1, x2, y2 };
}

function sizeAt(load: Distributed, x: number): readonly [number, number] {
  if (x === load.to) return [load.x2, load.y2];
  const share = (x - load.from) / (load.to - load.from);
  // Equal ends stay exactly equal: the difference is then 0.
  return [load.x1 + share * (load.x2 - load.x1), load.y1 + share * (load.y2 - load.y1)];
}
