import fc from 'fast-check';
import {
  determinacy,
  type BeamStructure,
  type FreeCurvature,
  type Load,
  type Restraint,
  type StiffnessStretch,
  type Support,
} from '../../src/statics/index.ts';

/** What a random elastic beam may have. */
export interface ElasticChoice {
  /** Stiffnesses of bars and springs lie between 1 / ratio and ratio times what is usual. */
  readonly ratio: number;
  /** Whether feet move and temperatures bend. */
  readonly movements: boolean;
}

/** What a bar of the generator is usually as stiff as, N·m². */
export const usualStiffness = 2e7;

const cases = ['D', 'L'] as const;
const share = fc.integer({ min: 0, max: 997 }).map((n) => n / 997);
const inside = fc.integer({ min: 60, max: 940 }).map((n) => n / 1000);

/**
 * Random stable beams of degree 0 to 6 in bending: one to five spans with and without overhangs, ends and
 * inner supports of every type, hinges, steps of stiffness anywhere, springs, and loads of two cases.
 */
export function elasticBeam({
  ratio,
  movements,
}: ElasticChoice): fc.Arbitrary<BeamStructure> {
  const factor = fc
    .double({ min: -1, max: 1, noNaN: true })
    .map((power) => ratio ** power);
  return fc
    .record({
      spans: fc.array(fc.integer({ min: 4, max: 40 }), { minLength: 1, maxLength: 5 }),
      overhangs: fc.tuple(fc.constantFrom(0, 0, 3, 9), fc.constantFrom(0, 0, 4, 7)),
      origin: fc.constantFrom(0, 0, -3, 12.5),
      kinds: fc.array(supportKind, { minLength: 6, maxLength: 6 }),
      factors: fc.array(factor, { minLength: 12, maxLength: 12 }),
      hinges: fc.array(share, { maxLength: 3 }),
      steps: fc.array(share, { maxLength: 3 }),
      feet: fc.array(fc.constantFrom(0, 0, 0.01, -0.004), {
        minLength: 6,
        maxLength: 6,
      }),
      warm: fc.array(fc.tuple(share, share, fc.constantFrom(2e-3, -5e-4)), {
        maxLength: 2,
      }),
      loads: fc.array(loadSeed, { minLength: 1, maxLength: 6 }),
    })
    .map((seed) => build(seed, movements))
    .filter((structure) => {
      const { stable, redundants } = determinacy(structure);
      return stable && redundants <= 7;
    });
}

const supportKind = fc.constantFrom(
  'roller',
  'roller',
  'roller',
  'fixed',
  'guide',
  'inclined',
  'spring',
  'sprung fixing',
  'inclined spring',
  'pin',
);

type Kind = typeof supportKind extends fc.Arbitrary<infer T> ? T : never;

const loadSeed = fc.record({
  kind: fc.constantFrom('point' as const, 'distributed' as const, 'couple' as const),
  case: fc.constantFrom(...cases),
  from: inside,
  to: inside,
  sizes: fc.tuple(
    fc.integer({ min: -40, max: 40 }),
    fc.integer({ min: -40, max: 40 }),
    fc.constantFrom(0, 0, 7),
  ),
});

interface Seed {
  readonly spans: readonly number[];
  readonly overhangs: readonly [number, number];
  readonly origin: number;
  readonly kinds: readonly Kind[];
  readonly factors: readonly number[];
  readonly hinges: readonly number[];
  readonly steps: readonly number[];
  readonly feet: readonly number[];
  readonly warm: readonly (readonly [number, number, number])[];
  readonly loads: readonly (typeof loadSeed extends fc.Arbitrary<infer T>
    ? T
    : never)[];
}

