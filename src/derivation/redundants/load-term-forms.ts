import {
  minus,
  number,
  plus,
  power,
  product,
  quotient,
  sum,
  type Expression,
} from '../../equation/index.ts';
import type { SpanLoad } from '../../statics/index.ts';

/** A load seen from the support at the far end of its span: what stands in its formula, in symbols or in numbers. */
export interface SeenLoad {
  readonly load: SpanLoad;
  /** Its size, without a sign: a force, a couple, the resultant of a spread load. */
  readonly size: Expression;
  /** The intensity of a spread load, where the formula may speak of it. */
  readonly intensity?: Expression;
  /** Its distance from the far support, or those of the ends of its stretch. */
  readonly near: Expression;
  readonly far: Expression;
  /** Length of the span. */
  readonly length: Expression;
  readonly isFromStart: boolean;
  readonly isWhole: boolean;
}

const square = (of: Expression): Expression => power(of, 2);

/**
 * The load term 6Aā/L of one load, without its sign: A the area of its moment diagram on simple
 * supports, ā the arm of the area's centroid from the far support.
 * — Forces, couples, uniform loads over a stretch and triangles over the whole span as tabulated by
 * MATHalino, factors for the three-moment equation; triangles over a stretch from ∫ q s (L² − s²) ds / L,
 * which gives all of them.
 */
export function loadTermForm(seen: SeenLoad): Expression {
  const { load, size, near, length: L } = seen;
  switch (load.kind) {
    case 'force':
      return quotient(product(size, near, sum(square(L), minus(square(near)))), L);
    case 'couple':
      return quotient(
        product(size, sum(product(number(3), square(near)), minus(square(L)))),
        L,
      );
    case 'uniform':
      return uniformForm(seen);
    case 'triangle':
      return triangleForm(seen, load.greater === 'to');
  }
}

function uniformForm(seen: SeenLoad): Expression {
  const { size, intensity, near: c, far: d, length: L, isFromStart, isWhole } = seen;
  if (isWhole)
    return quotient(
      intensity === undefined
        ? product(size, square(L))
        : product(intensity, power(L, 3)),
      number(4),
    );
  const under = product(number(4), L);
  const twice = plus(product(number(2), square(L)));
  if (isFromStart)
    return quotient(product(size, d, sum(twice, minus(square(d)))), under);
  return quotient(
    product(size, sum(c, d), sum(twice, minus(square(c)), minus(square(d)))),
    under,
  );
}

function triangleForm(seen: SeenLoad, isGreaterFar: boolean): Expression {
  const { size, intensity, near: c, far: d, length: L, isFromStart, isWhole } = seen;
  if (isWhole && intensity !== undefined)
    return isGreaterFar
      ? quotient(product(number(2), intensity, power(L, 3)), number(15))
      : quotient(product(number(7), intensity, power(L, 3)), number(60));
  // From the end where the triangle is nothing to its greater end.
  const [p, q] = isGreaterFar ? [c, d] : [d, c];
  const mean = (): Expression => sum(p, product(number(2), q));
  const cubes = (): Expression =>
    sum(
      power(p, 3),
      product(number(2), square(p), q),
      product(number(3), p, square(q)),
      product(number(4), power(q, 3)),
    );
  // Two fractions, which a line can be broken between.
  if (!isFromStart)
    return sum(
      quotient(product(size, L, mean()), number(3)),
      minus(quotient(product(size, cubes()), product(number(10), L))),
    );
  const under = product(number(30), L);
  return isGreaterFar
    ? quotient(
        product(
          number(2),
          size,
          d,
          sum(product(number(5), square(L)), minus(product(number(3), square(d)))),
        ),
        product(number(15), L),
      )
    : quotient(
        product(
          size,
          d,
          sum(product(number(10), square(L)), minus(product(number(3), square(d)))),
        ),
        under,
      );
}
