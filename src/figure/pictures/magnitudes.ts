import type { PictureLoad } from '../figure-spec.ts';

/** How long arrows are drawn, points: one scale for all loads of a figure. */
export interface Magnitudes {
  /** Length of the arrow of a force, N. */
  readonly forceLength: (size: number) => number;
  /** Heights of a distributed load at its two ends, signed as its intensities, N/m. */
  readonly heights: (sizes: readonly [number, number]) => readonly [number, number];
}

/** Longest and shortest arrows of forces, greatest and least heights of distributed loads, points. */
const longest = 34;
const shortest = 16;
const highest = 19;
const lowest = 9;

/**
 * The scale that makes the largest force the longest arrow. Small forces keep an arrow that can
 * be seen, and a small distributed load is raised as a whole, so that its shape stays true.
 */
export function magnitudesOf(loads: readonly PictureLoad[]): Magnitudes {
  const greatestForce = Math.max(
    0,
    ...loads.map((load) => (load.kind === 'force' ? load.size : 0)),
  );
  const greatestIntensity = Math.max(
    0,
    ...loads.map((load) => (load.kind === 'distributed' ? peakOf(load.sizes) : 0)),
  );
  return {
    forceLength: (size) =>
      greatestForce === 0
        ? shortest
        : Math.max(shortest, (longest * size) / greatestForce),
    heights: (sizes) => {
      const peak = peakOf(sizes);
      if (peak === 0) return [0, 0];
      const height = Math.max(lowest, (highest * peak) / greatestIntensity);
      return [(height * sizes[0]) / peak, (height * sizes[1]) / peak];
    },
  };
}

function peakOf(sizes: readonly [number, number]): number {
  return Math.max(Math.abs(sizes[0]), Math.abs(sizes[1]));
}
