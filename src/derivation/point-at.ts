import type { BeamStructure } from '../statics/index.ts';

/** The name of the named point at a station; the station's own text is the caller's to print where there is none. */
export function pointAt(structure: BeamStructure, x: number): string | undefined {
  const first = structure.points[0]?.x ?? 0;
  const last = structure.points.at(-1)?.x ?? 0;
  const margin = 1e-9 * (last - first);
  return structure.points.find((point) => Math.abs(point.x - x) <= margin)?.name;
}
