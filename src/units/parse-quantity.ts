import { sameDimension, type Dimension } from './dimension.ts';
import { dimensions } from './dimension-names.ts';
import {
  explainAfterNumber,
  explainFeetInches,
  explainMissingNumber,
} from './explain-number.ts';
import { explainBareNumber, explainDimension, explainUnit } from './explain-unit.ts';
import { parseUnit } from './parse-unit.ts';
import { quantity, type GivenQuantity } from './quantity.ts';
import { quoted, type QuantityProblem } from './quantity-problem.ts';
import { readFeetInches } from './read-feet-inches.ts';
import { readNumber } from './read-number.ts';
import { pureUnit, unitOf } from './unit-algebra.ts';
import type { Unit } from './unit.ts';

/** A quantity read, or what is wrong with the text. */
export type ParsedQuantity =
  | {
      readonly quantity: GivenQuantity;
      /** True where a plus sign was written: a station that counts from the one before. */
      readonly plus: boolean;
      readonly problem?: undefined;
    }
  | { readonly problem: QuantityProblem; readonly quantity?: undefined };

/** Beyond this size, either way, products of a few quantities would leave the range of a double. */
const greatest = 1e60;

/** No quantity of the trade takes more characters. */
const longest = 200;

/**
 * Reads a quantity as people write it: `8.4 kip`, `-1,250 lb`, `36.9e6 mm^4`, `12 ft 6 1/2 in`, `12'-6 1/2"`,
 * `+4 ft`, `6 1/2 in`, `12e-6 1/K`, `300 deg`. A minus before feet and inches takes away the whole. A bare 0
 * fits anywhere and takes `unitOfZero`, by default the SI unit of what is expected. What `quantityText` prints
 * is read back. A mistake is a value that names its place in the text; nothing throws.
 */
export function parseQuantity(
  text: string,
  expected?: Dimension,
  unitOfZero?: Unit,
): ParsedQuantity {
  const trimmed = text.trim();
  const sign = /^[+\-−]/.exec(trimmed)?.[0] ?? '';
  const body = trimmed.slice(sign.length).trimStart();
  const read = body.length > longest ? tooLong(body) : readBody(body, expected);
  if (read.problem !== undefined) {
    const at = text.length - text.trimStart().length + trimmed.length - body.length;
    const { start, end } = read.problem;
    return { problem: { ...read.problem, start: start + at, end: end + at } };
  }
  return {
    quantity: finished(read, sign === '-' || sign === '−', unitOfZero),
    plus: sign === '+',
  };
}

/** What was read, before its sign. */
interface Reading {
  /** In `unit`. */
  readonly count: number;
  readonly text: string;
  readonly unit: Unit;
  readonly compound: boolean;
  /** True for a zero without a unit. */
  readonly bareZero: boolean;
  readonly problem?: undefined;
}

interface Refusal {
  readonly problem: QuantityProblem;
}

function finished(
  { count, text, unit, compound, bareZero }: Reading,
  negative: boolean,
  unitOfZero: Unit | undefined,
): GivenQuantity {
  const shown = bareZero ? (unitOfZero ?? unit) : unit;
  const { dimension } = shown;
  if (count === 0) return { si: 0, dimension, text: '0', unit: shown, compound: false };
  const { si } = quantity(count, unit);
  return negative
    ? { si: -si, dimension, text: `−${text}`, unit, compound }
    : { si, dimension, text, unit, compound };
}

function readBody(body: string, expected: Dimension | undefined): Reading | Refusal {
  const length = readFeetInches(body);
  if (length !== undefined) {
    const { feet: count, text } = length;
    const reading = { count, text, unit: foot, compound: true, bareZero: false };
    return judged(reading, body, expected);
  }
  const slip = explainFeetInches(body);
  if (slip !== undefined) return { problem: slip };
  return readNumberAndUnit(body, expected);
}

function readNumberAndUnit(
  body: string,
  expected: Dimension | undefined,
): Reading | Refusal {
  const number = readNumber(body);
  if (number === undefined) return { problem: explainMissingNumber(body) };
  const slip = explainAfterNumber(body, number.end);
  if (slip !== undefined) return { problem: slip };
  const { value: count, text, end } = number;
  if (/[1-9]/.test(number.mantissa) ? !isWorkable(count) : count !== 0) {
    return { problem: outOfRange(body, count) };
  }
  const rest = body.slice(end);
  const base = { count, text, compound: false };
  if (rest.trim() === '') return readBare(base, body, expected);
  const parsed = parseUnit(asUnit(rest));
  if (parsed.fault !== undefined) {
    const { kind, start, end: last } = parsed.fault;
    const fault = { kind, start: start + end, end: Math.min(last + end, body.length) };
    return { problem: explainUnit(body, fault, expected) };
  }
  return judged({ ...base, unit: parsed.unit, bareZero: false }, body, expected);
}

// The marks of feet and inches stand for their units where nothing else does.
function asUnit(rest: string): string {
  if (/^\s*['′’]$/.test(rest)) return rest.replace(/['′’]/, 'ft');
  return /^\s*(?:["″”]|'')$/.test(rest) ? rest.replace(/["″”]|''/, 'in') : rest;
}

function readBare(
  base: Omit<Reading, 'unit' | 'bareZero'>,
  body: string,
  expected: Dimension = dimensions.pure,
): Reading | Refusal {
  if (base.count === 0) return { ...base, unit: siUnit(expected), bareZero: true };
  return sameDimension(expected, dimensions.pure)
    ? { ...base, unit: pureUnit, bareZero: false }
    : { problem: explainBareNumber(body, expected) };
}

function judged(
  reading: Reading,
  body: string,
  expected: Dimension | undefined,
): Reading | Refusal {
  const { count, unit } = reading;
  if (expected !== undefined && !sameDimension(unit.dimension, expected)) {
    return { problem: explainDimension(body, unit.dimension, expected) };
  }
  const isSound = count === 0 || isWorkable(count * unit.inSi);
  return isSound ? reading : { problem: outOfRange(body, count) };
}

function isWorkable(value: number): boolean {
  const size = Math.abs(value);
  return size <= greatest && size >= 1 / greatest;
}

function outOfRange(body: string, value: number): QuantityProblem {
  const way = Math.abs(value) < 1 ? 'small' : 'great';
  return {
    kind: 'not-finite',
    start: 0,
    end: body.length,
    message: `${quoted(body)} is too ${way} to be worked with`,
    hints: ['check the power of ten'],
  };
}

function tooLong(body: string): Refusal {
  return {
    problem: {
      kind: 'malformed',
      start: 0,
      end: body.length,
      message: `"${quoted(body)}" is too long for a quantity`,
      hints: ['write a number and its unit, such as 8.4 kip'],
    },
  };
}

const foot: Unit = unitOf([{ symbol: 'ft', power: 1 }]);

function siUnit({ force, length, temperature, angle }: Dimension): Unit {
  return unitOf([
    { symbol: 'N', power: force },
    { symbol: 'm', power: length },
    { symbol: 'K', power: temperature },
    { symbol: 'rad', power: angle },
  ]);
}
