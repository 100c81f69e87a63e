import {
  breakpointsOf,
  differentiate,
  valueAt,
  zerosOf,
  type Displacement,
  type Extreme,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';

/** Smaller movements than this part of the greatest are none to speak of. */
const leastPart = 1e-6;

/** Why a deflection is greatest where it is. */
export type ExtremePlace =
  /** The slope passes through 0 between two stations. */
  | { readonly kind: 'zero-slope'; readonly between: readonly [number, number] }
  /** The slope is 0 there because a support holds it, or all along because the member only moves. */
  | { readonly kind: 'level' }
  | { readonly kind: 'end' }
  | { readonly kind: 'hinge'; readonly point: string };

/** An extreme of the elastic curve that the sheet works out. */
export interface GreatestDeflection extends Extreme {
  readonly which: 'max' | 'min';
  readonly place: ExtremePlace;
}

/** The greatest deflections up and down, the larger first; one that is nothing beside the other is left out. */
export function greatestDeflections(
  context: CaseContext,
): readonly GreatestDeflection[] {
  const { displacement } = context.result;
  if (displacement === undefined) return [];
  const { max, min } = displacement.extremes;
  const size = Math.max(Math.abs(max.value), Math.abs(min.value));
  return (
    [
      ['min', min],
      ['max', max],
    ] as const
  )
    .filter(
      ([which, { value }]) =>
        Math.abs(value) > leastPart * size && (which === 'max' ? value > 0 : value < 0),
    )
    .map(([which, { value, x: found }]) => {
      const x = stationAt(displacement, found);
      return { which, value, x, place: placeOf(context, displacement, x) };
    })
    .sort((a, b) => Math.abs(b.value) - Math.abs(a.value));
}

/** A breakpoint that rounding alone keeps apart from a station found is meant. */
function stationAt({ deflection }: Displacement, x: number): number {
  const stations = breakpointsOf(deflection);
  const margin = 1e-9 * ((stations.at(-1) ?? 0) - (stations[0] ?? 0));
  return stations.find((at) => Math.abs(at - x) <= margin) ?? x;
}

function placeOf(
  { structure }: CaseContext,
  displacement: Displacement,
  x: number,
): ExtremePlace {
  const hinge = structure.hinges.find((one) => one.x === x);
  if (hinge !== undefined) return { kind: 'hinge', point: hinge.point };
  const { slope } = displacement;
  const stations = breakpointsOf(slope);
  const [start = 0, end = 0] = [stations[0], stations.at(-1)];
  const size = Math.max(
    ...stations.map((at) => Math.abs(valueAt(slope, at, 'left'))),
    Number.MIN_VALUE,
  );
  const isLevel = Math.abs(valueAt(slope, x, 'left')) <= 1e-9 * size;
  if (x === start || x === end) return { kind: isLevel ? 'level' : 'end' };
  const bounds = [...stations, ...turnsOf(displacement)];
  const margin = 1e-9 * (end - start);
  const before = Math.max(...bounds.filter((at) => at < x - margin));
  const after = Math.min(...bounds.filter((at) => at > x + margin));
  const signs = valueAt(slope, before, 'right') * valueAt(slope, after, 'left');
  return signs < 0
    ? { kind: 'zero-slope', between: [before, after] }
    : { kind: 'level' };
}

/** Where the curvature passes through 0: between two such places the slope passes through 0 once at most. */
function turnsOf({ slope }: Displacement): readonly number[] {
  return zerosOf(differentiate(slope)).flatMap((zero) =>
    zero.kind === 'at' ? [zero.x] : [],
  );
}
