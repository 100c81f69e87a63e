import { unitOf } from './unit-algebra.ts';
import type { Unit, UnitFactor } from './unit.ts';
import { findUnit } from './unit-table.ts';
import { unitTokens, type UnitToken } from './unit-tokens.ts';

/** Where a text stops being a unit, as offsets into it; `end` equals `start` where something is missing at the end. */
export interface UnitFault {
  readonly kind: 'unknown-unit' | 'malformed';
  readonly start: number;
  readonly end: number;
}

/** A unit read, or where reading stopped. */
export type ParsedUnit =
  | { readonly unit: Unit; readonly fault?: undefined }
  | { readonly unit?: undefined; readonly fault: UnitFault };

/** No unit of the trade has a greater power. */
const greatestPower = 12;

/**
 * Reads a unit: symbols and their aliases multiplied by a blank, a dot, a star or a hyphen (`kip ft`, `kN·m`,
 * `kip-ft`), powers by `^`, superscripts or digits (`in^4`, `mm²`, `mm2`), division by a slash (`kip ft/rad`,
 * `1/K`, `kN/(m rad)`). After a slash comes one factor or a group in parentheses; nothing is multiplied
 * after that, because `kN/m rad` reads two ways. A blank text is the unit of a pure number.
 */
export function parseUnit(text: string): ParsedUnit {
  const tokens = unitTokens(text);
  const factors: UnitFactor[] = [];
  let place = tokens[0]?.kind === 'one' ? 1 : 0;
  while (place < tokens.length) {
    const isDivision = tokens[place]?.kind === 'slash';
    if (!isDivision && place > 0) return faultAt(tokens[place], text);
    const part = isDivision
      ? readDivisor(tokens, place + 1)
      : readProduct(tokens, place);
    if (part.fault !== undefined) return faultAt(tokens[part.fault], text);
    const sign = isDivision ? -1 : 1;
    factors.push(...part.factors.map((f) => ({ ...f, power: f.power * sign })));
    place = part.next;
  }
  return { unit: unitOf(factors) };
}

function faultAt(token: UnitToken | undefined, text: string): ParsedUnit {
  if (token === undefined) {
    return { fault: { kind: 'malformed', start: text.length, end: text.length } };
  }
  const { kind, start, end } = token;
  const isUnknown = kind === 'factor' && findUnit(token.symbol) === undefined;
  return isUnknown
    ? { fault: { kind: 'unknown-unit', start, end: start + token.symbol.length } }
    : { fault: { kind: 'malformed', start, end } };
}

/** Factors read and the token after them, or the number of the token that does not fit. */
type Part =
  | {
      readonly factors: readonly UnitFactor[];
      readonly next: number;
      readonly fault?: undefined;
    }
  | { readonly fault: number };

function readDivisor(tokens: readonly UnitToken[], start: number): Part {
  if (tokens[start]?.kind !== 'open') {
    const factor = factorOf(tokens[start]);
    return factor === undefined
      ? { fault: start }
      : { factors: [factor], next: start + 1 };
  }
  const inside = readProduct(tokens, start + 1);
  if (inside.fault !== undefined) return inside;
  return tokens[inside.next]?.kind === 'close'
    ? { ...inside, next: inside.next + 1 }
    : { fault: inside.next };
}

function readProduct(tokens: readonly UnitToken[], start: number): Part {
  const factors: UnitFactor[] = [];
  let next = start;
  do {
    // Between factors a sign may stand or only a blank.
    if (factors.length > 0 && tokens[next]?.kind === 'times') next += 1;
    const factor = factorOf(tokens[next]);
    if (factor === undefined) return { fault: next };
    factors.push(factor);
    next += 1;
  } while (tokens[next]?.kind === 'times' || tokens[next]?.kind === 'factor');
  return { factors, next };
}

function factorOf(token: UnitToken | undefined): UnitFactor | undefined {
  if (token?.kind !== 'factor') return undefined;
  const entry = findUnit(token.symbol);
  const { power } = token;
  const isSound = power !== 0 && Math.abs(power) <= greatestPower;
  return entry !== undefined && isSound ? { symbol: entry.symbol, power } : undefined;
}
