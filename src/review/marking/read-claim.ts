import type { CutPart, Sum } from '../../statics/index.ts';
import { stationOf, type MarkingContext } from '../marking-context.ts';
import { readLength } from '../names/read-length.ts';

/** A sum as a step claims it: which, and what counts positive (1 for right, up; −1 for left, down). */
export interface SumClaim {
  readonly sum: Sum;
  /** The point's name or the station as written; absent for forces. */
  readonly about?: string;
  /** Sense of a sum of forces by its own direction; absent for moments. */
  readonly sense?: 1 | -1;
}

const directions: Readonly<Record<string, { along: 'x' | 'y'; sense: 1 | -1 }>> = {
  right: { along: 'x', sense: 1 },
  left: { along: 'x', sense: -1 },
  up: { along: 'y', sense: 1 },
  down: { along: 'y', sense: -1 },
};

/** Reads `forces up` or `moments about A`; a text says why it cannot be. */
export function readSumClaim(context: MarkingContext, text: string): SumClaim | string {
  const written = text.trim().replace(/\s+/gu, ' ');
  const forces = /^(?:sum of )?forces (\S+)$/u.exec(written)?.[1];
  if (forces !== undefined) {
    const found = Object.hasOwn(directions, forces) ? directions[forces] : undefined;
    return found === undefined
      ? `\`${forces}\` is no direction: write forces right, left, up or down`
      : { sum: { kind: 'forces', along: found.along }, sense: found.sense };
  }
  const about = /^(?:sum of )?moments (?:about|at) (.+)$/u.exec(written)?.[1];
  if (about === undefined)
    return 'a sum is `forces right|left|up|down` or `moments about` a point';
  const x = stationOf(context, about, readLength);
  return x === undefined
    ? `there is no point ${about} on this member`
    : { sum: { kind: 'moments', about: x }, about };
}

/**
 * Reads `A to H` as the piece between two places, in every way that counts what stands at a cut
 * to one piece or the other; nothing written is the whole member. A text says why it cannot be.
 */
export function readPart(
  context: MarkingContext,
  text: string | undefined,
): readonly CutPart[] | string {
  if (text === undefined) return [{}];
  const written = text.trim().replace(/\s+/gu, ' ');
  const ends = /^(?:from )?(.+) to (.+)$/u.exec(written);
  const sided = /^(left|right) of (.+)$/u.exec(written);
  const places = ends?.slice(1) ?? (sided === null ? [] : [sided[2] ?? '']);
  const stations = places.map((place) => stationOf(context, place, readLength));
  if (places.length === 0 || stations.includes(undefined))
    return `\`${written}\` is no part of this member: write it as \`A to H\``;
  const [a = 0, b] = stations;
  if (b === undefined)
    return sided?.[1] === 'left'
      ? partsBetween(context, undefined, a)
      : partsBetween(context, a);
  return partsBetween(context, Math.min(a, b), Math.max(a, b));
}

const sides = ['left', 'right'] as const;

function partsBetween(
  { structure }: MarkingContext,
  from: number | undefined,
  to?: number,
): readonly CutPart[] {
  const first = structure.points[0]?.x ?? 0;
  const last = structure.points.at(-1)?.x ?? 0;
  // An end of the member is no cut.
  const starts = from === undefined || from <= first ? [undefined] : sides;
  const ends = to === undefined || to >= last ? [undefined] : [...sides].reverse();
  return starts.flatMap((start) =>
    ends.map((end) => ({
      ...(start === undefined || from === undefined
        ? {}
        : { from: { x: from, side: start } }),
      ...(end === undefined || to === undefined ? {} : { to: { x: to, side: end } }),
    })),
  );
}
