import {
  minus,
  name,
  number,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type StatementLine,
} from '../../equation/index.ts';
import { pureUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy } from '../printing.ts';
import type { ContinuousSetting, End, OneSpan } from './continuous-setting.ts';
import { curvatureFigure, freeCurvatureSymbol } from './rigidity.ts';

/** ψ of both ends of a warm span of one stiffness: `κ₀ L / 2`, or of a stretch `κ₀ (e² − c²) / 2L`. */
export function warmTurns(
  setting: ContinuousSetting,
  one: OneSpan,
): readonly Statement[] {
  const { span, terms, symbols } = one;
  if (span.curvatures.length === 0 || terms.ratio === undefined) return [];
  const { context } = setting;
  const length = (si: number): Expression => tidy(context.printing, 'length', si);
  return ([0, 1] as const).map((end: End): Statement => {
    const parts = span.curvatures.map(({ from, to, curvature }) => {
      const [c, d] = end === 1 ? [from, to] : [span.length - to, span.length - from];
      const figure = curvatureFigure(context, curvature);
      const isWhole = c === 0 && d === span.length;
      return isWhole
        ? quotient(product(figure, length(span.length)), number(2))
        : quotient(
            product(figure, sum(power(length(d), 2), minus(power(length(c), 2)))),
            product(number(2), length(span.length)),
          );
    });
    const isWhole = span.curvatures.every(
      ({ from, to }) => from === 0 && to === span.length,
    );
    const symbolic: StatementLine['chain'] =
      isWhole && parts.length === 1
        ? [
            {
              sign: '=',
              of: quotient(
                product(name(freeCurvatureSymbol), name(symbols.length)),
                number(2),
              ),
            },
          ]
        : [];
    const left = name(symbols.warmTurn(end));
    const turn = end === 0 ? terms.left.turn : terms.right.turn;
    return {
      lines: [
        ...(symbolic.length === 0
          ? []
          : [{ left, chain: symbolic, recheck: 'none' as const }]),
        {
          ...(symbolic.length === 0 ? { left } : {}),
          chain: [{ sign: '=', of: sum(...parts) }],
        },
        {
          chain: [
            { sign: '=', of: figureIn(context.printing.figures, pureUnit, turn) },
          ],
        },
      ],
    };
  });
}
