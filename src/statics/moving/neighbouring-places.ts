import type { Piecewise } from '../piecewise.ts';
import type { CriticalPlace, RollingTrain } from './critical-place.ts';
import { standsOf } from './rolling-sum.ts';
import { signedLine, type Approach } from './signed-line.ts';

/** A place near that where a train stands worst. */
export interface NeighbouringPlace {
  /** How far the train has rolled from its worst place, in metres, right positive. */
  readonly shift: number;
  /** What its axles give, with its own sign; the lane load is the same at every place. */
  readonly value: number;
  /** The axle that stands on a breakpoint of the line, and where that is; absent at a turning point between. */
  readonly on?: { readonly axle: number; readonly x: number };
}

/**
 * The places that might have been the worst, with the spacings and the direction of the worst: those
 * nearest to it on either side, itself among them, from left to right. Several at one place count once,
 * for the most that they give.
 */
export function neighbouringPlaces(
  { train }: RollingTrain,
  line: Piecewise,
  {
    sense,
    critical,
  }: { readonly sense: 'max' | 'min'; readonly critical: CriticalPlace },
  most: number,
): readonly NeighbouringPlace[] {
  const first = critical.axles[0];
  if (first === undefined) return [];
  const signed = signedLine(line, sense, train);
  const group = {
    axles: critical.axles.map(({ index, x }) => ({
      index,
      size: train.axles[index] ?? 0,
      offset: x - first.x,
    })),
  };
  const sign = sense === 'max' ? 1 : -1;
  const places: NeighbouringPlace[] = [];
  for (const { position, value, on } of standsOf(signed, group)) {
    const shift = position - first.x;
    const here = {
      shift,
      value: sign * value + 0,
      ...(on === undefined ? {} : { on }),
    };
    const last = places.at(-1);
    if (last !== undefined && shift - last.shift <= signed.margin) {
      if (value > sign * last.value) places[places.length - 1] = here;
    } else places.push(here);
  }
  const near = places.toSorted((a, b) => Math.abs(a.shift) - Math.abs(b.shift));
  return near.slice(0, most).sort((a, b) => a.shift - b.shift);
}

/** The side whose ordinate an axle takes where the line leaps: that of its approach, else the worse. */
export function sideTaken(
  of: { readonly approach: Approach; readonly sense: 'max' | 'min' },
  values: readonly [left: number, right: number],
): 'left' | 'right' {
  if (of.approach !== 0) return of.approach < 0 ? 'left' : 'right';
  const sign = of.sense === 'max' ? 1 : -1;
  return sign * values[0] >= sign * values[1] ? 'left' : 'right';
}
