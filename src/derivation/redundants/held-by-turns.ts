import {
  name,
  product,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { SpanState, Stretch } from '../../statics/index.ts';
import { displayUnit, pureUnit, type Unit } from '../../units/index.ts';
import { placeAtStation } from '../narrators/places.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import type { StretchFact } from '../steps/redundant-steps.ts';
import { curvatureFigure, referenceRigidity, rigidityFigure } from './rigidity.ts';
import { type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';
import {
  functionLine,
  integralOver,
  polynomialOf,
  settled,
} from './stretch-functions.ts';

const simpleMoment: Symbol = {
  letter: 'M',
  subscript: '0',
  meaning: 'bending moment of a span on simple supports',
};

/** A share of an integral over a span: times EI₀ over EI, of a product of two functions. */
interface Share {
  readonly stretch: Stretch;
  readonly of: Expression;
  readonly value: number;
}

/** Stretches of a span with its moment on simple supports, where any acts. */
export function simpleMoments(
  { context }: SlopeSetting,
  { stiffness }: SpanState,
): readonly StretchFact[] {
  const size = sizeOfMoment(stiffness.stretches);
  return stiffness.stretches.flatMap((stretch) => {
    const coefficients = momentOn(stretch, size);
    if (coefficients.length === 0) return [];
    const unit = displayUnit(context.printing.system, 'moment');
    const line = functionLine(context, { symbol: simpleMoment, coefficients, unit });
    return [
      {
        from: placeAtStation(context, stretch.from),
        to: placeAtStation(context, stretch.to),
        functions: { lines: [line] },
      },
    ];
  });
}

function sizeOfMoment(stretches: readonly Stretch[]): number {
  return Math.max(
    0,
    ...stretches.map(({ from, to, functions }) =>
      (functions[0] ?? []).reduce(
        (all, c, i) => all + Math.abs(c) * (to - from) ** i,
        0,
      ),
    ),
  );
}

function momentOn({ from, to, functions }: Stretch, size: number): readonly number[] {
  return settled(functions[0] ?? [], to - from, size);
}

/** Flexibilities of the ends by integrals over the stretches: f_AA, f_BB, f_AB. */
export function flexibilities(
  setting: SlopeSetting,
  span: SpanState,
  which: readonly ('aa' | 'bb' | 'ab')[],
): readonly Statement[] {
  const symbols = spanSymbols(setting, span);
  const { stiffness } = span;
  const unit = displayUnit(setting.context.printing.system, 'length');
  return which.flatMap((one) => {
    const shares = stiffness.stretches.map((stretch): Share => {
      const [p, q] = [
        lever(stretch, stiffness, one === 'bb' ? 1 : 0),
        lever(stretch, stiffness, one === 'aa' ? 0 : 1),
      ];
      return shareOf(setting, stretch, {
        functions: [leverText(setting, p), leverText(setting, q)],
        value: integral(p, q, stretch),
      });
    });
    return shareStatements(setting, {
      shares,
      unit,
      left: name(symbols.flexibility(one)),
      total: stiffness.flexibility[one],
      sign: 1,
    });
  });
}

/** Turns of an end under the loads and warmth of the span on simple supports, times E I. */
export function turnOfEnd(
  setting: SlopeSetting,
  span: SpanState,
  end: 0 | 1,
): readonly Statement[] {
  const { context, work } = setting;
  const { stiffness } = span;
  const sign = end === 0 ? -1 : 1;
  const size = sizeOfMoment(stiffness.stretches);
  const unit = displayUnit(context.printing.system, 'rigidity');
  const shares = stiffness.stretches.flatMap((stretch): readonly Share[] => {
    const own = lever(stretch, stiffness, end);
    const coefficients = momentOn(stretch, size);
    const curvature = stretch.functions[1]?.[0] ?? 0;
    const moment = polynomialOf(context, {
      coefficients,
      unit: displayUnit(context.printing.system, 'moment'),
    });
    return [
      ...(coefficients.length === 0
        ? []
        : [
            shareOf(setting, stretch, {
              functions: [moment, leverText(setting, own)],
              value: integral(coefficients, own, stretch),
            }),
          ]),
      ...(curvature === 0
        ? []
        : [
            {
              stretch,
              of: product(
                rigidityFigure(context, work.EI),
                curvatureFigure(context, curvature),
                integralOver(context, stretch, [leverText(setting, own)]),
              ),
              value: work.EI * integral([curvature], own, stretch),
            },
          ]),
    ];
  });
  const left = product(
    referenceRigidity(context),
    name(spanSymbols(setting, span).turn(end)),
  );
  const total = end === 0 ? stiffness.turns.a : stiffness.turns.b;
  return shareStatements(setting, { shares, unit, left, total, sign });
}

/** `1 − x/L` or `x/L` in powers of the distance from the stretch's start. */
function lever(
  { from }: Stretch,
  span: { readonly from: number; readonly to: number },
  end: 0 | 1,
): readonly number[] {
  const L = span.to - span.from;
  return end === 0 ? [(span.to - from) / L, -1 / L] : [(from - span.from) / L, 1 / L];
}

function leverText(
  { context }: SlopeSetting,
  coefficients: readonly number[],
): Expression {
  return polynomialOf(context, { coefficients, unit: pureUnit });
}

function shareOf(
  { context, work }: SlopeSetting,
  stretch: Stretch,
  of: { readonly functions: readonly Expression[]; readonly value: number },
): Share {
  const ratio = work.EI / stretch.EI;
  const over = integralOver(context, stretch, of.functions);
  const times = figureIn(context.printing.figures, pureUnit, ratio);
  return {
    stretch,
    of: ratio === 1 ? over : product(times, over),
    value: ratio * of.value,
  };
}

function integral(
  p: readonly number[],
  q: readonly number[],
  { from, to }: Stretch,
): number {
  const L = to - from;
  let total = 0;
  for (const [i, x] of p.entries())
    for (const [j, y] of q.entries()) total += (x * y * L ** (i + j + 1)) / (i + j + 1);
  return total;
}

/** Each share a line, then `left = ±(share + share) = total`. */
function shareStatements(
  { context }: SlopeSetting,
  of: {
    readonly shares: readonly Share[];
    readonly unit: Unit;
    readonly left: Expression;
    readonly total: number;
    readonly sign: 1 | -1;
  },
): readonly Statement[] {
  const { shares, unit, left, total, sign } = of;
  const figure = (si: number): Figure => figureIn(context.printing.figures, unit, si);
  const lines = shares
    .filter(({ value }) => value !== 0)
    .map(({ of: from, value }): Statement => ({
      lines: [{ left: from, chain: [{ sign: '=', of: figure(value) }] }],
    }));
  const terms = shares
    .filter(({ value }) => value !== 0)
    .map(({ value }): Term => ({
      sign: (Math.sign(value) * sign) as 1 | -1,
      of: figure(Math.abs(value)),
    }));
  if (terms.length === 0) return [];
  return [
    ...lines,
    {
      lines: [
        { left, chain: [{ sign: '=', of: sum(...terms) }] },
        ...(terms.length < 2 && sign === 1
          ? []
          : [{ chain: [{ sign: '=' as const, of: figure(total) }] }]),
      ],
    },
  ];
}
