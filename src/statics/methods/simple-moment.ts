import type { Piecewise } from '../piecewise.ts';
import { combine, type PiecewiseTerm } from '../piecewise/combine.ts';
import type { Polynomial } from '../piecewise/polynomial.ts';
import {
  mirrored,
  momentOf,
  simpleReaction,
  forceOf,
  type SpanLoad,
} from './span-loads.ts';

/** The bending moment of a span on simple supports, stations measured from its left support, sagging positive. */
export function simpleMoment(loads: readonly SpanLoad[], length: number): Piecewise {
  return combine([
    { factor: 1, f: { pieces: [{ start: 0, end: length, coefficients: [0] }] } },
    ...loads.flatMap((load): readonly PiecewiseTerm[] => [
      { factor: 1, f: momentUnder(load, length) },
    ]),
  ]);
}

function momentUnder(load: SpanLoad, length: number): Piecewise {
  const [c, d] = 'at' in load ? [load.at, load.at] : [load.from, load.to];
  const reaction = simpleReaction(mirrored(load, length), length);
  const pieces: readonly (readonly [number, number, Polynomial])[] = [
    [0, c, [0, reaction]],
    [c, d, under(load, reaction * c, reaction)],
    [d, length, beyond(load, d, reaction)],
  ];
  return {
    pieces: pieces.flatMap(([start, end, coefficients]) =>
      end > start ? [{ start, end, coefficients }] : [],
    ),
  };
}

/** Under a spread load itself, from its left end. */
function under(load: SpanLoad, start: number, slope: number): Polynomial {
  if (load.kind !== 'uniform' && load.kind !== 'triangle') return [start, slope];
  const { intensity: w, from, to, greater } = load;
  const base = to - from;
  if (load.kind === 'uniform') return [start, slope, -w / 2];
  return greater === 'to'
    ? [start, slope, 0, -w / (6 * base)]
    : [start, slope, -w / 2, w / (6 * base)];
}

/** Right of the load, from its right end. */
function beyond(load: SpanLoad, d: number, reaction: number): Polynomial {
  const force = forceOf(load);
  return [reaction * d - (force * d - momentOf(load)), reaction - force];
}
