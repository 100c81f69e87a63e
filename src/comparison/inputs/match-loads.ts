import { assign } from './assign.ts';
import type { LoadItem, Trait } from './load-item.ts';
import { samePlace, sameStretch, type Place } from './places.ts';
import { sameValue } from './value.ts';

/** Which loads of two states of a member are the same, and which came or went. */
export interface MatchedLoads {
  /** Pairs in the earlier order; those in which nothing differs are left out. */
  readonly pairs: readonly { readonly earlier: LoadItem; readonly later: LoadItem }[];
  readonly removed: readonly LoadItem[];
  readonly added: readonly LoadItem[];
}

/**
 * What a difference costs. One that stands alone is always cheaper than a load taken away and another
 * put there; two of the heavier ones are not, unless a note says that it is the same load.
 */
const costs = {
  value: 1.6,
  place: 1.6,
  subject: 2.6,
  trait: 1,
  about: 0.4,
  /** Taken off where both carry one note. */
  sameNote: 1.4,
  /** Added by how far a value or a place went, so that of equal loads the nearer is taken. */
  distance: 0.4,
  /** A load without a partner. */
  alone: 1.6,
} as const;

/** Pairs the loads of two states of a member at the least cost; equal ones first. */
export function matchLoads(
  earlier: readonly LoadItem[],
  later: readonly LoadItem[],
  length: number,
): MatchedLoads {
  const tolerance = 1e-9 * length;
  const open = [...later];
  const left = earlier.filter((item) => {
    const place = open.findIndex((other) => isSame(item, other, tolerance));
    if (place < 0) return true;
    open.splice(place, 1);
    return false;
  });
  const table = left.map((item) => open.map((other) => costOf(item, other, length)));
  const found = assign(table, costs.alone);
  const partner = (row: number): LoadItem | undefined => {
    const column = found[row];
    return column === undefined ? undefined : open[column];
  };
  const taken = new Set(found);
  return {
    pairs: left.flatMap((item, row) => {
      const other = partner(row);
      return other === undefined ? [] : [{ earlier: item, later: other }];
    }),
    removed: left.filter((_, row) => partner(row) === undefined),
    added: open.filter((_, column) => !taken.has(column)),
  };
}

/** True where two loads say the same, where they stand included. */
export function samePlaces(
  one: readonly Place[],
  other: readonly Place[],
  tolerance: number,
): boolean {
  const [from, to] = one;
  const [otherFrom, otherTo] = other;
  if (from === undefined || otherFrom === undefined) return from === otherFrom;
  if (to === undefined || otherTo === undefined)
    return to === otherTo && samePlace(from, otherFrom, tolerance);
  return sameStretch([from, to], [otherFrom, otherTo], tolerance);
}

function isSame(one: LoadItem, other: LoadItem, tolerance: number): boolean {
  return (
    one.kind === other.kind &&
    one.subject === other.subject &&
    samePlaces(one.places, other.places, tolerance) &&
    sameValue(one.value, other.value) &&
    differing(one.traits, other.traits) + differing(one.about, other.about) === 0
  );
}

function costOf(one: LoadItem, other: LoadItem, length: number): number {
  if (one.kind !== other.kind) return Infinity;
  const isThere = samePlaces(one.places, other.places, 1e-9 * length);
  const cost =
    (one.subject === other.subject ? 0 : costs.subject) +
    (isThere ? 0 : costs.place + costs.distance * farness(one, other, length)) +
    (sameValue(one.value, other.value)
      ? 0
      : costs.value + costs.distance * unlikeness(one, other)) +
    costs.trait * differing(one.traits, other.traits) +
    costs.about * differing(one.about, other.about);
  return Math.max(0.01, cost - (hasSameNote(one, other) ? costs.sameNote : 0));
}

function differing(one: readonly Trait[], other: readonly Trait[]): number {
  return one.filter(({ value }, place) => !sameValue(value, other[place]?.value))
    .length;
}

function hasSameNote(one: LoadItem, other: LoadItem): boolean {
  const note = one.about[0]?.value;
  return note !== undefined && sameValue(note, other.about[0]?.value);
}

/** How far apart two loads stand, as a share of the member, at most 1. */
function farness(one: LoadItem, other: LoadItem, length: number): number {
  const apart = one.places.map(({ x }, place) =>
    Math.abs(x - (other.places[place]?.x ?? x)),
  );
  return Math.min(1, Math.max(0, ...apart) / length);
}

/** By how much two sizes differ, as a share of the greater, at most 1. */
function unlikeness({ value }: LoadItem, { value: other }: LoadItem): number {
  if (value.kind !== 'quantities' || other.kind !== 'quantities') return 1;
  const shares = value.of.map(({ si }, place) => {
    const against = other.of[place]?.si ?? 0;
    const greater = Math.max(Math.abs(si), Math.abs(against));
    return greater > 0 ? Math.abs(si - against) / greater : 0;
  });
  return Math.min(1, Math.max(0, ...shares));
}
