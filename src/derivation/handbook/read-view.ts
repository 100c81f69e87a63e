import type { CaseView } from './case-view.ts';
import type { Amount } from './handbook-case.ts';
import type { LoadAmount, LoadAt, LoadStretch } from './total-loads.ts';

/** True where two stations, lengths or loads of a view are one, judged by a size. */
export function same(one: number, other: number, size: number): boolean {
  return Math.abs(one - other) <= 1e-9 * size;
}

/** A length for a letter. */
export function length(si: number): Amount {
  return { what: 'length', si };
}

/** A view of nothing but so many stretches of load, all downward. */
export function onlyStretches(
  { loads, supports }: CaseView,
  count: number,
): readonly LoadStretch[] | undefined {
  const { stretches, points, couples } = loads;
  const isOnly = points.length === 0 && couples.length === 0 && isAtRest(supports);
  const isDown = stretches.every(({ start, end }) => {
    const margin = 1e-9 * Math.max(Math.abs(start.si), Math.abs(end.si));
    return start.si >= -margin && end.si >= -margin && start.si + end.si > 0;
  });
  return isOnly && isDown && stretches.length === count ? stretches : undefined;
}

/** A view of nothing but so many forces, all downward. */
export function onlyPoints(
  { loads, supports }: CaseView,
  count: number,
): readonly LoadAt[] | undefined {
  const { stretches, points, couples } = loads;
  const isOnly = stretches.length === 0 && couples.length === 0 && isAtRest(supports);
  const isDown = points.every(({ amount }) => amount.si > 0);
  return isOnly && isDown && points.length === count ? points : undefined;
}

/** A view of nothing but so many couples. */
export function onlyCouples(
  { loads, supports }: CaseView,
  count: number,
): readonly LoadAt[] | undefined {
  const { stretches, points, couples } = loads;
  const isOnly = stretches.length === 0 && points.length === 0 && isAtRest(supports);
  return isOnly && couples.length === count ? couples : undefined;
}

/** How far the n-th support goes down where nothing else happens to the beam. */
export function onlySettlement(
  { loads, supports }: CaseView,
  index: number,
): Amount | undefined {
  const { stretches, points, couples } = loads;
  if (stretches.length + points.length + couples.length > 0) return undefined;
  const si = supports[index]?.settlement ?? 0;
  const others = supports.filter((_, i) => i !== index);
  return si > 0 && isAtRest(others) ? { what: 'settlement', si } : undefined;
}

function isAtRest(supports: CaseView['supports']): boolean {
  return supports.every(({ settlement }) => settlement === 0);
}

/** The one uniform load from one station to another, where that is all there is. */
export function onlyUniform(
  view: CaseView,
  from: number,
  to: number,
): Amount | undefined {
  const [stretch] = onlyStretches(view, 1) ?? [];
  return stretch !== undefined && isUniform(stretch) && covers(view, stretch, from, to)
    ? intensity(view, stretch.start)
    : undefined;
}

/** A triangular load from nothing at one station to its greatest at another. */
export function isTriangle(
  view: CaseView,
  stretch: LoadStretch,
  empty: number,
  full: number,
): boolean {
  const [none, most] =
    empty < full ? [stretch.start, stretch.end] : [stretch.end, stretch.start];
  return (
    covers(view, stretch, Math.min(empty, full), Math.max(empty, full)) &&
    same(none.si, 0, most.si)
  );
}

/** True for one intensity all along. */
export function isUniform({ start, end }: LoadStretch): boolean {
  return same(start.si, end.si, Math.max(Math.abs(start.si), Math.abs(end.si)));
}

/** True where a stretch reaches from one station to another. */
export function covers(
  view: CaseView,
  stretch: LoadStretch,
  from: number,
  to: number,
): boolean {
  return same(stretch.from, from, view.length) && same(stretch.to, to, view.length);
}

/** An intensity of distributed load for a letter. */
export function intensity({ loads }: CaseView, of: LoadAmount): Amount {
  const ids = loads.stretches.flatMap(({ start, end }) => [
    ...idsOf(start),
    ...idsOf(end),
  ]);
  return { what: 'force-per-length', of, shared: new Set(ids).size > 1 };
}

/** A force for a letter; the same for all of several points. */
export function force(point: LoadAt, ...equals: readonly LoadAt[]): Amount {
  const ids = [point, ...equals].flatMap(({ amount }) => idsOf(amount));
  return { what: 'force', of: point.amount, shared: new Set(ids).size > 1 };
}

/** A couple for a letter. */
export function couple({ amount }: LoadAt): Amount {
  return { what: 'moment', of: amount, shared: idsOf(amount).length > 1 };
}

function idsOf({ terms }: LoadAmount): readonly string[] {
  return terms.map(({ id }) => id);
}

/** Forces of one size at given stations, where that is all there is. */
export function equalPoints(
  view: CaseView,
  ...stations: readonly number[]
): Amount | undefined {
  const points = onlyPoints(view, stations.length);
  const [first, ...rest] = points ?? [];
  if (points === undefined || first === undefined) return undefined;
  const isEqual = points.every(
    ({ at, amount }, i) =>
      same(at, stations[i] ?? NaN, view.length) &&
      same(amount.si, first.amount.si, first.amount.si),
  );
  return isEqual ? force(first, ...rest) : undefined;
}

/** True where two forces are of one size. */
export function areEqual(one: LoadAt, other: LoadAt): boolean {
  return same(one.amount.si, other.amount.si, one.amount.si);
}

/** The lengths between neighbouring supports. */
export function spansOf({ supports }: CaseView): readonly number[] {
  return supports.slice(1).map(({ at }, i) => at - (supports[i]?.at ?? 0));
}

/** The one length of all spans, where they are equal. */
export function equalSpan(view: CaseView): number | undefined {
  const [first, ...rest] = spansOf(view);
  return first !== undefined && rest.every((one) => same(one, first, view.length))
    ? first
    : undefined;
}
