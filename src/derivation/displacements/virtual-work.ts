import { breakpointsOf, valueAt } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { settlementOf } from './conditions.ts';
import { curvaturesOf } from './curvature-terms.ts';
import { partRightOf, stiffnessParts, type StiffnessPart } from './stiffness-along.ts';
import {
  unitLoadAt,
  unitMoment,
  type UnitLoad,
  type UnitReaction,
} from './unit-load.ts';

/** Moments of the loads and of the unit load at evenly spaced places of a stretch, the ends taken just inside. */
export interface WorkStretch {
  readonly from: number;
  readonly to: number;
  readonly part: StiffnessPart;
  /** Three places for Simpson's rule, five for Boole's: exact for what stands here. */
  readonly places: readonly { readonly M: number; readonly m: number }[];
  /** ∫ M m dx, N·m³. */
  readonly integral: number;
  /** The same of the sizes: what rounding is judged by. */
  readonly size: number;
}

/** What a free curvature does on the unit load's moment over a stretch. */
export interface CurvatureWork {
  readonly number: number;
  readonly from: number;
  readonly to: number;
  readonly curvature: number;
  /** m at the two ends, metres. */
  readonly ends: readonly [number, number];
  /** m, positive up. */
  readonly work: number;
}

/** What a support that gives way adds: its unit reaction times its movement. */
export interface SupportWork {
  readonly reaction: UnitReaction;
  readonly settlement: number;
  readonly force: number;
  readonly work: number;
}

/** A deflection by virtual work, with everything that it is made of. */
export interface VirtualWork {
  readonly unit: UnitLoad;
  readonly stretches: readonly WorkStretch[];
  readonly curvatures: readonly CurvatureWork[];
  readonly supports: readonly SupportWork[];
  /** m, up positive. */
  readonly deflection: number;
  /** The sum of the sizes of all its terms, m. */
  readonly size: number;
}

/**
 * The deflection at a station by virtual work: 1 · v = ∫ m M / EI dx + ∫ m κ dx + Σ r (settlement + R / k), with the
 * reactions r and the moment m of a unit load there.
 */
export function virtualWork(context: CaseContext, x: number): VirtualWork {
  const unit = unitLoadAt(context.structure, x);
  const stretches = stretchesOf(context, unit);
  const curvatures = curvatureWork(context, unit);
  const supports = supportWork(context, unit);
  const parts = [
    ...stretches.map(({ integral, size, part }) => ({
      work: integral / part.EI,
      size: size / part.EI,
    })),
    ...[...curvatures, ...supports].map(({ work }) => ({ work, size: Math.abs(work) })),
  ];
  return {
    unit,
    stretches,
    curvatures,
    supports,
    deflection: parts.reduce((all, { work }) => all + work, 0),
    size: parts.reduce((all, { size }) => all + size, 0),
  };
}

function stretchesOf(context: CaseContext, unit: UnitLoad): readonly WorkStretch[] {
  const { structure, result } = context;
  const parts = stiffnessParts(structure);
  const cuts = cutsOf([
    ...breakpointsOf(result.moment),
    ...parts.slice(1).map(({ from }) => from),
    ...kinksOf(unit),
  ]);
  return cuts.slice(1).flatMap((to, index) => {
    const from = cuts[index] ?? to;
    const stretch = stretchOf(context, unit, { from, to });
    const isIdle = stretch.places.every(({ M, m }) => M === 0 || m === 0);
    return isIdle ? [] : [{ ...stretch, part: partRightOf(parts, from) }];
  });
}

function kinksOf({ x, reactions }: UnitLoad): readonly number[] {
  return [x, ...reactions.map(({ support }) => support.x)];
}

function cutsOf(stations: readonly number[]): readonly number[] {
  return [...new Set(stations)].sort((a, b) => a - b);
}

// Weights of Simpson's rule (exact to the third degree) and of Boole's (to the fifth): Abramowitz and Stegun 25.4.5, 25.4.14.
const simpson = { weights: [1, 4, 1], over: 6 } as const;
const boole = { weights: [7, 32, 12, 32, 7], over: 90 } as const;

/** The rule that so many places stand for. */
export function ruleOf(places: number): {
  readonly weights: readonly number[];
  readonly over: number;
} {
  return places === simpson.weights.length ? simpson : boole;
}

function stretchOf(
  { result }: CaseContext,
  unit: UnitLoad,
  { from, to }: { readonly from: number; readonly to: number },
): Omit<WorkStretch, 'part'> {
  const piece = result.moment.pieces.find(({ end }) => end >= to);
  const isCubic = (piece?.coefficients ?? []).slice(3).some((c) => c !== 0);
  const { weights, over } = isCubic ? boole : simpson;
  const last = weights.length - 1;
  const places = weights.map((_, i) => {
    const x = i === last ? to : from + ((to - from) * i) / last;
    const side = i === 0 ? 'right' : 'left';
    return { M: valueAt(result.moment, x, side), m: withoutNoise(unit, x, side) };
  });
  const sum = (of: (one: { M: number; m: number }) => number): number =>
    ((to - from) / over) *
    places.reduce((all, place, i) => all + (weights[i] ?? 0) * of(place), 0);
  return {
    from,
    to,
    places,
    integral: sum(({ M, m }) => M * m),
    size: sum(({ M, m }) => Math.abs(M * m)),
  };
}

function withoutNoise(unit: UnitLoad, x: number, side: 'left' | 'right'): number {
  const m = unitMoment(unit, x, side);
  const reach = unit.reactions.reduce(
    (all, { support, restraint, value }) =>
      all + Math.abs(restraint.kind === 'moment' ? value : value * (x - support.x)),
    Math.abs(x - unit.x),
  );
  return Math.abs(m) <= 1e-12 * reach ? 0 : m;
}

function curvatureWork(context: CaseContext, unit: UnitLoad): readonly CurvatureWork[] {
  return curvaturesOf(context).flatMap(({ number, curvature, from, to }) => {
    const cuts = cutsOf([from, to, ...kinksOf(unit).filter((x) => x > from && x < to)]);
    return cuts.slice(1).flatMap((end, index) => {
      const start = cuts[index] ?? end;
      const ends = [
        withoutNoise(unit, start, 'right'),
        withoutNoise(unit, end, 'left'),
      ] as const;
      const work = (curvature * (end - start) * (ends[0] + ends[1])) / 2;
      return ends[0] === 0 && ends[1] === 0
        ? []
        : [{ number, from: start, to: end, curvature, ends, work }];
    });
  });
}

function supportWork(context: CaseContext, unit: UnitLoad): readonly SupportWork[] {
  return unit.reactions.flatMap((reaction) => {
    const { restraint, support, index, value } = reaction;
    const settlement = settlementOf(context, restraint);
    const found = context.result.reactions.find(({ point }) => point === support.point);
    const force = found?.components[index] ?? 0;
    const given = restraint.stiffness === undefined ? 0 : force / restraint.stiffness;
    const moved = settlement + given;
    return moved === 0 || value === 0
      ? []
      : [{ reaction, settlement, force, work: value * moved }];
  });
}
