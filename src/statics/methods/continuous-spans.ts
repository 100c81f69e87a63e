import type { DistributedLoad } from '../resultants.ts';
import type { BeamStructure, Load, Support } from '../structure.ts';
import { mirrored, momentOf, spanLoads, type SpanLoad } from './span-loads.ts';
import { stiffnessAt } from './stretches.ts';

/** A support of a continuous beam. */
export interface SpanSupport {
  readonly point: string;
  readonly x: number;
  /** How far it sinks in the case, m. */
  readonly sinks: number;
  /** Loads at the support itself, or (at an end of the row) on the overhang beyond it: they find their way to it alone. */
  readonly own: readonly SpanLoad[];
}

/** What the beam does at an end support. */
export interface BeamEnd {
  readonly kind: 'simple' | 'overhang' | 'fixed';
  /** The bending moment there by statics alone, sagging positive, N·m; 0 where it is fixed and so not known. */
  readonly moment: number;
}

/** A stretch of a span with a stiffness of its own, measured from the span's left support. */
export interface SpanStretch {
  readonly from: number;
  readonly to: number;
  /** EI₀ / EI. */
  readonly ratio: number;
}

/** A span between two supports. */
export interface ContinuousSpan {
  readonly left: SpanSupport;
  readonly right: SpanSupport;
  readonly length: number;
  /** As the left support sees them. A couple at an interior support is at the right end of the span left of it. */
  readonly loads: readonly SpanLoad[];
  readonly stretches: readonly SpanStretch[];
  /** Curvatures that it would take by itself, measured from the left support, 1/m. */
  readonly curvatures: readonly {
    readonly from: number;
    readonly to: number;
    readonly curvature: number;
  }[];
}

/** A continuous beam in one case. */
export interface ContinuousBeam {
  /** The stiffness that others are compared with, that of the beam's left end, N·m²; 1 where none is known. */
  readonly EI: number;
  readonly supports: readonly SpanSupport[];
  readonly spans: readonly ContinuousSpan[];
  readonly ends: { readonly left: BeamEnd; readonly right: BeamEnd };
}

/**
 * The spans of a tidy continuous beam on level rigid supports, built in at its ends at most.
 * Overhangs are taken off: their loads give the moment at the support beside them.
 *
 * @throws RangeError where it has less than two supports.
 */
export function continuousBeam(structure: BeamStructure, mark: string): ContinuousBeam {
  const { points, stiffness = [], curvatures = [] } = structure;
  const EI = stiffnessAt(stiffness, points[0]?.x ?? 0);
  const held = [...structure.supports].sort((a, b) => a.x - b.x);
  const first = points[0]?.x ?? 0;
  const last = points.at(-1)?.x ?? 0;
  if (held.length < 2)
    throw new RangeError('a continuous beam has two supports or more');
  const supports = held.map((support, index) => {
    const isFirst = index === 0;
    const isLast = index === held.length - 1;
    return supportOf(structure, support, {
      mark,
      from: isFirst ? first : support.x,
      to: isLast ? last : support.x,
      isFirst,
      isEnd: isFirst || isLast,
    });
  });
  const spans = supports.slice(1).flatMap((right, index): readonly ContinuousSpan[] => {
    const left = supports[index];
    if (left === undefined) return [];
    const isLast = index === supports.length - 2;
    const takes = (load: Exclude<Load, DistributedLoad>): boolean =>
      load.x > left.x &&
      (load.x < right.x || (load.x === right.x && load.kind === 'couple' && !isLast));
    return [
      {
        left,
        right,
        length: right.x - left.x,
        loads: spanLoads(structure, { mark, from: left.x, to: right.x, takes }),
        stretches: stretchesOfSpan(stiffness, left.x, right.x, EI),
        curvatures: curvatures.flatMap(({ case: of, from, to, curvature }) => {
          const [a, b] = [Math.max(from, left.x), Math.min(to, right.x)];
          return of === mark && curvature !== 0 && b > a
            ? [{ from: a - left.x, to: b - left.x, curvature }]
            : [];
        }),
      },
    ];
  });
  return {
    EI,
    supports,
    spans,
    ends: {
      left: endOf(held[0], supports[0], first),
      right: endOf(held.at(-1), supports.at(-1), last),
    },
  };
}

function supportOf(
  structure: BeamStructure,
  { point, x, restraints }: Support,
  of: {
    readonly mark: string;
    readonly from: number;
    readonly to: number;
    readonly isFirst: boolean;
    readonly isEnd: boolean;
  },
): SpanSupport {
  const { mark, from, to, isFirst, isEnd } = of;
  const sinks = restraints.flatMap((restraint) =>
    restraint.kind === 'force'
      ? (restraint.settlements ?? [])
          .filter((settlement) => settlement.case === mark)
          .map(({ value }) => value * restraint.direction[1])
      : [],
  );
  const takes = (load: Exclude<Load, DistributedLoad>): boolean =>
    load.x >= from && load.x <= to && (load.kind === 'point' || isEnd);
  const beyond = spanLoads(structure, { mark, from, to, takes });
  return {
    point,
    x,
    sinks: sinks.reduce((sum, value) => sum + value, 0),
    own: isFirst ? beyond.map((load) => mirrored(load, x - from)) : beyond,
  };
}

function endOf(
  support: Support | undefined,
  at: SpanSupport | undefined,
  end: number,
): BeamEnd {
  if (support?.restraints.some(({ kind }) => kind === 'moment') === true)
    return { kind: 'fixed', moment: 0 };
  const own = at?.own ?? [];
  const moment = own.reduce((sum, load) => sum - momentOf(load), 0);
  const isOverhang = at?.x !== end || own.some(({ kind }) => kind === 'couple');
  return { kind: isOverhang ? 'overhang' : 'simple', moment };
}

function stretchesOfSpan(
  stiffness: NonNullable<BeamStructure['stiffness']>,
  from: number,
  to: number,
  EI: number,
): readonly SpanStretch[] {
  const found: SpanStretch[] = [];
  for (const stretch of stiffness) {
    const [a, b] = [Math.max(stretch.from, from), Math.min(stretch.to, to)];
    if (b <= a) continue;
    const before = found.at(-1);
    const ratio = EI / stretch.EI;
    if (before?.ratio === ratio) found[found.length - 1] = { ...before, to: b - from };
    else found.push({ from: a - from, to: b - from, ratio });
  }
  return found.length === 0 ? [{ from: 0, to: to - from, ratio: 1 }] : found;
}
