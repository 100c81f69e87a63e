import fc from 'fast-check';
import {
  bendingRedundants,
  determinacy,
  type BeamStructure,
  type Load,
  type Support,
} from '../../src/statics/index.ts';
import { fixed, guide, pin, roller, spring, type SupportSketch } from './beam.ts';

type Kind =
  | 'none'
  | 'pin'
  | 'roller'
  | 'fixed'
  | 'guide'
  | 'spring'
  | 'turn-spring'
  | 'inclined'
  | 'hinge'
  | 'hinge-roller';

/** Size of a load, kN and the like. */
const size = fc.integer({ min: -40, max: 40 });

const kinds: readonly Kind[] = [
  'none',
  'pin',
  'roller',
  'roller',
  'fixed',
  'guide',
  'spring',
  'turn-spring',
  'inclined',
  'hinge',
  'hinge-roller',
];

/** What a random beam may have besides level rigid supports and loads. */
export interface RedundantWishes {
  /** Kinds of support to draw from; all by default. */
  readonly kinds?: readonly Kind[];
  readonly degrees?: readonly [least: number, greatest: number];
  /** Powers of ten between which stiffnesses of stretches and springs spread. */
  readonly spread?: number;
}

/**
 * Random indeterminate beams under the case `T`: supports of every kind, hinges, overhangs, stepped
 * stiffness, springs, settlements, free curvature and loads of every kind, some exactly at supports.
 */
export function redundantBeam(
  wishes: RedundantWishes = {},
): fc.Arbitrary<BeamStructure> {
  const { degrees = [1, 6], spread = 1, kinds: drawn = kinds } = wishes;
  return fc
    .record({
      gaps: fc.array(fc.integer({ min: 2, max: 24 }), { minLength: 2, maxLength: 7 }),
      kinds: fc.array(fc.constantFrom(...drawn), { minLength: 8, maxLength: 8 }),
      powers: fc.array(fc.double({ min: -spread, max: spread, noNaN: true }), {
        minLength: 16,
        maxLength: 16,
      }),
      steps: fc.array(fc.integer({ min: 1, max: 99 }), { maxLength: 2 }),
      feet: fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 8, maxLength: 8 }),
      settles: fc.boolean(),
      warm: fc.array(
        fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 99 })),
        { maxLength: 1 },
      ),
      loads: fc.array(
        fc.record({
          kind: fc.constantFrom(
            'point' as const,
            'distributed' as const,
            'distributed' as const,
            'couple' as const,
          ),
          from: fc.integer({ min: 0, max: 100 }),
          to: fc.integer({ min: 0, max: 100 }),
          atPoint: fc.boolean(),
          size: fc.tuple(size, size, size, size),
          side: fc.constantFrom('left' as const, 'right' as const),
        }),
        { minLength: 1, maxLength: 5 },
      ),
    })
    .map((seed) => build(seed))
    .filter((structure) => fits(structure, degrees));
}

interface Seed {
  readonly gaps: readonly number[];
  readonly kinds: readonly Kind[];
  readonly powers: readonly number[];
  readonly steps: readonly number[];
  readonly feet: readonly number[];
  readonly settles: boolean;
  readonly warm: readonly (readonly [number, number])[];
  readonly loads: readonly {
    readonly kind: Load['kind'];
    readonly from: number;
    readonly to: number;
    readonly atPoint: boolean;
    readonly size: readonly [number, number, number, number];
    readonly side: 'left' | 'right';
  }[];
}

const EI0 = 2e7;

function sketch(kind: Kind, power: number): SupportSketch | undefined {
  switch (kind) {
    case 'none':
    case 'hinge':
      return undefined;
    case 'pin':
      return pin;
    case 'roller':
    case 'hinge-roller':
      return roller();
    case 'inclined':
      return roller(power > 0 ? 60 : 110);
    case 'fixed':
      return fixed;
    case 'guide':
      return guide;
    case 'spring':
      return spring(3e6 * 10 ** power);
    case 'turn-spring':
      return {
        type: 'pin',
        restraints: [
          ...pin.restraints,
          { kind: 'moment', stiffness: 4e7 * 10 ** power },
        ],
      };
  }
}

function build(seed: Seed): BeamStructure {
  const stations = seed.gaps.reduce<number[]>(
    (all, gap) => [...all, all.at(-1)! + gap / 4],
    [1],
  );
  const [from, to] = [stations[0]!, stations.at(-1)!];
  const points = stations.map((x, i) => ({ name: `P${i}`, x }));
  const place = (share: number): number => from + (share / 100) * (to - from);
  const ends = (i: number): boolean => i === 0 || i === points.length - 1;
  const kindAt = (i: number): Kind => {
    const kind = seed.kinds[i]!;
    return ends(i) && kind.startsWith('hinge') ? 'roller' : kind;
  };
  const supports = points.flatMap(({ name, x }, i): readonly Support[] => {
    const made = sketch(kindAt(i), seed.powers[i]!);
    if (made === undefined) return [];
    const foot = seed.feet[i]! / 2000;
    return [
      {
        point: name,
        x,
        ...made,
        restraints: made.restraints.map((restraint) =>
          seed.settles && restraint.kind === 'force' && restraint.direction[1] !== 0
            ? {
                ...restraint,
                settlements: [{ case: 'T', value: foot * restraint.direction[1] }],
              }
            : restraint,
        ),
      },
    ];
  });
  const hinges = points.flatMap(({ name, x }, i) =>
    kindAt(i).startsWith('hinge') ? [{ point: name, x }] : [],
  );
  const cuts = [from, ...[...new Set(seed.steps)].sort((a, b) => a - b).map(place), to];
  return {
    kind: 'beam',
    points,
    supports,
    hinges,
    cases: ['T'],
    stiffness: cuts.slice(1).map((end, i) => ({
      from: cuts[i]!,
      to: end,
      EI: EI0 * 10 ** seed.powers[8 + i]!,
    })),
    curvatures: seed.warm.flatMap(([a, b], i) =>
      a < b
        ? [{ id: `k${i}`, case: 'T', from: place(a), to: place(b), curvature: -4e-4 }]
        : [],
    ),
    loads: seed.loads.flatMap((load, i): readonly Load[] => {
      const at = load.atPoint ? points[load.from % points.length]!.x : place(load.from);
      const [a, b, c, d] = load.size.map((n) => n * 1000) as [
        number,
        number,
        number,
        number,
      ];
      const head = { id: `l${i}`, case: 'T' };
      if (load.kind === 'point')
        return [{ ...head, kind: 'point', x: at, fx: d / 4, fy: a }];
      if (load.kind === 'couple')
        return [{ ...head, kind: 'couple', x: at, m: a, side: load.side }];
      const [start, end] = [Math.min(load.from, load.to), Math.max(load.from, load.to)];
      if (start === end) return [];
      return [
        {
          ...head,
          kind: 'distributed',
          from: place(start),
          to: place(end),
          x1: c / 10,
          x2: c / 10,
          y1: a,
          y2: b,
        },
      ];
    }),
  };
}

function fits(
  structure: BeamStructure,
  [least, greatest]: readonly [number, number],
): boolean {
  if (structure.supports.length === 0) return false;
  const { stable, nearlyUnstable } = determinacy(structure);
  if (!stable || nearlyUnstable) return false;
  const degree = bendingRedundants(structure);
  return degree >= least && degree <= greatest;
}
