import {
  exactly,
  name,
  number,
  power,
  product,
  quotient,
  type Expression,
} from '../../equation/index.ts';
import type { Load, SpanStiffness } from '../../statics/index.ts';
import { displayUnit, pureUnit } from '../../units/index.ts';
import { sizeFigure } from '../load-figures.ts';
import { tidy } from '../printing.ts';
import { type SlopeSetting } from './slope-setting.ts';
import { localStation, polynomialOf, integralOver } from './stretch-functions.ts';
import { a, b, l, reach, signed, type HeldByLoad } from './held-letters.ts';

/** A row of small forces w ds: ∫ w a b² ds / L², and −∫ w a² b ds / L²; a uniform load over the whole span by w L² / 12. */
export function heldBySpread(
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
        to: reach,
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
