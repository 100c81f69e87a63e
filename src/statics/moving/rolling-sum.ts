import type { RigidGroup } from './formations.ts';
import { ordinateAt, placeOf, type Approach, type SignedLine } from './signed-line.ts';

/** A place where a group of axles may give most: an axle on a breakpoint of the line, or a turning point between. */
export interface Stand {
  /** Station of the group's first axle. */
  readonly position: number;
  readonly approach: Approach;
  /** Σ P η, in the sense sought. */
  readonly value: number;
  /** Tells stands of one kind from others while the line changes little: which axle is where. */
  readonly key: number;
  /** The axle that stands on a breakpoint, and where that is; absent at a turning point between. */
  readonly on?: { readonly axle: number; readonly x: number };
}

/**
 * All places where Σ P η(position + offset) may be greatest as a group rolls along: between two positions
 * at which an axle passes a breakpoint of the line, the sum is one polynomial, which is greatest
 * at an end or where it turns. Nothing is stepped through, so nothing is missed.
 */
export function standsOf(line: SignedLine, group: RigidGroup): readonly Stand[] {
  const marks = positionsOf(line, group);
  const stands: Stand[] = [];
  const approaches: readonly Approach[] = line.leaps ? [-1, 0, 1] : [0];
  for (const [place, mark] of marks.entries()) {
    const { position, key, on } = mark;
    for (const approach of approaches)
      stands.push({
        position,
        approach,
        value: sumAt(line, group, position, approach),
        key: 4 * key + approach + 1,
        on,
      });
    const next = marks[place + 1];
    if (next === undefined || line.isStraight) continue;
    for (const turning of turningPoints(line, group, [position, next.position]))
      stands.push({
        position: turning,
        approach: 0,
        value: sumAt(line, group, turning, 0),
        key: 4 * key + 3,
      });
  }
  return stands;
}

/** The sum of what the axles of a group give. */
export function sumAt(
  line: SignedLine,
  { axles }: RigidGroup,
  position: number,
  approach: Approach,
): number {
  let sum = 0;
  for (const { size, offset } of axles)
    sum += size * ordinateAt(line, position + offset, approach);
  return sum;
}

interface Mark {
  readonly position: number;
  readonly key: number;
  readonly on: { readonly axle: number; readonly x: number };
}

/** Positions with an axle on a breakpoint, from left to right, those that are one only once. */
function positionsOf(
  { breakpoints, margin }: SignedLine,
  { axles }: RigidGroup,
): readonly Mark[] {
  const marks = axles.flatMap(({ index, offset }) =>
    breakpoints.map((x, place): Mark => ({
      position: x - offset,
      key: index * breakpoints.length + place,
      on: { axle: index, x },
    })),
  );
  marks.sort((one, other) => one.position - other.position);
  return marks.filter(
    ({ position }, index) =>
      index === 0 || position - (marks[index - 1]?.position ?? 0) > margin,
  );
}

/** Where the sum turns from rising to falling between two neighbouring positions. */
function turningPoints(
  line: SignedLine,
  { axles }: RigidGroup,
  [from, to]: readonly [number, number],
): readonly number[] {
  const middle = (from + to) / 2;
  let [a, b, c] = [0, 0, 0];
  for (const { size, offset } of axles) {
    const x = middle + offset;
    if (x <= line.start || x >= line.end) continue;
    const place = placeOf(line, x);
    const start = line.pieces[place]?.start ?? 0;
    const by = from + offset - start;
    const [s0 = 0, s1 = 0, s2 = 0] = line.slopes[place] ?? [];
    a += size * (s0 + by * (s1 + by * s2));
    b += size * (s1 + 2 * by * s2);
    c += size * s2;
  }
  return fallingRoots([a, b, c]).flatMap((s) =>
    s > 0 && s < to - from ? [from + s] : [],
  );
}

/** Where a + b s + c s² falls through zero: one place at most, and none where it is constant. */
function fallingRoots([a, b, c]: readonly [number, number, number]): readonly number[] {
  if (c === 0) return b < 0 ? [-a / b] : [];
  const under = b * b - 4 * a * c;
  if (under <= 0) return [];
  // The root at which the slope b + 2 c s is −√under, without taking nearly equal numbers apart.
  const root = Math.sqrt(under);
  return [b > 0 ? (-b - root) / (2 * c) : (-2 * a) / (b - root)];
}
