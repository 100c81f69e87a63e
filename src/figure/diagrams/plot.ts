import type { Piecewise } from '../../statics/index.ts';
import type { Diagram } from '../figure-spec.ts';
import type { Stations } from '../pictures/stations.ts';
import { pieceValue } from './curve-path.ts';
import type { PlotScale } from './curve-path.ts';

/** Height of a diagram from its least to its greatest value, points, the base line included. */
const plotHeight = 46;
/** So many values a piece are looked at to find how far it reaches. */
const looks = 24;

/** The scale that draws a diagram at its height; all zero where the curve is. */
export function plotScale(diagram: Diagram, stations: Stations): PlotScale {
  const values = [0, ...diagram.curves.flatMap(({ of }) => valuesOf(of))];
  const range = Math.max(...values) - Math.min(...values);
  const ratio = plotHeight / range;
  // A range so small that its reciprocal overflows is as good as none.
  const scale = Number.isFinite(ratio) ? ratio : 0;
  const sign = diagram.positive === 'up' ? -1 : 1;
  return { xOf: stations.xOf, yOf: (value) => sign * scale * value };
}

function valuesOf({ pieces }: Piecewise): readonly number[] {
  return pieces.flatMap((piece) =>
    Array.from({ length: looks + 1 }, (_, index) =>
      pieceValue(piece, piece.start + ((piece.end - piece.start) * index) / looks),
    ),
  );
}

/** The value of a function at a station, coming from its right where it jumps; undefined off its ends. */
export function valueUnder({ pieces }: Piecewise, x: number): number | undefined {
  const piece =
    pieces.find(({ start, end }) => x >= start && x < end) ??
    pieces.findLast(({ start, end }) => x >= start && x <= end);
  return piece === undefined ? undefined : pieceValue(piece, x);
}
