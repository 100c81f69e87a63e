import { intensityAt, type BeamStructure, type Load } from '../../statics/index.ts';

/** How much acts at one place in all, and the loads that it is the sum of. Down or counterclockwise positive, SI. */
export interface LoadAmount {
  readonly si: number;
  readonly terms: readonly { readonly id: string; readonly si: number }[];
}

/** A stretch of distributed load that runs straight from one intensity to another, N/m down. */
export interface LoadStretch {
  readonly from: number;
  readonly to: number;
  readonly start: LoadAmount;
  readonly end: LoadAmount;
}

/** A force in N down, or a couple in N·m counterclockwise, with what stands at the same place added to it. */
export interface LoadAt {
  readonly at: number;
  readonly amount: LoadAmount;
}

/** All loads of one case, those at one place added up: what a handbook would draw. */
export interface TotalLoads {
  /** From left to right; neighbours that make one straight line are one stretch. */
  readonly stretches: readonly LoadStretch[];
  readonly points: readonly LoadAt[];
  readonly couples: readonly LoadAt[];
}

/** The loads of a case added up, stations from the beam's first point; undefined where one acts along the beam. */
export function totalLoads(
  { points, loads }: BeamStructure,
  mark: string,
): TotalLoads | undefined {
  const own = loads.filter((load) => load.case === mark);
  if (own.some(isAlongBeam)) return undefined;
  const first = points[0]?.x ?? 0;
  const margin = 1e-9 * ((points.at(-1)?.x ?? 0) - first);
  return {
    stretches: stretchesOf(own.filter(isDistributed), first, margin),
    points: gathered(
      own.flatMap((load) =>
        load.kind === 'point'
          ? [{ at: load.x - first, id: load.id, si: 0 - load.fy }]
          : [],
      ),
      margin,
    ),
    couples: gathered(
      own.flatMap((load) =>
        load.kind === 'couple' ? [{ at: load.x - first, id: load.id, si: load.m }] : [],
      ),
      margin,
    ),
  };
}

type Distributed = Extract<Load, { kind: 'distributed' }>;

function isDistributed(load: Load): load is Distributed {
  return load.kind === 'distributed';
}

function isAlongBeam(load: Load): boolean {
  if (load.kind === 'couple') return false;
  const [along, across] =
    load.kind === 'point'
      ? [Math.abs(load.fx), Math.abs(load.fy)]
      : [Math.abs(load.x1) + Math.abs(load.x2), Math.abs(load.y1) + Math.abs(load.y2)];
  return along > 1e-12 * across;
}

function amountOf(terms: LoadAmount['terms']): LoadAmount {
  const si = terms.reduce((total, term) => total + term.si, 0);
  const size = terms.reduce((total, term) => total + Math.abs(term.si), 0);
  return { si: Math.abs(si) <= 1e-12 * size ? 0 : si, terms };
}

function gathered(
  all: readonly { readonly at: number; readonly id: string; readonly si: number }[],
  margin: number,
): readonly LoadAt[] {
  const groups: { at: number; terms: { id: string; si: number }[] }[] = [];
  for (const { at, id, si } of [...all].sort((a, b) => a.at - b.at)) {
    const last = groups.at(-1);
    if (last !== undefined && at - last.at <= margin) last.terms.push({ id, si });
    else groups.push({ at, terms: [{ id, si }] });
  }
  return groups
    .map(({ at, terms }) => ({ at, amount: amountOf(terms) }))
    .filter(({ amount }) => amount.si !== 0);
}

function stretchesOf(
  loads: readonly Distributed[],
  first: number,
  margin: number,
): readonly LoadStretch[] {
  const ends = loads.flatMap(({ from, to }) => [from, to]).sort((a, b) => a - b);
  const cuts = ends.filter((x, i) => i === 0 || x - (ends[i - 1] ?? x) > margin);
  const pieces = cuts.slice(1).flatMap((to, index): readonly LoadStretch[] => {
    const from = cuts[index] ?? to;
    const over = loads.filter(
      (load) => load.from <= from + margin && load.to >= to - margin,
    );
    const at = (x: number): LoadAmount =>
      amountOf(over.map((load) => ({ id: load.id, si: downwardAt(load, x) })));
    const [start, end] = [at(from), at(to)];
    return start.si === 0 && end.si === 0
      ? []
      : [{ from: from - first, to: to - first, start, end }];
  });
  return joined(pieces, margin);
}

function downwardAt(load: Distributed, x: number): number {
  return 0 - intensityAt(load, x)[1];
}

function joined(
  pieces: readonly LoadStretch[],
  margin: number,
): readonly LoadStretch[] {
  const size = Math.max(
    0,
    ...pieces.flatMap(({ start, end }) => [Math.abs(start.si), Math.abs(end.si)]),
  );
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * size;
  const runsOn = (a: LoadStretch, b: LoadStretch): boolean => {
    const rise = (one: LoadStretch): number =>
      (one.end.si - one.start.si) / (one.to - one.from);
    return (
      b.from - a.to <= margin &&
      near(a.end.si, b.start.si) &&
      near(rise(a) * (b.to - a.from), rise(b) * (b.to - a.from))
    );
  };
  const all: LoadStretch[] = [];
  for (const piece of pieces) {
    const last = all.at(-1);
    if (last !== undefined && runsOn(last, piece))
      all[all.length - 1] = { ...last, to: piece.to, end: piece.end };
    else all.push(piece);
  }
  return all;
}
