import type { Stroke } from '../../drawing/index.ts';
import type { Box } from '../geometry/box.ts';
import type { Diagram } from '../figure-spec.ts';
import { brokenUpright } from '../ink/broken-line.ts';
import type { Part } from '../ink/part.ts';
import { together } from '../ink/part.ts';
import type { Stations } from '../pictures/stations.ts';
import { valueUnder } from './plot.ts';
import type { PlotScale } from './curve-path.ts';

/** Distance of the hatch lines, points; lines shorter than `least` are left out. */
const pitch = 4;
const least = 1.6;

/**
 * The hatch of a diagram: upright hairlines from the base line to the curve, or between the two
 * curves of an envelope. Each is computed from the curve, none is clipped, and each makes way for
 * labels; so what is copied or cut out of the drawing stays clean.
 */
export function hatch(
  curves: Diagram['curves'],
  scale: PlotScale,
  {
    stations,
    gaps,
    stroke,
  }: {
    readonly stations: Stations;
    readonly gaps: readonly Box[];
    readonly stroke: Stroke;
  },
): Part {
  const { start, end, left, right } = stations;
  const count = Math.floor((right - left) / pitch);
  const inset = (right - left - count * pitch) / 2;
  const lines = Array.from({ length: count + 1 }, (_, index) => {
    const x = left + inset + index * pitch;
    const station = start + ((end - start) * (x - left)) / (right - left);
    const values = curves.flatMap(({ of }) => valueUnder(of, station) ?? []);
    const ys = [...values, ...(curves.length === 1 ? [0] : [])].map(scale.yOf);
    const stretch = { top: Math.min(...ys), bottom: Math.max(...ys) };
    return ys.length < 2 || stretch.bottom - stretch.top < least
      ? together()
      : brokenUpright(x, stretch, { gaps, stroke });
  });
  return together(...lines);
}
