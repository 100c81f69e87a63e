import { countIn, formatQuantity, type Quantity } from '../units/index.ts';
import { gaussStations } from './gauss-stations.ts';
import { lookUp, type SymbolValues } from './evaluate.ts';
import type { Call, Expression, Figure, Integral } from './expression.ts';
import { symbolKey } from './symbol-key.ts';

/** A figure as a reader of the page takes it: the printed number in its unit. */
export function asPrinted(figure: Figure): Quantity {
  const printed = formatQuantity(figure.quantity, figure.unit, figure.print);
  return { si: printed.value * figure.unit.inSi, dimension: figure.quantity.dimension };
}

/**
 * Where the exact value of an expression may lie, as far as its printed figures tell, in SI units:
 * `middle` ± `half`. `scale` is what it would be were every term positive, to judge noise by.
 */
export interface PrintedRange {
  readonly middle: number;
  readonly half: number;
  readonly scale: number;
}

/**
 * The range of an expression from its printed figures: each computed one may be off by half a unit of its
 * last printed place, given ones by nothing; the halves are carried along as bounds, not as likelihoods
 * (interval arithmetic: R. E. Moore, Interval Analysis, 1966, ch. 2). Symbols take their exact values.
 */
export function printedRange(
  expression: Expression,
  values: SymbolValues,
): PrintedRange {
  const known = Array.from(values, ([key, { si }]) => [key, exact(si)] as const);
  return findRange(expression, new Map(known));
}

/** What symbols may be, by symbolKey. */
type Ranges = ReadonlyMap<string, PrintedRange>;

function findRange(expression: Expression, ranges: Ranges): PrintedRange {
  const rangeOf = (part: Expression): PrintedRange => findRange(part, ranges);
  switch (expression.kind) {
    case 'figure':
      return figureRange(expression);
    case 'name':
    case 'function-of':
      return lookUp(expression.symbol, ranges);
    case 'sum':
      return expression.terms
        .map(({ sign, of }) => scaled(rangeOf(of), sign))
        .reduce(add, exact(0));
    case 'product':
      return expression.factors.map(rangeOf).reduce(multiply, exact(1));
    case 'quotient':
      return divide(rangeOf(expression.over), rangeOf(expression.under));
    case 'power':
      return raise(rangeOf(expression.base), expression.exponent);
    case 'bracket':
      return step(rangeOf(expression.of), expression.exponent);
    case 'call':
      return applyCall(expression.of, rangeOf(expression.argument));
    case 'integral':
      return integrate(expression, ranges);
    case 'sum-of':
      throw new RangeError('the heading of a sum has no value of its own');
  }
}

function exact(value: number): PrintedRange {
  return { middle: value, half: 0, scale: Math.abs(value) };
}

function figureRange(figure: Figure): PrintedRange {
  const printed = formatQuantity(figure.quantity, figure.unit, figure.print);
  const middle = printed.value * figure.unit.inSi;
  const off = Math.abs(printed.value - countIn(figure.quantity, figure.unit));
  const half = figure.print.kind === 'given' ? off : printed.lastPlace / 2;
  return { middle, half: half * figure.unit.inSi, scale: Math.abs(middle) };
}

function scaled(range: PrintedRange, by: number): PrintedRange {
  const size = Math.abs(by);
  return {
    middle: range.middle * by,
    half: range.half * size,
    scale: range.scale * size,
  };
}

function add(a: PrintedRange, b: PrintedRange): PrintedRange {
  return {
    middle: a.middle + b.middle,
    half: a.half + b.half,
    scale: a.scale + b.scale,
  };
}

function multiply(a: PrintedRange, b: PrintedRange): PrintedRange {
  return {
    middle: a.middle * b.middle,
    half: Math.abs(a.middle) * b.half + Math.abs(b.middle) * a.half + a.half * b.half,
    scale: a.scale * b.scale,
  };
}

function divide(a: PrintedRange, b: PrintedRange): PrintedRange {
  const size = Math.abs(b.middle);
  const middle = a.middle / b.middle;
  const half =
    size > b.half ? (a.half + Math.abs(middle) * b.half) / (size - b.half) : Infinity;
  return { middle, half, scale: a.scale / size };
}

// The wider of the two sides: powers bend.
function raise(base: PrintedRange, exponent: number): PrintedRange {
  return bent(base, (value) => value ** exponent, base.scale ** exponent);
}

// Right of its station a power; a unit step that may stand on either side of it may be 0 or 1.
function step(of: PrintedRange, exponent: number): PrintedRange {
  const curve = (value: number): number => (value < 0 ? 0 : value ** exponent);
  return bent(of, curve, of.middle < 0 ? 0 : of.scale ** exponent);
}

function bent(
  range: PrintedRange,
  curve: (value: number) => number,
  scale: number,
): PrintedRange {
  const middle = curve(range.middle);
  const sides = [range.middle - range.half, range.middle + range.half]
    .map((end) => Math.abs(curve(end) - middle))
    .filter((side) => !Number.isNaN(side));
  return { middle, half: Math.max(0, ...sides), scale };
}

function applyCall(of: Call['of'], argument: PrintedRange): PrintedRange {
  switch (of) {
    case 'sqrt':
      return raise(argument, 0.5);
    case 'abs':
      return { ...argument, middle: Math.abs(argument.middle) };
    case 'sin':
      return { middle: Math.sin(argument.middle), half: argument.half, scale: 1 };
    case 'cos':
      return { middle: Math.cos(argument.middle), half: argument.half, scale: 1 };
    case 'tan':
      return bent(argument, Math.tan, Math.max(1, Math.abs(Math.tan(argument.middle))));
  }
}

// The stations of the rule move with the uncertain ends.
function integrate(integral: Integral, ranges: Ranges): PrintedRange {
  const { from, to, of, variable } = integral;
  const lower = findRange(from, ranges);
  const upper = findRange(to, ranges);
  const width = add(upper, scaled(lower, -1));
  return gaussStations
    .map(([place, weight]) => {
      const station = add(
        scaled(lower, (1 - place) / 2),
        scaled(upper, (1 + place) / 2),
      );
      const inside = new Map([...ranges, [symbolKey(variable), station]]);
      return scaled(multiply(findRange(of, inside), width), weight / 2);
    })
    .reduce(add, exact(0));
}
