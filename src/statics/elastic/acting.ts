import { intensityAt, type DistributedLoad } from '../resultants.ts';
import type { BeamStructure, Load } from '../structure.ts';
import type { ElasticModel, Hold } from './elastic-model.ts';

/** A load on one bar, measured from the bar's left end in metres; upward and counterclockwise positive. */
export type BarLoad =
  | { readonly kind: 'force'; readonly at: number; readonly force: number }
  | { readonly kind: 'couple'; readonly at: number; readonly couple: number }
  /** Straight from q1 to q2, N/m. */
  | {
      readonly kind: 'spread';
      readonly from: number;
      readonly to: number;
      readonly q1: number;
      readonly q2: number;
    }
  /** A curvature that the stretch would take by itself, 1/m. */
  | {
      readonly kind: 'curvature';
      readonly from: number;
      readonly to: number;
      readonly curvature: number;
    };

/** Everything that acts on an elastic model in one state. */
export interface Acting {
  /** The loads of each bar. */
  readonly bars: readonly (readonly BarLoad[])[];
  /** By how much the foot of a restraint moves against its direction, m or rad. */
  readonly foot: (hold: Hold) => number;
  /** The sum of loads along x, N. */
  readonly push: number;
}

/** Nothing acts. */
export function atRest(model: ElasticModel): Acting {
  return { bars: model.bars.map(() => []), foot: () => 0, push: 0 };
}

/**
 * The loads given, and the settlements and free curvatures of the case named (of none where it is
 * left out), laid upon the bars. A load at a joint goes to the bar on its left, a couple to the
 * side that it names.
 */
export function actingOn(
  model: ElasticModel,
  structure: BeamStructure,
  loads: readonly Load[],
  movementsOf: string | undefined,
): Acting {
  const bars = model.bars.map((): BarLoad[] => []);
  const lay = (place: number, load: BarLoad): void => {
    bars[place]?.push(load);
  };
  let push = 0;
  for (const load of loads) {
    push += alongX(load);
    layLoad(model, load, lay);
  }
  for (const free of structure.curvatures ?? []) {
    if (free.case !== movementsOf || free.curvature === 0) continue;
    for (const { place, from, to } of stretchesUnder(model, free.from, free.to))
      lay(place, { kind: 'curvature', from, to, curvature: free.curvature });
  }
  const foot = ({ support, index }: Hold): number => {
    const restraint = structure.supports[support]?.restraints[index];
    return (restraint?.settlements ?? [])
      .filter((settlement) => settlement.case === movementsOf)
      .reduce((sum, { value }) => sum + value, 0);
  };
  return { bars, foot, push };
}

function alongX(load: Load): number {
  switch (load.kind) {
    case 'point':
      return load.fx;
    case 'distributed':
      return ((load.x1 + load.x2) / 2) * (load.to - load.from);
    case 'couple':
      return 0;
  }
}

function layLoad(
  model: ElasticModel,
  load: Load,
  lay: (place: number, load: BarLoad) => void,
): void {
  const barUnder = (
    x: number,
    side: 'left' | 'right',
  ): { readonly place: number; readonly at: number } => {
    const place = barAt(model, x, side);
    return { place, at: x - (model.bars[place]?.from ?? 0) };
  };
  switch (load.kind) {
    case 'point': {
      const { place, at } = barUnder(load.x, 'left');
      if (load.fy !== 0) lay(place, { kind: 'force', at, force: load.fy });
      return;
    }
    case 'couple': {
      const { place, at } = barUnder(load.x, load.side ?? 'left');
      lay(place, { kind: 'couple', at, couple: load.m });
      return;
    }
    case 'distributed':
      laySpread(model, load, lay);
  }
}

function laySpread(
  model: ElasticModel,
  load: DistributedLoad,
  lay: (place: number, load: BarLoad) => void,
): void {
  if (load.y1 === 0 && load.y2 === 0) return;
  for (const { place, from, to } of stretchesUnder(model, load.from, load.to)) {
    const bar = model.bars[place];
    if (bar === undefined) continue;
    const [, q1] = intensityAt(load, Math.max(bar.from, load.from));
    const [, q2] = intensityAt(load, Math.min(bar.to, load.to));
    lay(place, { kind: 'spread', from, to, q1, q2 });
  }
}

/** The bar that carries what stands at a station. */
function barAt({ bars }: ElasticModel, x: number, side: 'left' | 'right'): number {
  let [low, high] = [0, bars.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    const end = bars[middle]?.to ?? Infinity;
    if (side === 'left' ? x <= end : x < end) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The bars that a stretch covers, each with the covered part of it measured from its left end. */
function stretchesUnder(
  model: ElasticModel,
  from: number,
  to: number,
): readonly { readonly place: number; readonly from: number; readonly to: number }[] {
  const first = barAt(model, from, 'right');
  const last = barAt(model, to, 'left');
  return model.bars.slice(first, last + 1).map((bar, index) => ({
    place: first + index,
    from: Math.max(from, bar.from) - bar.from,
    to: Math.min(to, bar.to) - bar.from,
  }));
}
