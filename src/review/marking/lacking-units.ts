import { parseQuantity } from '../../units/index.ts';
import { replaceWritten } from '../reading/replace-written.ts';
import type { Written, WrittenLine } from '../reading/written.ts';

/** A line whose bare numbers were given units, and which. */
export interface Mended {
  readonly line: WrittenLine;
  /** The numbers that lack a unit, with the one that was meant: `8.4 kip`. */
  readonly meant: readonly string[];
}

const units = {
  us: ['kip', 'ft', 'kip ft', 'lb', 'in', 'lb ft'],
  si: ['kN', 'm', 'kN m', 'N', 'mm', 'N m'],
} as const;

/** More bare numbers than this in a line are not guessed at. */
const mostBare = 3;

/** Every way of giving the bare numbers of a line units, made as it is asked for; none where it has no such number, or too many. */
export function* withUnits(line: WrittenLine): Generator<Mended> {
  const bare = line.links.flatMap(bareNumbers);
  if (bare.length === 0 || bare.length > mostBare) return;
  // The units of the line come first; a line in feet and kips is not mended in metres.
  const isMetric = /\b(?:k?N|m|mm|cm)\b/u.test(line.text);
  const systems = isMetric ? (['si', 'us'] as const) : (['us', 'si'] as const);
  for (const system of systems) {
    let ways: readonly (readonly (string | undefined)[])[] = [[]];
    while ((ways[0]?.length ?? 0) < bare.length)
      ways = ways.flatMap((way) =>
        [...units[system], undefined].map((unit) => [...way, unit]),
      );
    for (const way of ways) yield mended(line, bare, way);
  }
}

/** A number that a line holds. */
export type BareNumber = Extract<Written, { kind: 'number' }>;

function mended(
  line: WrittenLine,
  bare: readonly BareNumber[],
  way: readonly (string | undefined)[],
): Mended {
  const given = new Map<Written, Written>();
  const meant: string[] = [];
  for (const [index, number] of bare.entries()) {
    const unit = way[index];
    if (unit === undefined) continue;
    const text = `${line.text.slice(number.start, number.end).trim()} ${unit}`;
    const { quantity } = parseQuantity(text);
    if (quantity === undefined) continue;
    given.set(number, { ...number, quantity, isBare: false });
    meant.push(text);
  }
  return {
    line: {
      ...line,
      links: line.links.map((link) => replaceWritten(link, (part) => given.get(part))),
    },
    meant,
  };
}

/** The numbers of an expression, 0 aside, that stand without a unit. */
export function bareNumbers(of: Written): readonly BareNumber[] {
  switch (of.kind) {
    case 'number':
      return of.isBare && of.quantity.si !== 0 ? [of] : [];
    case 'sum':
      return of.terms.flatMap((term) => bareNumbers(term.of));
    case 'product':
      return of.factors.flatMap(bareNumbers);
    case 'quotient':
      return [...bareNumbers(of.over), ...bareNumbers(of.under)];
    case 'name':
    case 'power':
    case 'call':
      return [];
  }
}
