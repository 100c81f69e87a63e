import type { InputChange } from '../comparison.ts';
import type { Entry, Field } from './entry.ts';
import { sameValue, valueText } from './value.ts';

/** What differs between two lists of entries: changed and removed in the earlier order, then added in the later. */
export function diffEntries(
  earlier: readonly Entry[],
  later: readonly Entry[],
): readonly InputChange[] {
  const before = keyed(earlier);
  const after = keyed(later);
  const gone = [...before].filter(([key]) => !after.has(key));
  const come = [...after].filter(([key]) => !before.has(key));
  const pairs = rekeyedPairs(gone, come);
  const paired = new Set([...pairs].flatMap(([one, other]) => [one, other]));
  return [
    ...[...before.values()].flatMap((entry) => {
      const other = pairs.get(entry);
      if (other !== undefined) return [rekeyedChange(entry, other)];
      return [];
    }),
    ...[...before].flatMap(([key, entry]) => {
      if (paired.has(entry)) return [];
      const other = after.get(key);
      return other === undefined
        ? [wholeChange('removed', entry)]
        : diffEntry(entry, other);
    }),
    ...come.flatMap(([, entry]) =>
      paired.has(entry) ? [] : [wholeChange('added', entry)],
    ),
  ];
}

/** What differs between two states of one entry. */
export function diffEntry(earlier: Entry, later: Entry): readonly InputChange[] {
  if (earlier.sort !== later.sort) {
    const change = stand(later, 'changed');
    // What is told by name alone says the same of itself before and after.
    if (earlier.whole === later.whole) return [change];
    return [
      {
        ...change,
        ...(earlier.whole === undefined ? {} : { from: earlier.whole }),
        ...(later.whole === undefined ? {} : { to: later.whole }),
      },
    ];
  }
  return later.fields.flatMap((field, place) =>
    diffField(earlier.fields[place] ?? { what: field.what }, field, later),
  );
}

/** What differs between two states of one field of an entry. */
export function diffField(
  earlier: Field,
  later: Field,
  entry: Pick<Entry, 'part' | 'member'>,
): readonly InputChange[] {
  if (sameValue(earlier.value, later.value)) return [];
  const kind =
    earlier.value === undefined
      ? 'added'
      : later.value === undefined
        ? 'removed'
        : 'changed';
  return [
    {
      ...stand({ ...entry, what: later.what }, kind),
      ...(earlier.value === undefined ? {} : { from: valueText(earlier.value) }),
      ...(later.value === undefined ? {} : { to: valueText(later.value) }),
    },
  ];
}

/** Entries of which only the key changed: each fits one of the other side, and no other fits it. */
export function rekeyedPairs(
  gone: readonly (readonly [string, Entry])[],
  come: readonly (readonly [string, Entry])[],
): ReadonlyMap<Entry, Entry> {
  const fits = (one: Entry, other: Entry): boolean =>
    one.rekeyed !== undefined &&
    other.rekeyed?.kind === one.rekeyed.kind &&
    one.part === other.part &&
    one.sort === other.sort &&
    sameFields(one, other);
  const pairs = new Map<Entry, Entry>();
  for (const [, one] of gone) {
    const fitting = come.filter(([, other]) => fits(one, other));
    const [only] = fitting;
    if (only === undefined || fitting.length > 1) continue;
    const back = gone.filter(([, another]) => fits(another, only[1]));
    if (back.length === 1) pairs.set(one, only[1]);
  }
  return pairs;
}

function sameFields(one: Entry, other: Entry): boolean {
  return (
    one.fields.length === other.fields.length &&
    one.fields.every((field, place) =>
      sameValue(field.value, other.fields[place]?.value),
    )
  );
}

function rekeyedChange(earlier: Entry, later: Entry): InputChange {
  const { kind = 'renamed', what = earlier.what, name: from } = earlier.rekeyed ?? {};
  return {
    ...stand({ ...later, what }, kind),
    ...(from === undefined ? {} : { from }),
    ...(later.rekeyed === undefined ? {} : { to: later.rekeyed.name }),
  };
}

function wholeChange(kind: 'added' | 'removed', entry: Entry): InputChange {
  const side = kind === 'added' ? 'to' : 'from';
  return {
    ...stand(entry, kind),
    ...(entry.whole === undefined ? {} : { [side]: entry.whole }),
  };
}

function stand(
  { part, member, what }: Pick<Entry, 'part' | 'member' | 'what'>,
  kind: InputChange['kind'],
): Pick<InputChange, 'kind' | 'part' | 'member' | 'what'> {
  return { kind, part, ...(member === undefined ? {} : { member }), what };
}

// Two entries of one key (a design load that stands twice) are told apart by their order.
function keyed(entries: readonly Entry[]): ReadonlyMap<string, Entry> {
  const found = new Map<string, Entry>();
  for (const entry of entries) {
    let key = entry.key;
    for (let count = 2; found.has(key); count += 1) key = `${entry.key} ${count}`;
    found.set(key, entry);
  }
  return found;
}
