/*
 * Solves a straight beam by the singularity form of its moments, integrated twice: the reactions and two
 * constants are the unknowns, what each support holds and the closing of the diagrams are the equations.
 * Shares nothing with the program. Down, counterclockwise and metres as a sketch gives them; consistent units.
 */

/** A beam of one EI on supports that hold y, or y and the rotation. */
export interface PlainBeam {
  readonly length: number;
  readonly EI: number;
  readonly supports: readonly {
    readonly at: number;
    readonly holds: 'simple' | 'fixed';
    /** Downward. */
    readonly settlement?: number;
  }[];
  readonly loads: readonly PlainLoad[];
}

/** A force down, a load down straight from one intensity to another, or a couple counterclockwise. */
export type PlainLoad =
  | { readonly kind: 'point'; readonly at: number; readonly size: number }
  | { readonly kind: 'couple'; readonly at: number; readonly size: number }
  | {
      readonly kind: 'spread';
      readonly from: number;
      readonly to: number;
      readonly start: number;
      readonly end: number;
    };

/** What was found, asked by support and station. */
export interface BySingularities {
  readonly reactions: readonly number[];
  readonly shear: (x: number) => number;
  readonly moment: (x: number) => number;
  readonly deflection: (x: number) => number;
  readonly greatest: (what: 'shear' | 'moment' | 'deflection') => number;
  readonly least: (what: 'shear' | 'moment' | 'deflection') => number;
}

/** A term of the singularity form: `factor` ⟨x − at⟩ to `power` in the moment. */
interface Term {
  readonly at: number;
  readonly power: number;
  readonly factor: number;
}

export function bySingularities(beam: PlainBeam): BySingularities {
  const loads = beam.loads.flatMap(termsOf);
  const shapes = beam.supports.flatMap(({ at, holds }): Term[] => [
    { at, power: 1, factor: 1 },
    ...(holds === 'fixed' ? [{ at, power: 0, factor: -1 }] : []),
  ]);
  const size = shapes.length + 2;
  // Every condition: what the unknowns give, and what the loads leave to be made up.
  const rows: number[][] = [];
  const condition = (
    read: (terms: readonly Term[]) => number,
    line: number[],
    to: number,
  ) => rows.push([...shapes.map((one) => read([one])), ...line, to - read(loads)]);
  for (const { at, holds, settlement = 0 } of beam.supports) {
    condition((terms) => total(terms, at, 2), [1, at], -beam.EI * settlement);
    if (holds === 'fixed') condition((terms) => total(terms, at, 1), [0, 1], 0);
  }
  condition((terms) => total(terms, beam.length, 0), [0, 0], 0);
  condition((terms) => total(terms, beam.length, -1), [0, 0], 0);
  const found = solve(rows, size);
  const [c0 = 0, c1 = 0] = found.slice(shapes.length);
  const all = [
    ...shapes.map((one, i) => ({ ...one, factor: one.factor * found[i]! })),
    ...loads,
  ];
  const curves = {
    shear: (x: number) => total(all, x, -1),
    moment: (x: number) => total(all, x, 0),
    deflection: (x: number) => (total(all, x, 2) + c0 + c1 * x) / beam.EI,
  };
  const breaks = [...new Set([0, ...all.map(({ at }) => at), beam.length])].sort(
    (a, b) => a - b,
  );
  const extreme = (what: keyof typeof curves, sign: 1 | -1) =>
    sign *
    Math.max(
      ...breaks
        .slice(1)
        .map((to, i) => highest((x) => sign * curves[what](x), breaks[i]!, to)),
    );
  return {
    ...curves,
    reactions: shapes.flatMap(({ power }, i) => (power === 1 ? [found[i]!] : [])),
    greatest: (what) => extreme(what, 1),
    least: (what) => extreme(what, -1),
  };
}

function termsOf(load: PlainLoad): Term[] {
  if (load.kind === 'point') return [{ at: load.at, power: 1, factor: -load.size }];
  if (load.kind === 'couple') return [{ at: load.at, power: 0, factor: -load.size }];
  const { from, to, start, end } = load;
  const rise = (end - start) / (to - from);
  return [
    { at: from, power: 2, factor: -start / 2 },
    { at: from, power: 3, factor: -rise / 6 },
    { at: to, power: 2, factor: end / 2 },
    { at: to, power: 3, factor: rise / 6 },
  ];
}

/** The terms integrated so many times (−1: differentiated), at a station that counts as just right of itself. */
function total(terms: readonly Term[], x: number, times: number): number {
  return terms.reduce((sum, { at, power, factor }) => {
    const arm = x - at;
    const raised = power + times;
    if (arm < -1e-12 || raised < 0) return sum;
    let worth = factor;
    for (let n = power + 1; n <= raised; n += 1) worth /= n;
    if (times < 0) worth *= power;
    return sum + worth * (raised === 0 ? 1 : Math.max(0, arm) ** raised);
  }, 0);
}

function solve(rows: readonly (readonly number[])[], size: number): number[] {
  const m = rows.map((row) => [...row]);
  for (let i = 0; i < size; i += 1) {
    let pivot = i;
    for (let r = i; r < size; r += 1)
      if (Math.abs(m[r]![i]!) > Math.abs(m[pivot]![i]!)) pivot = r;
    [m[i], m[pivot]] = [m[pivot]!, m[i]!];
    for (let r = 0; r < size; r += 1) {
      if (r === i) continue;
      const share = m[r]![i]! / m[i]![i]!;
      for (let k = i; k <= size; k += 1) m[r]![k]! -= share * m[i]![k]!;
    }
  }
  return m.map((row, i) => row[size]! / row[i]!);
}

/** The highest value between two stations, both approached from inside: the best of many samples, then narrowed. */
function highest(f: (x: number) => number, from: number, to: number): number {
  const count = 48;
  // Brackets count just right of a station: the right end is left by a hair, which the value hardly feels.
  const inside = (share: number) => from + share * (to - from) * (1 - 1e-12);
  let best = 0;
  for (let i = 0; i <= count; i += 1)
    if (f(inside(i / count)) > f(inside(best / count))) best = i;
  let [a, b] = [Math.max(0, best - 1) / count, Math.min(count, best + 1) / count];
  for (let i = 0; i < 60; i += 1) {
    const third = (b - a) / 3;
    if (f(inside(a + third)) < f(inside(b - third))) a += third;
    else b -= third;
  }
  return Math.max(f(inside(0)), f(inside(1)), f(inside((a + b) / 2)));
}
