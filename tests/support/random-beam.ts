import fc from 'fast-check';
import type { BeamStructure, Load, Support } from '../../src/statics/index.ts';
import { fixed, guide, pin, roller, spring, type SupportSketch } from './beam.ts';

const length = fc.integer({ min: 4, max: 40 }).map((quarters) => quarters / 4);

const baseKinds = [
  'pin-roller',
  'roller-pin',
  'fixed',
  'guide-roller',
  'pin-slanted',
  'three-rollers',
  'pin-spring',
] as const;

/**
 * Random beams that statics can solve, determinate by construction and not by asking the solver: a
 * piece that stands by itself, and further pieces hinged to it, outward on both sides, each held
 * by one more roller, or a bare piece (a drop-in span) that rests on one with two.
 */
export const determinateBeam: fc.Arbitrary<BeamStructure> = beamOf(['D', 'L']);

/** The same with the cases of one's choice, each with loads of its own. */
export function beamOf(cases: readonly string[]): fc.Arbitrary<BeamStructure> {
  return fc
    .record({
      base: fc.constantFrom(...baseKinds),
      lengths: fc.array(length, { minLength: 9, maxLength: 9 }),
      left: fc.array(fc.constantFrom('held', 'bare' as const), { maxLength: 2 }),
      right: fc.array(fc.constantFrom('held', 'bare' as const), { maxLength: 2 }),
      places: fc.array(fc.constantFrom(0.25, 0.4, 0.75, 1), {
        minLength: 9,
        maxLength: 9,
      }),
      angles: fc.array(fc.constantFrom(90, 90, 60, 75, 110, 135), {
        minLength: 9,
        maxLength: 9,
      }),
      origin: fc.constantFrom(0, 0, -3, 12.5),
      extras: fc.array(
        fc.integer({ min: 10, max: 980 }).map((n) => n / 991),
        {
          maxLength: 3,
        },
      ),
      loads: fc.array(loadSeed(cases), { maxLength: 10 }),
    })
    .map((seed) => build(seed, cases));
}

interface Seed {
  readonly base: (typeof baseKinds)[number];
  readonly lengths: readonly number[];
  readonly left: readonly ('held' | 'bare')[];
  readonly right: readonly ('held' | 'bare')[];
  readonly places: readonly number[];
  readonly angles: readonly number[];
  readonly origin: number;
  readonly extras: readonly number[];
  readonly loads: readonly LoadSeed[];
}

/** A support at a share of its piece, counted from the piece's left end. */
interface Placed {
  readonly share: number;
  readonly support: SupportSketch;
}

/** The supports of the piece that stands by itself. */
function baseSupports(kind: Seed['base'], angle: number): readonly Placed[] {
  switch (kind) {
    case 'pin-roller':
      return [
        { share: 0.2, support: pin },
        { share: 0.9, support: roller() },
      ];
    case 'roller-pin':
      return [
        { share: 0.15, support: roller() },
        { share: 0.7, support: pin },
      ];
    case 'fixed':
      return [{ share: 0.3, support: fixed }];
    case 'guide-roller':
      return [
        { share: 0.25, support: guide },
        { share: 0.8, support: roller() },
      ];
    case 'pin-slanted':
      return [
        { share: 0.1, support: pin },
        { share: 0.85, support: roller(angle) },
      ];
    case 'three-rollers':
      return [
        { share: 0.1, support: roller(60) },
        { share: 0.3, support: roller() },
        { share: 0.9, support: roller(120) },
      ];
    case 'pin-spring':
      return [
        { share: 0.1, support: pin },
        { share: 0.8, support: spring(2e6) },
      ];
  }
}

/** The pieces outward from the base, each with its supports as shares counted from the base's side. */
function outward(
  kinds: readonly ('held' | 'bare')[],
  pick: Picker,
): readonly (readonly Placed[])[] {
  return kinds.flatMap((kind): readonly (readonly Placed[])[] => {
    const share = pick.place();
    const held = { share, support: roller(pick.angle()) };
    if (kind === 'held') return [[held]];
    return [[], [{ share: share / 2, support: roller() }, held]];
  });
}

interface Picker {
  readonly place: () => number;
  readonly angle: () => number;
}

