import type { MemberResults } from '../../results/index.ts';
import { tolerance } from './figures.ts';

/**
 * True where two states of a member have the same figures under the same entries, to the tolerance's
 * share of the greatest on the member in the same unit. Titles, sheets and how far sums are from
 * zero do not count.
 */
export function sameFigures(one: MemberResults, other: MemberResults): boolean {
  const [mine, yours] = [figuresOf(one), figuresOf(other)];
  const scales = new Map<string, number>();
  for (const { unit, value } of [...mine.values(), ...yours.values()])
    scales.set(unit, Math.max(Math.abs(value), scales.get(unit) ?? 0));
  return (
    mine.size === yours.size &&
    [...mine].every(([path, { value, unit }]) => {
      const against = yours.get(path);
      if (against?.unit !== unit) return false;
      return Math.abs(value - against.value) <= tolerance * (scales.get(unit) ?? 0);
    })
  );
}

interface Leaf {
  readonly value: number;
  /** Unit, or the text itself where it is no number. */
  readonly unit: string;
}

/** Every figure of a member by its path; texts are figures of nothing that have to be equal. */
function figuresOf(member: MemberResults): ReadonlyMap<string, Leaf> {
  const counted =
    'results' in member
      ? { results: member.results, checks: member.checks, statics: member.statics }
      : { error: member.error.code };
  return new Map(leavesOf(counted, ''));
}

function leavesOf(value: unknown, path: string): readonly (readonly [string, Leaf])[] {
  if (typeof value === 'number') return [[path, { value, unit: lastOf(path) }]];
  if (typeof value !== 'object' || value === null)
    return [[path, { value: 0, unit: String(value) }]];
  const own = figureIn(value);
  const inner = Object.entries(value).filter(
    ([key]) =>
      !isPlace(key) && (own === undefined || (key !== 'value' && key !== 'unit')),
  );
  return [
    ...(own === undefined ? [] : [[path, own] as const]),
    ...inner.flatMap(([key, part]) => leavesOf(part, `${path}.${key}`)),
  ];
}

function figureIn(value: object): Leaf | undefined {
  return 'value' in value &&
    'unit' in value &&
    typeof value.value === 'number' &&
    typeof value.unit === 'string'
    ? { value: value.value, unit: value.unit }
    : undefined;
}

// Where an extreme stands can hang by a hair where two places tie; its size cannot.
const isPlace = (key: string): boolean => key === 'at' || key === 'arrangement';
const lastOf = (path: string): string => path.slice(path.lastIndexOf('.') + 1);
