import { formatQuantity, pureUnit, type Unit } from '../units/index.ts';
import { evaluate, evaluateWith, type SymbolValues } from './evaluate.ts';
import type { Expression } from './expression.ts';
import type { Link } from './links.ts';
import { asPrinted, printedRange } from './printed-range.ts';
import { resultUnit } from './result-unit.ts';
import type { RelationSign } from './statement.ts';

/** How far the two sides of a relation lie apart as printed, and how far they may; SI units. */
export interface Comparison {
  readonly agrees: boolean;
  readonly off: number;
  readonly allowed: number;
  /** The unit to state both in. */
  readonly unit: Unit;
}

/** Noise of double arithmetic, as a part of the sum of absolute terms. */
const noise = 1e-12;

/** Works both sides of a relation from the figures as printed and compares them. Unlike dimensions are a RangeError. */
export function comparePrinted(link: Link, values: SymbolValues): Comparison {
  const difference = differenceOf(link);
  // Evaluated for its exception: sides of unlike dimensions are a mistake of whoever built the line.
  evaluateWith(difference, values, asPrinted);
  const { middle, scale } = printedRange(difference, values);
  const unit = unitFor(link);
  if (isEquality(link.sign)) {
    const allowed = allowance(link, values) + noise * scale;
    const off = Math.abs(middle);
    // A lower part that may be zero as printed leaves everything open, which proves nothing.
    const agrees = Number.isFinite(allowed) && off <= allowed;
    return { agrees, off, allowed, unit };
  }
  const settled = (value: number): number =>
    Math.abs(value) <= noise * scale ? 0 : value;
  const exact = settled(evaluate(difference, values).si);
  const printed = settled(middle);
  const agrees = holds(link.sign, printed) && holds(link.sign, exact);
  const off = agrees ? 0 : Math.max(Math.abs(printed), Math.abs(exact));
  return { agrees, off, allowed: 0, unit };
}

// A bare zero has no unit to state anything in.
function unitFor({ from, to }: Link): Unit {
  const units = [resultUnit(to), resultUnit(from)];
  return (
    units.find((unit) => unit !== undefined && unit.factors.length > 0) ?? pureUnit
  );
}

/** True for the signs that state two sides to be equal. */
export function isEquality(sign: RelationSign): boolean {
  return sign === '=' || sign === '≈';
}

function differenceOf({ from, to }: Link): Expression {
  return {
    kind: 'sum',
    terms: [
      { sign: 1, of: from },
      { sign: -1, of: to },
    ],
  };
}

// One unit of the last printed place of a result; without one, what the rounding of both sides makes possible.
function allowance({ mode, from, to }: Link, values: SymbolValues): number {
  if (mode === 'equality' && to.kind === 'figure') {
    const { lastPlace } = formatQuantity(to.quantity, to.unit, to.print);
    if (lastPlace > 0) return lastPlace * to.unit.inSi;
  }
  return printedRange(from, values).half + printedRange(to, values).half;
}

function holds(sign: RelationSign, difference: number): boolean {
  switch (sign) {
    case '=':
    case '≈':
      return difference === 0;
    case '≠':
      return difference !== 0;
    case '<':
      return difference < 0;
    case '>':
      return difference > 0;
    case '≤':
      return difference <= 0;
    case '≥':
      return difference >= 0;
  }
}
