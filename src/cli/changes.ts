import type { BeamResults, MemberResults, Results } from '../index.ts';

/** Figures nearer to one another than this share of their size count as the same. */
const sameWithin = 1e-9;

/** What a member of this run is to the run before, in a few words: `as before`, `new`, `moment +5.6 %`. */
export function changeOf(
  now: MemberResults,
  before: MemberResults | undefined,
): string {
  if (before === undefined) return 'new';
  if ('error' in now) return 'error' in before ? '' : 'had results before';
  if ('error' in before) return 'had no results before';
  const moment = difference('moment', greatestMoment(before), greatestMoment(now));
  const reaction = difference(
    'reaction',
    greatestReaction(before),
    greatestReaction(now),
  );
  const governing = [moment, reaction].filter((one) => one !== '');
  if (governing.length > 0) return governing.join(', ');
  return isSame(figuresOf(before), figuresOf(now))
    ? 'as before'
    : 'other figures changed';
}

/** The run before by the marks of its members; undefined where it cannot be set beside this one. */
export function membersBefore(
  before: Results | undefined,
  now: Results,
): ReadonlyMap<string, MemberResults> | undefined {
  if (before?.project.units !== now.project.units) return undefined;
  return new Map(before.members.map((member) => [member.mark, member]));
}

/** What is compared: every entry and check, less the stations, which are there only where they are asked for. */
function figuresOf({ results, checks }: BeamResults): unknown {
  const entries = Object.entries(results).map(
    ([mark, { reactions, shear, moment, deflection }]) =>
      [mark, { reactions, shear, moment, deflection }] as const,
  );
  return { checks, results: Object.fromEntries(entries) };
}

/** The governing moment by size, signed. */
function greatestMoment({ envelope }: BeamResults): number {
  const { max, min } = envelope.moment;
  return Math.abs(max.value) >= Math.abs(min.value) ? max.value : min.value;
}

/** The vertical reaction of greatest size of all entries, signed. */
function greatestReaction({ results }: BeamResults): number {
  return Object.values(results)
    .flatMap(({ reactions }) => reactions.flatMap(({ y }) => verticals(y)))
    .reduce((best, one) => (Math.abs(one) > Math.abs(best) ? one : best), 0);
}

/** The values of a vertical reaction: one, or its greatest and its least. */
function verticals(
  y: BeamResults['results'][string]['reactions'][number]['y'],
): readonly number[] {
  if (y === null) return [];
  return 'max' in y ? [y.max.value, y.min.value] : [y.value];
}

/** `moment +5.6 %`; nothing where it stayed, and words where it came from 0 or turned. */
function difference(what: string, before: number, now: number): string {
  if (isSame(before, now)) return '';
  if (before === 0) return `${what} was 0`;
  if (before * now < 0) return `${what} turned`;
  const share = (Math.abs(now) / Math.abs(before) - 1) * 100;
  const text = Math.abs(share).toFixed(1);
  const sign = share < 0 ? '−' : '+';
  return text === '0.0' ? `${what} ${sign}less than 0.1 %` : `${what} ${sign}${text} %`;
}

/** Whether two parts of results hold the same figures under the same names. */
function isSame(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return (
      Math.abs(one - other) <= sameWithin * Math.max(Math.abs(one), Math.abs(other))
    );
  if (!isObject(one) || !isObject(other)) return one === other;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => Object.hasOwn(other, name) && isSame(one[name], other[name]))
  );
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
