import { expandUnit } from '../units/index.ts';
import type { Expression, Figure } from './expression.ts';
import { mapParts } from './map-expression.ts';
import { meetsItsFactors } from './result-unit.ts';

/** One unit factor of one figure, counted in the numerator (positive) or the denominator of the whole. */
interface Occurrence {
  /** The figure, by its place in reading order. */
  readonly figure: number;
  readonly symbol: string;
  /** How often it counts: its own power times the power around. */
  readonly power: number;
  /** It cancels by so many at a time: the size of the power around. */
  readonly step: number;
}

/**
 * Marks the unit factors that cancel, ready to be struck through: in each product and quotient, ft against
 * ft, never ft against in. Terms of a sum are judged each by itself. A short name that meets its own
 * factors is written out first (65 psf times 8 ft: lb/ft² times ft). Feet and inches given together have
 * no unit of their own to strike, so their partner is not struck either.
 */
export function cancelUnits(expression: Expression): Expression {
  if (expression.kind === 'figure') return withCancelled(expression, []);
  if (!isGroup(expression)) return mapParts(expression, cancelUnits);
  const written = writeOutShortNames(expression);
  const struck = strike(occurrencesOf(written));
  return mapGroup(written, (leaf, place) =>
    leaf.kind === 'figure'
      ? withCancelled(leaf, struck.get(place) ?? [])
      : cancelUnits(leaf),
  );
}

function isGroup(expression: Expression): boolean {
  const { kind } = expression;
  return kind === 'product' || kind === 'quotient' || hasWholePower(expression);
}

function hasWholePower(expression: Expression): boolean {
  return expression.kind === 'power' && Number.isInteger(expression.exponent);
}

function withCancelled(figure: Figure, cancelled: readonly string[]): Figure {
  const { kind, quantity, unit, print } = figure;
  const plain: Figure = { kind, quantity, unit, print };
  return cancelled.length === 0 ? plain : { ...plain, cancelled };
}

// Changes the leaves of a group (what is no product, quotient or whole power), each told its place in reading order.
function mapGroup(
  group: Expression,
  change: (leaf: Expression, place: number) => Expression,
): Expression {
  let place = 0;
  const visit = (part: Expression): Expression =>
    isGroup(part) ? mapParts(part, visit) : change(part, place++);
  return visit(group);
}

function occurrencesOf(group: Expression): readonly Occurrence[] {
  const found: Occurrence[] = [];
  let place = 0;
  const visit = (part: Expression, around: number): void => {
    if (part.kind === 'product')
      part.factors.forEach((factor) => visit(factor, around));
    else if (part.kind === 'quotient') {
      visit(part.over, around);
      visit(part.under, -around);
    } else if (part.kind === 'power' && hasWholePower(part)) {
      visit(part.base, around * part.exponent);
    } else {
      const figure = place++;
      if (part.kind !== 'figure' || isCompound(part) || around === 0) return;
      for (const { symbol, power } of part.unit.factors) {
        found.push({ figure, symbol, power: power * around, step: Math.abs(around) });
      }
    }
  };
  visit(group, 1);
  return found;
}

function isCompound({ print }: Figure): boolean {
  return print.kind === 'given' && print.compound;
}

function writeOutShortNames(group: Expression): Expression {
  const symbols = new Set(occurrencesOf(group).map(({ symbol }) => symbol));
  return mapGroup(group, (leaf) => {
    if (leaf.kind !== 'figure' || isCompound(leaf)) return leaf;
    const meets = leaf.unit.factors.some((f) => meetsItsFactors(f.symbol, symbols));
    return meets ? { ...leaf, unit: expandUnit(leaf.unit) } : leaf;
  });
}

// Which symbols of which figure are struck, one entry a power of the figure's own.
function strike(
  occurrences: readonly Occurrence[],
): ReadonlyMap<number, readonly string[]> {
  const struck = new Map<number, string[]>();
  for (const symbol of new Set(occurrences.map((o) => o.symbol))) {
    const same = occurrences.filter((o) => o.symbol === symbol);
    for (const [occurrence, count] of balance(same)) {
      const list = struck.get(occurrence.figure) ?? [];
      list.push(...Array<string>(count).fill(symbol));
      struck.set(occurrence.figure, list);
    }
  }
  return struck;
}

// As many above as below: each side gives up what it can in its steps, and the greater yield is lowered
// until both agree.
function balance(
  same: readonly Occurrence[],
): readonly (readonly [occurrence: Occurrence, count: number])[] {
  const above = same.filter(({ power }) => power > 0);
  const below = same.filter(({ power }) => power < 0);
  let wanted = Math.min(available(above), available(below));
  while (wanted > 0) {
    const up = take(above, wanted);
    const down = take(below, wanted);
    if (up.taken === down.taken) return [...up.counts, ...down.counts];
    wanted = Math.min(up.taken, down.taken);
  }
  return [];
}

function available(side: readonly Occurrence[]): number {
  return side.reduce((total, { power }) => total + Math.abs(power), 0);
}

function take(
  side: readonly Occurrence[],
  wanted: number,
): {
  readonly taken: number;
  readonly counts: readonly (readonly [occurrence: Occurrence, count: number])[];
} {
  const counts: (readonly [Occurrence, number])[] = [];
  let taken = 0;
  for (const occurrence of [...side].sort((a, b) => b.step - a.step)) {
    const { power, step } = occurrence;
    const count = Math.floor(Math.min(Math.abs(power), wanted - taken) / step);
    if (count > 0) counts.push([occurrence, count]);
    taken += count * step;
  }
  return { taken, counts };
}
