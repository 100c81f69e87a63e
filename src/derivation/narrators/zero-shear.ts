import {
  call,
  cancelUnits,
  name,
  number,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import type { Segment } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import { innerZeros } from '../shear-areas.ts';
import type { InternalStep } from '../steps.ts';
import { stationSymbol } from '../symbols.ts';
import { placeAtStation } from './places.ts';
import { figureIn, functionLine, unitOfDegree } from './segment-functions.ts';

/** Where the shear passes through 0 inside a segment: the moment is greatest or least there. */
export function zeroShear(
  context: CaseContext,
  segments: readonly Segment[],
): readonly InternalStep[] {
  const places = segments.flatMap((segment) =>
    innerZeros(segment).map((x) => ({
      from: placeAtStation(context, segment.from),
      to: placeAtStation(context, segment.to),
      statement: zeroStatement(context, segment, x),
    })),
  );
  return places.length === 0 ? [] : [{ kind: 'zero-shear', places }];
}

function zeroStatement(context: CaseContext, segment: Segment, x: number): Statement {
  const { printing } = context;
  const line = functionLine(context, segment, segment.shear, 'shear');
  const [first] = line.chain;
  const set: StatementLine = {
    ...line,
    chain: first === undefined ? [] : [first, { sign: '=', of: number(0) }],
  };
  const station = value(printing, 'length', x);
  const reach = reachOfZero(context, segment, x);
  const worked =
    segment.from === 0 ? reach : sum(tidy(printing, 'length', segment.from), reach);
  const solved: StatementLine = {
    left: name(stationSymbol),
    chain: [
      { sign: '=', of: worked },
      { sign: '=', of: station },
    ],
    boxed: true,
  };
  return { lines: [set, solved] };
}

/**
 * The distance from a segment's start to where its shear c₀ + c₁ t + c₂ t² is 0: −c₀ / c₁ on a straight
 * line, √(−c₀ / c₂) on a parabola about the start, else the root of the quadratic that lies inside.
 */
function reachOfZero(context: CaseContext, segment: Segment, x: number): Expression {
  const { system, figures } = context.printing;
  const [c0 = 0, c1 = 0, c2 = 0] = segment.shear.local;
  const length = segment.to - segment.from;
  const size = Math.max(
    Math.abs(c0),
    Math.abs(c1) * length,
    Math.abs(c2) * length ** 2,
  );
  const isNothing = (c: number, degree: number): boolean =>
    Math.abs(c) * length ** degree <= 1e-12 * size;
  const figureOf = (c: number, degree: number): Figure =>
    figureIn(figures, unitOfDegree(system, 'force', degree), c);
  if (isNothing(c2, 2))
    return cancelUnits(quotient(figureOf(Math.abs(c0), 0), figureOf(Math.abs(c1), 1)));
  if (isNothing(c1, 1)) {
    return call(
      'sqrt',
      cancelUnits(quotient(figureOf(Math.abs(c0), 0), figureOf(Math.abs(c2), 2))),
    );
  }
  // Signs are turned so that the square's coefficient stands positive under the line.
  const [a, b, c] = c2 < 0 ? [-c2, -c1, -c0] : [c2, c1, c0];
  const root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
  const isPlus =
    Math.abs((-b + root) / (2 * a) - (x - segment.from)) <=
    Math.abs((-b - root) / (2 * a) - (x - segment.from));
  const under: Term = {
    sign: c < 0 ? 1 : -1,
    of: product(number(4), figureOf(a, 2), figureOf(Math.abs(c), 0)),
  };
  const discriminant = sum(power(figureOf(Math.abs(b), 1), 2), under);
  const over = sum(
    { sign: b < 0 ? 1 : -1, of: figureOf(Math.abs(b), 1) },
    { sign: isPlus ? 1 : -1, of: call('sqrt', discriminant) },
  );
  return quotient(over, product(number(2), figureOf(a, 2)));
}
