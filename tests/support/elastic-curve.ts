import { combine, extremesOf, integrate, valueAt } from '../../src/statics/index.ts';
import type { BeamResult, Extreme, Piecewise } from '../../src/statics/index.ts';

/** How a beam is held: built in at its left end, or resting on two unyielding supports. */
export type Held = 'left end' | readonly [number, number];

/** The deflected shape of a prismatic beam, up positive, and its slope. */
export interface ElasticCurve {
  readonly deflection: (x: number) => number;
  readonly slope: (x: number) => number;
  /** The greatest sag, as a positive number, and where it is. */
  readonly sag: Extreme;
  readonly rise: Extreme;
}

/**
 * Integrates M = E I v″ twice over the whole beam and lays the curve on its supports. Any
 * error of the moment curve anywhere shows in it, which is what published deflections are used for here.
 */
export function elasticCurve(result: BeamResult, EI: number, held: Held): ElasticCurve {
  const curvature = combine([{ factor: 1 / EI, f: result.moment }]);
  const slope0 = integrate(curvature);
  const raw = integrate(slope0);
  const start = raw.pieces[0]!.start;
  const end = raw.pieces.at(-1)!.end;
  // A straight line a + b (x − start) makes up for the unknown start.
  const [a, b] = held === 'left end' ? [0, 0] : lineThrough(raw, held, start);
  const line: Piecewise = { pieces: [{ start, end, coefficients: [a, b] }] };
  const v = combine([
    { factor: 1, f: raw },
    { factor: 1, f: line },
  ]);
  const { max, min } = extremesOf(v);
  return {
    deflection: (x) => valueAt(v, x, 'left'),
    slope: (x) => valueAt(slope0, x, 'left') + b,
    sag: { value: 0 - min.value, x: min.x },
    rise: max,
  };
}

function lineThrough(
  raw: Piecewise,
  [x1, x2]: readonly [number, number],
  start: number,
): readonly [number, number] {
  const v1 = valueAt(raw, x1, 'left');
  const v2 = valueAt(raw, x2, 'left');
  const b = -(v2 - v1) / (x2 - x1);
  return [-v1 - b * (x1 - start), b];
}
