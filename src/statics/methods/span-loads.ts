import { resultantsOf, type DistributedLoad, type Resultant } from '../resultants.ts';
import type { BeamStructure, Load } from '../structure.ts';

/**
 * A load as it is seen from one support: lengths are measured from there, forces count downward
 * positive, couples counterclockwise where the lengths run to the right.
 */
export type SpanLoad = ForceOrCouple | SpreadLoad;

/** A load at one place. */
type ForceOrCouple = {
  /** The load of the structure that it is. */
  readonly id: string;
  readonly at: number;
} & (
  | { readonly kind: 'force'; readonly force: number }
  | { readonly kind: 'couple'; readonly couple: number }
);

/** A uniform load, or one that falls to nothing at one end of its stretch. */
export interface SpreadLoad {
  /** The load of the structure that it is, or is a share of. */
  readonly id: string;
  readonly kind: 'uniform' | 'triangle';
  /** N/m, of a triangle at its greater end. */
  readonly intensity: number;
  readonly from: number;
  readonly to: number;
  /** Which end of a triangle is the greater. */
  readonly greater?: 'from' | 'to';
  /** The shape that it is of the load of the structure; slanted ones count with their vertical part only. */
  readonly resultant: Resultant;
}

/** Loads on a stretch as the support at `from` sees them; those exactly at its ends are given by `takes`. */
export function spanLoads(
  { loads }: BeamStructure,
  of: {
    readonly mark: string;
    readonly from: number;
    readonly to: number;
    /** Whether a point load or a couple at an end of the stretch, or inside it, is one of its loads. */
    readonly takes: (load: Exclude<Load, DistributedLoad>) => boolean;
  },
): readonly SpanLoad[] {
  const { mark, from, to, takes } = of;
  return loads.flatMap((load): readonly SpanLoad[] => {
    if (load.case !== mark) return [];
    if (load.kind === 'distributed') return shapesOf(load, from, to);
    if (!takes(load)) return [];
    const at = load.x - from;
    if (load.kind === 'couple')
      return [{ id: load.id, kind: 'couple', couple: load.m, at }];
    return load.fy === 0
      ? []
      : [{ id: load.id, kind: 'force', force: 0 - load.fy, at }];
  });
}

function shapesOf(
  load: DistributedLoad,
  from: number,
  to: number,
): readonly SpanLoad[] {
  return resultantsOf(load, from, to).flatMap((resultant): readonly SpanLoad[] => {
    const down = 0 - resultant.direction[1];
    if (down === 0 || resultant.magnitude === 0) return [];
    const { shape, start, end } = resultant;
    const stretch = { from: resultant.from - from, to: resultant.to - from };
    const one = {
      id: load.id,
      ...stretch,
      intensity: down * Math.max(start, end),
      resultant,
    };
    return shape === 'rectangle'
      ? [{ ...one, kind: 'uniform' }]
      : [{ ...one, kind: 'triangle', greater: start > end ? 'from' : 'to' }];
  });
}

/** The same load as the support at the other end of a length sees it. */
export function mirrored(load: SpanLoad, length: number): SpanLoad {
  switch (load.kind) {
    case 'force':
      return { ...load, at: length - load.at };
    case 'couple':
      return { ...load, at: length - load.at, couple: 0 - load.couple };
    case 'uniform':
    case 'triangle': {
      const turned = { ...load, from: length - load.to, to: length - load.from };
      if (load.greater === undefined) return turned;
      return { ...turned, greater: load.greater === 'from' ? 'to' : 'from' };
    }
  }
}

/** ∫ q sᵏ ds for k = 0 to 3, the moments of a load about the support that sees it; N mᵏ. */
type Moments = readonly [number, number, number, number];

/**
 * Of a uniform load and of a triangle over a stretch from c to d, W times the mean of sᵏ. A couple
 * is a pair of forces, so that it takes the slope of sᵏ.
 */
function momentsOf(load: SpanLoad): Moments {
  switch (load.kind) {
    case 'force': {
      const { force, at } = load;
      return [force, force * at, force * at * at, force * at ** 3];
    }
    case 'couple': {
      const turn = 0 - load.couple;
      return [0, turn, turn * 2 * load.at, turn * 3 * load.at ** 2];
    }
    case 'uniform': {
      const { intensity, from: c, to: d } = load;
      const W = intensity * (d - c);
      const square = (c * c + c * d + d * d) / 3;
      return [W, (W * (c + d)) / 2, W * square, (W * (c + d) * (c * c + d * d)) / 4];
    }
    case 'triangle': {
      const { intensity, from, to, greater } = load;
      const [c, d] = greater === 'to' ? [from, to] : [to, from];
      const W = (intensity * (to - from)) / 2;
      return [
        W,
        (W * (c + 2 * d)) / 3,
        (W * (c * c + 2 * c * d + 3 * d * d)) / 6,
        (W * (c ** 3 + 2 * c * c * d + 3 * c * d * d + 4 * d ** 3)) / 10,
      ];
    }
  }
}

/** The downward force of a load, N. */
export function forceOf(load: SpanLoad): number {
  return momentsOf(load)[0];
}

/** The moment of a load about the support that sees it, positive as a downward force turns, N·m. */
export function momentOf(load: SpanLoad): number {
  return momentsOf(load)[1];
}

/** The upward reaction of a simple span at the end away from the support that sees the load, N. */
export function simpleReaction(load: SpanLoad, length: number): number {
  return momentsOf(load)[1] / length;
}

/**
 * The load term 6Aā/L of the three-moment equation at the end away from the support that sees the
 * load: A the area of the moment diagram on simple supports, ā the distance of its centroid from
 * that support, N·m².
 */
export function loadTerm(load: SpanLoad, length: number): number {
  const [, first, , third] = momentsOf(load);
  return (length * length * first - third) / length;
}

/** The moment that a span with both ends fixed has at the end away from the support that sees the load, hogging positive, N·m. */
export function fixedEndMoment(load: SpanLoad, length: number): number {
  const [, , second, third] = momentsOf(load);
  return (length * second - third) / (length * length);
}
