import {
  exactly,
  name,
  number,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type { Load, SpanState, SpanStiffness } from '../../statics/index.ts';
import { displayUnit, pureUnit } from '../../units/index.ts';
import { sizeFigure } from '../load-figures.ts';
import { tidy, value } from '../printing.ts';
import {
  curvatureFigure,
  freeCurvatureSymbol,
  referenceRigidity,
  rigidityFigure,
} from './rigidity.ts';
import { spanSymbols, type SlopeSetting } from './slope-setting.ts';
import { localStation, polynomialOf, integralOver } from './stretch-functions.ts';

/** What one load adds to the moments on both ends held fast, N·m, with its lines. */
interface HeldByLoad {
  readonly number: string;
  readonly symbolic: readonly [Expression, Expression];
  readonly numeric: readonly [Expression, Expression];
  readonly values: readonly [number, number];
}

/** True where the moments of a span held fast follow load by load: one stiffness, and warmth over all of it or none. */
export function isByFormula({
  isPrismatic,
  hasFreeCurvature,
  stretches,
}: SpanStiffness): boolean {
  const curvatures = new Set(stretches.map(({ functions }) => functions[1]?.[0] ?? 0));
  return isPrismatic && (!hasFreeCurvature || curvatures.size === 1);
}

/**
 * Moments on the ends of a span of one stiffness, both held fast: each load by its formula, a spread
 * one as a row of small forces; then their sum.
 * — Wilson & Maney, University of Illinois Bulletin 80, 1915; P a b² / L² from any handbook (from memory).
 */
export function heldByFormula(
  setting: SlopeSetting,
  span: SpanState,
  both: boolean,
): readonly Statement[] {
  const symbols = spanSymbols(setting, span);
  const { stiffness } = span;
  const parts = [
    ...stiffness.loads.flatMap((load) => heldByLoad(setting, stiffness, load)),
    ...heldByWarmth(setting, stiffness),
  ];
  const totals = [stiffness.fixed.a, stiffness.fixed.b] as const;
  return ([0, 1] as const).flatMap((end): readonly Statement[] => {
    const total = symbols.held(end, both ? undefined : '0');
    const [only] = parts;
    if (parts.length === 1 && only !== undefined)
      return [partStatement(setting, total, { part: only, end })];
    const each = parts.map((part) =>
      partStatement(setting, symbols.held(end, part.number), { part, end }),
    );
    const figures = parts
      .map(({ values }) => values[end])
      .filter((si) => si !== 0)
      .map((si) => value(setting.context.printing, 'moment', si));
    const found = value(setting.context.printing, 'moment', totals[end]);
    if (figures.length === 0) return each;
    return [
      ...each,
      {
        lines: [
          { left: name(total), chain: [{ sign: '=', of: sum(...figures) }] },
          { chain: [{ sign: '=', of: found }] },
        ],
      },
    ];
  });
}

function partStatement(
  { context }: SlopeSetting,
  symbol: Symbol,
  { part, end }: { readonly part: HeldByLoad; readonly end: 0 | 1 },
): Statement {
  const found = value(context.printing, 'moment', part.values[end]);
  return {
    lines: [
      {
        left: name(symbol),
        chain: [{ sign: '=', of: part.symbolic[end] }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: part.numeric[end] }] },
      { chain: [{ sign: '=', of: found }] },
    ],
  };
}

const a = name({
  letter: 'a',
  meaning: 'distance of a load from the left end of its span',
});
const l = name({ letter: 'L', meaning: 'length of a span' });
const b = name({
  letter: 'b',
  meaning: 'distance of a load from the right end of its span',
});

function heldByLoad(
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

/** The expression with a sign before it. */
function signed(sign: number, of: Expression): Expression {
  return sign < 0 ? sum({ sign: -1, of }) : of;
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

/** A row of small forces w ds: ∫ w a b² ds / L², and −∫ w a² b ds / L²; a uniform load over the whole span by w L² / 12. */
function heldBySpread(
  { context }: SlopeSetting,
  span: SpanStiffness,
  load: Extract<Load, { kind: 'distributed' }>,
): HeldByLoad {
  const { printing, symbols } = context;
  const length = span.to - span.from;
  const L = tidy(printing, 'length', length);
  const w = name(symbols.intensity(load.id));
  const number_ = String(symbols.numberOf(load.id));
  const isWhole = load.from === span.from && load.to === span.to;
  if (isWhole && load.y1 === load.y2) {
    const size = sizeFigure(context, load.id, 'force-per-length', Math.abs(load.y1));
    const sign = load.y1 < 0 ? 1 : -1;
    const form = (q: Expression, over: Expression): Expression =>
      quotient(product(q, power(over, 2)), number(12));
    const si = (-load.y1 * length ** 2) / 12;
    return {
      number: number_,
      symbolic: [signed(sign, form(w, l)), signed(-sign, form(w, l))],
      numeric: [signed(sign, form(size, L)), signed(-sign, form(size, L))],
      values: [si, -si],
    };
  }
  const slope = (load.y2 - load.y1) / (load.to - load.from);
  const unit = displayUnit(printing.system, 'force-per-length');
  const metre = displayUnit(printing.system, 'length');
  const intensity = polynomialOf(context, { coefficients: [-load.y1, -slope], unit });
  const near = polynomialOf(context, {
    coefficients: [load.from - span.from, 1],
    unit: metre,
  });
  const far = polynomialOf(context, {
    coefficients: [span.to - load.from, -1],
    unit: metre,
  });
  const symbolic = (p: Expression, q: Expression): Expression =>
    quotient(
      {
        kind: 'integral',
        of: product(w, p, q),
        variable: localStation,
        from: exactly(0, pureUnit),
        to: l,
      },
      power(l, 2),
    );
  const numeric = (p: Expression, q: Expression): Expression =>
    quotient(integralOver(context, load, [intensity, p, q]), power(L, 2));
  return {
    number: number_,
    symbolic: [symbolic(a, power(b, 2)), signed(-1, symbolic(power(a, 2), b))],
    numeric: [numeric(near, power(far, 2)), signed(-1, numeric(power(near, 2), far))],
    values: spreadValues(span, load),
  };
}

/** The same integrals, exact: Gauss's two-fold rule with three stations reaches the fourth power that stands in them. */
function spreadValues(
  { from, to }: SpanStiffness,
  load: Extract<Load, { kind: 'distributed' }>,
): readonly [number, number] {
  const [middle, half] = [(load.from + load.to) / 2, (load.to - load.from) / 2];
  const reach = Math.sqrt(0.6);
  let [left, right] = [0, 0];
  for (const [place, weight] of [
    [-reach, 5 / 9],
    [0, 8 / 9],
    [reach, 5 / 9],
  ] as const) {
    const x = middle + half * place;
    const w = -(
      load.y1 +
      ((load.y2 - load.y1) * (x - load.from)) / (load.to - load.from)
    );
    left += weight * w * (x - from) * (to - x) ** 2;
    right -= weight * w * (x - from) ** 2 * (to - x);
  }
  const over = half / (to - from) ** 2;
  return [left * over, right * over];
}

/** E I κ₀ at the left end and −E I κ₀ at the right, where the whole span would bend by itself. */
function heldByWarmth(
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
