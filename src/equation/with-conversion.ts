import {
  divideUnits,
  expandUnit,
  pureUnit,
  sameDimension,
  unitOf,
  unitText,
  type Unit,
  type UnitFactor,
} from '../units/index.ts';
import { exactly, figure, power, product, quotient } from './build.ts';
import type { Expression, Figure } from './expression.ts';
import { resultUnit } from './result-unit.ts';

/** One kind of unit to be turned into another, so many times. */
interface Conversion {
  readonly figure: Figure;
  /** Positive: multiply; negative: divide. */
  readonly power: number;
}

/**
 * The expression with the conversion figures that bring it into a unit: times (12 in/ft)³ where ft³ should
 * be in³, divided by 1000 lb/kip where lb should be kip. The larger unit always stands below, so that the
 * figure is greater than one. Unlike dimensions, and expressions with symbols, are a RangeError.
 */
export function withConversion(expression: Expression, unit: Unit): Expression {
  const worked = resultUnit(expression);
  if (worked === undefined) throw new RangeError('a symbol has no unit to convert');
  const conversions = conversionsFor(worked, unit);
  const above = conversions.filter((c) => c.power > 0).map(written);
  const below = conversions.filter((c) => c.power < 0).map(written);
  const over = above.length === 0 ? expression : product(expression, ...above);
  return below.length === 0 ? over : quotient(over, product(...below));
}

function written({ figure: of, power: raised }: Conversion): Expression {
  const size = Math.abs(raised);
  return size === 1 ? of : power(of, size);
}

// What is left of from/to, paired symbol by symbol: each ft above with an in below.
function conversionsFor(from: Unit, to: Unit): readonly Conversion[] {
  let left = divideUnits(expandUnit(from), expandUnit(to));
  const conversions: Conversion[] = [];
  while (left.factors.length > 0) {
    const pair = findPair(left.factors);
    if (pair === undefined) {
      throw new RangeError(`${unitText(from, 'data')} is no ${unitText(to, 'data')}`);
    }
    const [above, below] = pair;
    const times = Math.min(above.power, -below.power);
    conversions.push(conversion(above.symbol, below.symbol, times));
    const gone = unitOf([
      { symbol: above.symbol, power: times },
      { symbol: below.symbol, power: -times },
    ]);
    left = divideUnits(left, gone);
  }
  return conversions;
}

function findPair(
  factors: readonly UnitFactor[],
): readonly [above: UnitFactor, below: UnitFactor] | undefined {
  for (const above of factors.filter((f) => f.power > 0)) {
    const below = factors.find(
      (f) =>
        f.power < 0 &&
        sameDimension(one(f.symbol).dimension, one(above.symbol).dimension),
    );
    if (below !== undefined) return [above, below];
  }
  return undefined;
}

function one(symbol: string): Unit {
  return unitOf([{ symbol, power: 1 }]);
}

function conversion(above: string, below: string, times: number): Conversion {
  const isLarger = one(above).inSi > one(below).inSi;
  const [larger, smaller] = isLarger ? [above, below] : [below, above];
  return {
    figure: conversionFigure(larger, smaller),
    power: isLarger ? times : -times,
  };
}

/** Conversion figures with more digits than this print rounded. */
const mostDigits = 8;

/** How many of the smaller unit make the larger one, as a figure: 12 in/ft, 1000 lb/kip. */
function conversionFigure(larger: string, smaller: string): Figure {
  const unit = unitOf([
    { symbol: smaller, power: 1 },
    { symbol: larger, power: -1 },
  ]);
  const count = Number((one(larger).inSi / one(smaller).inSi).toPrecision(13));
  if (String(count).length <= mostDigits) return exactly(count, unit);
  const worth = { si: count * unit.inSi, dimension: pureUnit.dimension };
  return figure(worth, unit, { kind: 'figures', count: mostDigits - 1 });
}
