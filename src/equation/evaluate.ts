import {
  dimension,
  divideDimensions,
  multiplyDimensions,
  powerOfDimension,
  sameButAngle,
  type Dimension,
  type Quantity,
} from '../units/index.ts';
import { gaussStations } from './gauss-stations.ts';
import type { Call, Expression, Figure, Integral, Sum, Symbol } from './expression.ts';
import { symbolKey } from './symbol-key.ts';

/** What symbols stand for, by symbolKey. */
export type SymbolValues = ReadonlyMap<string, Quantity>;

/** A table of what symbols stand for. */
export function symbolValues(
  pairs: Iterable<readonly [symbol: Symbol, value: Quantity]>,
): SymbolValues {
  return new Map(Array.from(pairs, ([symbol, value]) => [symbolKey(symbol), value]));
}

/**
 * The exact value of an expression; a function of x is looked up by its symbol. A symbol without a
 * value, a heading (`ΣM_A` has no value of its own), a sum of unlike dimensions, a sine of anything but an
 * angle: a programmer's mistake, a RangeError. A bare zero may stand in any sum, a radian for a plain number.
 */
export function evaluate(
  expression: Expression,
  values: SymbolValues = new Map<string, Quantity>(),
): Quantity {
  const { si, dimension: of } = evaluateWith(expression, values, (f) => f.quantity);
  // A product such as −1 × 0 is no minus zero.
  return { si: si + 0, dimension: of };
}

/** The value of an expression whose figures are read by a function of the caller's, such as one that takes them as printed. */
export function evaluateWith(
  expression: Expression,
  values: SymbolValues,
  read: (figure: Figure) => Quantity,
): Quantity {
  const valueOf = (part: Expression): Quantity => evaluateWith(part, values, read);
  switch (expression.kind) {
    case 'figure':
      return read(expression);
    case 'name':
    case 'function-of':
      return lookUp(expression.symbol, values);
    case 'sum':
      return sumOf(expression, valueOf);
    case 'product':
      return expression.factors.map(valueOf).reduce(multiply, pure(1));
    case 'quotient':
      return divide(valueOf(expression.over), valueOf(expression.under));
    case 'power':
      return raise(valueOf(expression.base), expression.exponent);
    case 'bracket':
      return step(valueOf(expression.of), expression.exponent);
    case 'call':
      return applyCall(expression.of, valueOf(expression.argument));
    case 'integral':
      return integrate(expression, values, read);
    case 'sum-of':
      throw new RangeError('the heading of a sum has no value of its own');
  }
}

function pure(si: number): Quantity {
  return { si, dimension: dimension({}) };
}

/** The value of a symbol; one that has none is a RangeError. */
export function lookUp<T>(symbol: Symbol, values: ReadonlyMap<string, T>): T {
  const value = values.get(symbolKey(symbol));
  if (value === undefined) {
    throw new RangeError(`${symbolKey(symbol)} has no value`);
  }
  return value;
}

function multiply(a: Quantity, b: Quantity): Quantity {
  return { si: a.si * b.si, dimension: multiplyDimensions(a.dimension, b.dimension) };
}

function divide(over: Quantity, under: Quantity): Quantity {
  return {
    si: over.si / under.si,
    dimension: divideDimensions(over.dimension, under.dimension),
  };
}

function raise(base: Quantity, exponent: number): Quantity {
  return {
    si: base.si ** exponent,
    dimension: powerOfDimension(base.dimension, exponent),
  };
}

// A singularity function: nothing left of its station, the power from it on.
function step(of: Quantity, exponent: number): Quantity {
  const raised = raise(of, exponent);
  return of.si < 0 ? { ...raised, si: 0 } : raised;
}

function sumOf(sum: Sum, valueOf: (part: Expression) => Quantity): Quantity {
  const terms = sum.terms.map(({ sign, of }) => ({ sign, value: valueOf(of) }));
  const like = terms.find(({ value }) => !isBareZero(value))?.value;
  if (like === undefined) return terms[0]?.value ?? pure(0);
  const unlike = terms.find(
    ({ value }) => !isBareZero(value) && !sameButAngle(value.dimension, like.dimension),
  );
  if (unlike !== undefined) throw new RangeError('a sum of unlike dimensions');
  const si = terms.reduce((total, { sign, value }) => total + sign * value.si, 0);
  return { si, dimension: like.dimension };
}

function isBareZero({ si, dimension: of }: Quantity): boolean {
  return si === 0 && isPure(of);
}

function isPure(of: Dimension): boolean {
  return of.angle === 0 && sameButAngle(of, dimension({}));
}

function applyCall(of: Call['of'], argument: Quantity): Quantity {
  if (of === 'sqrt') return raise(argument, 0.5);
  if (of === 'abs') return { ...argument, si: Math.abs(argument.si) };
  if (!sameButAngle(argument.dimension, dimension({}))) {
    throw new RangeError(`the ${of} of something that is no angle`);
  }
  const functions = { sin: Math.sin, cos: Math.cos, tan: Math.tan } as const;
  return pure(functions[of](argument.si));
}

function integrate(
  { from, to, of, variable }: Integral,
  values: SymbolValues,
  read: (figure: Figure) => Quantity,
): Quantity {
  const lower = evaluateWith(from, values, read);
  const upper = evaluateWith(to, values, read);
  const along = isBareZero(lower) ? upper.dimension : lower.dimension;
  const half = (upper.si - lower.si) / 2;
  const middle = (upper.si + lower.si) / 2;
  const heights = gaussStations.map(([place, weight]) => {
    const station = { si: middle + half * place, dimension: along };
    const inside = new Map([...values, [symbolKey(variable), station]]);
    const height = evaluateWith(of, inside, read);
    return { ...height, si: height.si * weight };
  });
  const si = heights.reduce((total, height) => total + height.si, 0) * half;
  const [first] = heights;
  return {
    si,
    dimension: multiplyDimensions(first?.dimension ?? dimension({}), along),
  };
}