function restraintsOf(kind: Kind, factor: number, span: number): readonly Restraint[] {
  const alongX: Restraint = { kind: 'force', direction: [1, 0] };
  const alongY: Restraint = { kind: 'force', direction: [0, 1] };
  const leaning: Restraint = { kind: 'force', direction: [0.6, 0.8] };
  const moment: Restraint = { kind: 'moment' };
  const lift = (factor * usualStiffness) / span ** 3;
  const turn = (factor * usualStiffness) / span;
  switch (kind) {
    case 'roller':
      return [alongY];
    case 'pin':
      return [alongX, alongY];
    case 'fixed':
      return [alongX, alongY, moment];
    case 'guide':
      return [alongX, moment];
    case 'inclined':
      return [leaning];
    case 'inclined spring':
      return [{ ...leaning, stiffness: lift }];
    case 'spring':
      return [{ ...alongY, stiffness: lift }];
    case 'sprung fixing':
      return [alongY, { ...moment, stiffness: turn }];
  }
}

function build(seed: Seed, movements: boolean): BeamStructure {
  const { origin, spans, overhangs, factors } = seed;
  const supportsAt = [origin + overhangs[0]];
  for (const span of spans) supportsAt.push(supportsAt.at(-1)! + span / 2);
  const end = supportsAt.at(-1)! + overhangs[1];
  const at = (place: number): number => origin + place * (end - origin);
  const apart = (x: number, from: readonly number[]): boolean =>
    from.every((other) => Math.abs(other - x) > 1e-3 * (end - origin));
  const hinges: number[] = [];
  for (const x of seed.hinges.map(at))
    if (apart(x, [...hinges, ...supportsAt, origin, end])) hinges.push(x);
  const steps: number[] = [];
  for (const x of seed.steps.map(at).sort((a, b) => a - b))
    if (apart(x, [...steps, origin, end])) steps.push(x);
  const stations = [...new Set([origin, ...supportsAt, ...hinges, end])].sort(
    (a, b) => a - b,
  );
  const points = stations.map((x, index) => ({ name: `P${index}`, x }));
  const nameOf = (x: number): string => points.find((point) => point.x === x)!.name;
  const supports = supportsAt.map((x, index): Support => {
    const restraints = restraintsOf(seed.kinds[index]!, factors[index]!, spans[0]! / 2);
    const foot = seed.feet[index]!;
    const settled = restraints.map((restraint): Restraint => {
      if (!movements || foot === 0) return restraint;
      const part = restraint.kind === 'moment' ? 0.1 : restraint.direction[1];
      if (part === 0) return restraint;
      return { ...restraint, settlements: [{ case: 'D', value: foot * part }] };
    });
    return { point: nameOf(x), x, type: 'roller', restraints: settled };
  });
  return {
    kind: 'beam',
    points,
    supports,
    hinges: hinges.map((x) => ({ point: nameOf(x), x })),
    loads: seed.loads.map((load, index) => asLoad(load, index, at)),
    cases,
    stiffness: [origin, ...steps].map((from, index): StiffnessStretch => ({
      from,
      to: steps[index] ?? end,
      EI: usualStiffness * factors[6 + index]!,
    })),
    curvatures: movements
      ? seed.warm.flatMap((one, index) => asCurvature(one, index, at))
      : [],
  };
}

function asCurvature(
  [a, b, curvature]: Seed['warm'][number],
  index: number,
  at: (share: number) => number,
): readonly FreeCurvature[] {
  const [from, to] = [at(Math.min(a, b)), at(Math.max(a, b))];
  return b === a ? [] : [{ id: `T${index}`, case: 'D', from, to, curvature }];
}

function asLoad(
  { kind, case: of, from, to, sizes }: Seed['loads'][number],
  index: number,
  at: (share: number) => number,
): Load {
  const head = { id: `q${index}`, case: of };
  const [a, b, along] = sizes.map((size) => size * 1000) as [number, number, number];
  if (kind === 'couple') return { ...head, kind, x: at(from), m: a };
  if (kind === 'point' || from === to)
    return { ...head, kind: 'point', x: at(from), fx: along, fy: a };
  const [start, end] = [at(Math.min(from, to)), at(Math.max(from, to))];
  return { ...head, kind, from: start, to: end, x1: along, y1: a, x2: along, y2: b };
}
