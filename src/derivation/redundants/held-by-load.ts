import {
  name,
  number,
  power,
  product,
  quotient,
  sum,
  type Expression,
} from '../../equation/index.ts';
import type { Load, SpanStiffness } from '../../statics/index.ts';
import { sizeFigure } from '../load-figures.ts';
import { tidy, value } from '../printing.ts';
import {
  curvatureFigure,
  freeCurvatureSymbol,
  referenceRigidity,
  rigidityFigure,
} from './rigidity.ts';
import { type SlopeSetting } from './slope-setting.ts';
import { heldBySpread } from './held-by-spread.ts';
import { a, b, l, signed, type HeldByLoad } from './held-letters.ts';

/** What one load adds to the moments on both ends held fast; nothing of one that bends nothing. */
export function heldByLoad(
  setting: SlopeSetting,
  span: SpanStiffness,
  load: Load,
): readonly HeldByLoad[] {
  switch (load.kind) {
    case 'point':
      return load.fy === 0 ? [] : [heldByPoint(setting, span, load)];
    case 'couple':
      return load.m === 0 ? [] : [heldByCouple(setting, span, load)];
    case 'distributed':
      return [heldBySpread(setting, span, load)];
  }
}

function heldByPoint(
  { context }: SlopeSetting,
  span: SpanStiffness,
  load: Extract<Load, { kind: 'point' }>,
): HeldByLoad {
  const { printing, symbols } = context;
  const [da, db] = [load.x - span.from, span.to - load.x];
  const length = span.to - span.from;
  const [A, B, L] = [da, db, length].map((si) => tidy(printing, 'length', si)) as [
    Expression,
    Expression,
    Expression,
  ];
  const P =
    load.fx === 0
      ? sizeFigure(context, load.id, 'force', Math.abs(load.fy))
      : value(printing, 'force', Math.abs(load.fy));
  const sign = load.fy < 0 ? 1 : -1;
  const symbol = name(symbols.load(load.id));
  return {
    number: String(symbols.numberOf(load.id)),
    symbolic: [
      signed(sign, quotient(product(symbol, a, power(b, 2)), power(l, 2))),
      signed(-sign, quotient(product(symbol, power(a, 2), b), power(l, 2))),
    ],
    numeric: [
      signed(sign, quotient(product(P, A, power(B, 2)), power(L, 2))),
      signed(-sign, quotient(product(P, power(A, 2), B), power(L, 2))),
    ],
    values: [
      (-load.fy * da * db ** 2) / length ** 2,
      (load.fy * da ** 2 * db) / length ** 2,
    ],
  };
}

function heldByCouple(
  { context }: SlopeSetting,
  span: SpanStiffness,
  load: Extract<Load, { kind: 'couple' }>,
): HeldByLoad {
  const { printing, symbols } = context;
  const [da, db] = [load.x - span.from, span.to - load.x];
  const length = span.to - span.from;
  const [A, B, L] = [da, db, length].map((si) => tidy(printing, 'length', si)) as [
    Expression,
    Expression,
    Expression,
  ];
  const C = sizeFigure(context, load.id, 'moment', Math.abs(load.m));
  const sign = load.m < 0 ? -1 : 1;
  const symbol = name(symbols.load(load.id));
  const form = (
    c: Expression,
    near: Expression,
    far: Expression,
    over: Expression,
  ): Expression =>
    signed(
      sign,
      quotient(
        product(c, far, sum(product(number(2), near), { sign: -1, of: far })),
        power(over, 2),
      ),
    );
  return {
    number: String(symbols.numberOf(load.id)),
    // From the end spoken of: C b (2a − b) / L² at the left, C a (2b − a) / L² at the right.
    symbolic: [form(symbol, a, b, l), form(symbol, b, a, l)],
    numeric: [form(C, A, B, L), form(C, B, A, L)],
    values: [
      (load.m * db * (2 * da - db)) / length ** 2,
      (load.m * da * (2 * db - da)) / length ** 2,
    ],
  };
}

/** E I κ₀ at the left end and −E I κ₀ at the right, where the whole span would bend by itself. */
export function heldByWarmth(
  { context, work }: SlopeSetting,
  span: SpanStiffness,
): readonly HeldByLoad[] {
  const [first] = span.stretches;
  const curvature = first?.functions[1]?.[0] ?? 0;
  if (first === undefined || curvature === 0) return [];
  const si = first.EI * curvature;
  const isReference = first.EI === work.EI;
  const EI = isReference
    ? referenceRigidity(context)
    : product(
        name({ letter: 'E', meaning: 'modulus of elasticity' }),
        name({ letter: 'I', meaning: 'second moment of area about the bending axis' }),
      );
  const symbols = product(EI, name(freeCurvatureSymbol));
  const size = Math.abs(curvature);
  const numbers = product(
    rigidityFigure(context, first.EI),
    curvatureFigure(context, size),
  );
  const sign = curvature < 0 ? -1 : 1;
  return [
    {
      number: 'κ',
      symbolic: [symbols, signed(-1, symbols)],
      numeric: [signed(sign, numbers), signed(-sign, numbers)],
      values: [si, -si],
    },
  ];
}
