import {
  countIn,
  displayUnit,
  formatFeetInches,
  formatNumber,
  quantity,
  quantityText,
  sameDimension,
  type GivenQuantity,
} from '../../units/index.ts';

/** What an input says, in a form in which two of them compare by meaning. */
export type Value =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'claim'; readonly holds: boolean }
  /** Names in any order. */
  | { readonly kind: 'set'; readonly items: readonly string[] }
  | {
      readonly kind: 'quantities';
      readonly of: readonly GivenQuantity[];
      /**
       * `to`: from one to the other along a stretch, told once where both are one; `and`: each told;
       * `bounds`: two and two, the least and the greatest of each.
       */
      readonly joined: 'to' | 'and' | 'bounds';
      /** True where it is taken from elsewhere, so that its change is told there. */
      readonly isTaken?: boolean;
    };

/** Two numbers that differ by less than this share are one number, written differently. */
const share = 1e-12;

/** True where two numbers are one but for the last digits of a conversion. */
export function sameNumber(one: number, other: number): boolean {
  return Math.abs(one - other) <= share * Math.max(Math.abs(one), Math.abs(other));
}

/** True where two quantities are one, in whatever units they are written. */
export function sameQuantity(one: GivenQuantity, other: GivenQuantity): boolean {
  return sameDimension(one.dimension, other.dimension) && sameNumber(one.si, other.si);
}

/** True where two inputs say the same. */
export function sameValue(one: Value | undefined, other: Value | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  if (one.kind === 'number' && other.kind === 'number')
    return sameNumber(one.value, other.value);
  if (one.kind === 'quantities' && other.kind === 'quantities')
    return sameQuantities(one, other);
  if (one.kind === 'set' && other.kind === 'set')
    return sorted(one.items) === sorted(other.items);
  return one.kind === other.kind && valueText(one) === valueText(other);
}

type Quantities = Extract<Value, { kind: 'quantities' }>;

function sameQuantities(one: Quantities, other: Quantities): boolean {
  if (one.isTaken === true && other.isTaken === true) return true;
  return (
    one.of.length === other.of.length &&
    one.of.every((size, place) => {
      const against = other.of[place];
      return against !== undefined && sameQuantity(size, against);
    })
  );
}

/** An input as a person would write it, with its unit. */
export function valueText(value: Value): string {
  switch (value.kind) {
    case 'text':
      return settled(value.text);
    case 'number':
      return numberText(value.value);
    case 'claim':
      return value.holds ? 'yes' : 'no';
    case 'set':
      return value.items.length === 0 ? 'none' : value.items.join(', ');
    case 'quantities':
      return quantitiesText(value);
  }
}

function quantitiesText({ of, joined }: Quantities): string {
  if (joined === 'and') return of.map(givenText).join(', ');
  const pairs = of.flatMap((from, place) =>
    place % 2 === 0 ? [{ from, to: of[place + 1] ?? from }] : [],
  );
  return pairs
    .map(({ from, to }) =>
      sameQuantity(from, to)
        ? givenText(from)
        : `${givenText(from)} to ${givenText(to)}`,
    )
    .join(', ');
}

/** A quantity as it was written: `8.4 kip`, `12 ft 6 in`. */
export function givenText(of: GivenQuantity): string {
  const { text, compound, unit } = of;
  // Blanks that do not break belong on paper; these texts are searched and copied.
  return plain(quantityText(of, unit, { kind: 'given', text, compound }));
}

/** A station that no file spells out, in the unit and the manner of the lengths around it. */
export function stationText(x: number, like: GivenQuantity): string {
  const of = quantity(x, displayUnit('si', 'length'));
  if (like.compound) {
    const inches = formatFeetInches(of);
    return plain(inches.text);
  }
  const count = Number(countIn(of, like.unit).toPrecision(12));
  return givenText({ ...of, text: String(count), unit: like.unit, compound: false });
}

/** A plain number with the true minus sign. */
export function numberText(value: number): string {
  return formatNumber(Number(value.toPrecision(12)), {
    kind: 'given',
    text: String(Number(value.toPrecision(12))),
    compound: false,
  }).text;
}

const plain = (text: string): string => text.replace(/[\u00a0\u202f]/gu, ' ');
const settled = (text: string): string => text.trim().replace(/\s+/gu, ' ');
const sorted = (items: readonly string[]): string => [...items].sort().join('\n');
