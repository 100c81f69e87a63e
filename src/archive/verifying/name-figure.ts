import { isObject, itemsOf, keyOf, textOf, type Json } from './json.ts';

/** An item of a list with what it is called. */
export interface NamedItem {
  /** For the user: `reaction A`, `check deflection D+L`. Unique in its list, and the same for the same thing in another. */
  readonly name: string;
  readonly item: Json;
}

/** Names of lists whose items are told apart by what they say, not by their place. */
const namers: Readonly<Record<string, (item: Json) => string | undefined>> = {
  reactions: (item) => after('reaction', textOf(item, 'point')),
  checks: nameOfCheck,
  closure: (item) => {
    const [result, equation] = [textOf(item, 'result'), textOf(item, 'equation')];
    return result === undefined || equation === undefined
      ? undefined
      : `closure of ${result}, ${equation}`;
  },
  forces: (item) => after('bar', textOf(item, 'bar')),
  joints: (item) => after('joint', textOf(item, 'joint')),
  members: (item) => after('member', textOf(item, 'mark') ?? textOf(item, 'member')),
};

/** What one item of a list whose order is its meaning is called; else the list's own key. */
const singulars: Readonly<Record<string, string>> = {
  stations: 'station',
  spans: 'span',
  trains: 'train',
  axles: 'axle',
  lane: 'stretch of lane',
};

/** The items of the list under a key, by meaning where they have one, by their place where not. */
export function namedItems(key: string, list: Json | undefined): readonly NamedItem[] {
  const seen = new Map<string, number>();
  return itemsOf(list).map((item, index) => {
    const known = namers[key]?.(item);
    const told = known ?? `${singulars[key] ?? key} ${index + 1}`;
    // Two of one name are told apart by their order: nothing else does.
    const times = (seen.get(told) ?? 0) + 1;
    seen.set(told, times);
    const name = times === 1 ? told : `${told} (${times})`;
    return { name, item };
  });
}

/** What the value under a key is called, behind what stands around it: `result L, moment` and `max` are `result L, moment max`. */
export function nameBelow(around: string, key: string): string {
  if (key === 'max' || key === 'min') return `${around} ${key}`;
  const name = names[key] ?? key.replaceAll('_', ' ');
  return around === '' ? name : `${around}, ${name}`;
}

/** Where the key of the format is no word for people. */
const names: Readonly<Record<string, string>> = {
  at: 'place',
  result: 'governing entry',
  envelopes: 'envelope by purpose',
  passes: 'whether it passes',
};

/** A value as a difference tells it; undefined stays so. */
export function wordsOf(value: Json | undefined): string | undefined {
  if (value === undefined) return undefined;
  if (value === null) return 'none';
  if (isObject(value)) {
    const [number, unit] = [keyOf(value, 'value'), textOf(value, 'unit')];
    return typeof number === 'number' && unit !== undefined
      ? figureWords(number, unit)
      : 'given';
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' || typeof value === 'number' ? `${value}` : 'given';
}

/** A number with its unit; bare where it is a pure number. */
export function figureWords(number: number | string, unit: string): string {
  return unit === '' || unit === '1' ? String(number) : `${number} ${unit}`;
}

/** Two numbers with no more digits than it takes to tell them apart, one to spare, five at least. */
export function tellApart(one: number, other: number): readonly [string, string] {
  for (let digits = 4; digits < 15; digits += 1)
    if (one.toPrecision(digits) !== other.toPrecision(digits))
      return [shortened(one, digits + 1), shortened(other, digits + 1)];
  return [String(one), String(other)];
}

const shortened = (number: number, digits: number): string =>
  String(Number(number.toPrecision(digits)));

function nameOfCheck(item: Json): string | undefined {
  const name = textOf(item, 'name');
  if (name === undefined) return undefined;
  const words = ['check', name, textOf(item, 'combination'), textOf(item, 'span')];
  return words.filter((word) => word !== undefined && word !== '').join(' ');
}

function after(word: string, name: string | undefined): string | undefined {
  return name === undefined ? undefined : `${word} ${name}`;
}