function build(seed: Seed, cases: readonly string[]): BeamStructure {
  let used = 0;
  const pick: Picker = {
    place: () => seed.places[used++ % 9]!,
    angle: () => seed.angles[used++ % 9]!,
  };
  const toLeft = outward(seed.left, pick)
    .map((piece) => piece.map(({ share, support }) => ({ share: 1 - share, support })))
    .reverse();
  const toRight = outward(seed.right, pick);
  const pieces = [...toLeft, baseSupports(seed.base, pick.angle()), ...toRight];
  const supports: (Omit<Support, 'point'> & { x: number })[] = [];
  const ends = [seed.origin];
  for (const [index, piece] of pieces.entries()) {
    const from = ends[index]!;
    const to = from + seed.lengths[index % 9]!;
    ends.push(to);
    for (const { share, support } of piece) {
      supports.push({ ...support, x: share === 1 ? to : from + share * (to - from) });
    }
  }
  return named(seed, { ends, supports, cases });
}

/** Gives every place a name and puts the loads on. */
function named(
  seed: Seed,
  laid: {
    readonly ends: readonly number[];
    readonly supports: readonly Omit<Support, 'point'>[];
    readonly cases: readonly string[];
  },
): BeamStructure {
  const { ends, supports, cases } = laid;
  const from = ends[0]!;
  const to = ends.at(-1)!;
  const extras = seed.extras.map((share) => from + share * (to - from));
  const places = [...ends, ...supports.map(({ x }) => x), ...extras].sort(
    (a, b) => a - b,
  );
  const margin = 1e-6 * (to - from);
  const stations = places.filter(
    (x, index) => index === 0 || x - places[index - 1]! > margin,
  );
  const points = stations.map((x, index) => ({ name: `P${index}`, x }));
  const at = (x: number): { point: string; x: number } => {
    const point = points.find((candidate) => Math.abs(candidate.x - x) <= margin)!;
    return { point: point.name, x: point.x };
  };
  return {
    kind: 'beam',
    points,
    supports: supports.map((support) => ({ ...support, ...at(support.x) })),
    hinges: ends.slice(1, -1).map((x) => at(x)),
    loads: seed.loads.map((load, index) => placeLoad(load, index, stations)),
    cases,
  };
}

type LoadSeed = ReturnType<typeof loadSeed> extends fc.Arbitrary<infer T> ? T : never;

interface SomeLoad {
  readonly kind: 'point' | 'distributed' | 'couple';
  readonly case: string;
  /** Stands at a named point, or anywhere. */
  readonly isAtPoint: boolean;
  readonly from: number;
  readonly to: number;
  readonly size: readonly [number, number, number, number];
  readonly side: 'left' | 'right' | undefined;
}

function loadSeed(cases: readonly string[]): fc.Arbitrary<SomeLoad> {
  const share = fc.integer({ min: 0, max: 997 }).map((n) => n / 997);
  const size = fc.integer({ min: -400, max: 400 }).map((tenths) => tenths * 100);
  return fc.record({
    kind: fc.constantFrom('point' as const, 'distributed' as const, 'couple' as const),
    case: fc.constantFrom(...cases),
    isAtPoint: fc.boolean(),
    from: share,
    to: share,
    size: fc.tuple(
      size,
      size,
      fc.constantFrom(0, 0, 1).chain((on) => size.map((s) => on * s)),
      size,
    ),
    side: fc.constantFrom('left' as const, 'right' as const, undefined),
  });
}

function placeLoad(seed: LoadSeed, index: number, stations: readonly number[]): Load {
  const start = stations[0]!;
  const end = stations.at(-1)!;
  const stationOf = (share: number): number =>
    seed.isAtPoint
      ? stations[Math.min(Math.floor(share * stations.length), stations.length - 1)]!
      : start + share * (end - start);
  const head = { id: `q${index}`, case: seed.case };
  const [a, b, c, d] = seed.size;
  const x = stationOf(seed.from);
  switch (seed.kind) {
    case 'point':
      return { ...head, kind: 'point', x, fx: c, fy: a };
    case 'couple':
      return {
        ...head,
        kind: 'couple',
        x,
        m: a,
        ...(seed.side === undefined ? {} : { side: seed.side }),
      };
    case 'distributed': {
      const other = stationOf(seed.to);
      const [from, to] = x < other ? [x, other] : [other, x];
      if (to - from < 1e-3 * (end - start)) {
        return {
          ...head,
          kind: 'distributed',
          from: start,
          to: end,
          x1: c,
          y1: a,
          x2: 0,
          y2: b,
        };
      }
      return {
        ...head,
        kind: 'distributed',
        from,
        to,
        x1: c,
        y1: a,
        x2: c === 0 ? 0 : d,
        y2: b,
      };
    }
  }
}
