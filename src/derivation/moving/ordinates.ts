import {
  minus,
  name,
  plus,
  power,
  product,
  quotient,
  sum,
  type Statement,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import { sideTaken, valueAt, type Piece } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import type { GoverningEffect } from './governing-effects.ts';
import { ordinateSymbol, shareSymbol } from './moving-symbols.ts';

/** An axle that counts, with the ordinate under it. */
export interface AxleOrdinate {
  readonly index: number;
  readonly x: number;
  /** Load of the axle in N, factor included. */
  readonly size: number;
  readonly side: 'left' | 'right';
  /** In SI units of the effect per newton. */
  readonly ordinate: number;
}

/** The ordinates under the axles that count at the worst place. */
export function ordinatesUnder({
  line,
  train,
  sense,
  critical,
}: GoverningEffect): readonly AxleOrdinate[] {
  return critical.place.axles.map(({ index, x }) => {
    const sides = [valueAt(line, x, 'left'), valueAt(line, x, 'right')] as const;
    const side = sideTaken({ approach: critical.approach, sense }, sides);
    const ordinate = side === 'left' ? sides[0] : sides[1];
    return { index, x, size: train.axles[index] ?? 0, side, ordinate };
  });
}

/** What an ordinate prints as: moments per force are lengths, forces per force are numbers. */
export function ordinateUnit(effect: GoverningEffect): 'length' | 'pure' {
  const isMoment =
    effect.of === 'moment' ||
    (effect.effect.kind === 'reaction' && effect.effect.component === 'moment');
  return isMoment ? 'length' : 'pure';
}

/** Every ordinate worked from its stretch of the line; those on a break of the line are read off. */
export function ordinateStatement(
  context: CaseContext,
  effect: GoverningEffect,
): Statement | undefined {
  const lines = ordinatesUnder(effect).flatMap((one) => linesOf(context, effect, one));
  return lines.length === 0 ? undefined : { lines };
}

function linesOf(
  { printing }: CaseContext,
  effect: GoverningEffect,
  { index, x, side, ordinate }: AxleOrdinate,
): readonly StatementLine[] {
  const unit = ordinateUnit(effect);
  const left = name(ordinateSymbol(index));
  const result = value(printing, unit, ordinate);
  const piece = pieceUnder(effect.line.pieces, x, side);
  const near = 1e-9 * ((piece?.end ?? 0) - (piece?.start ?? 0));
  const isRead =
    piece === undefined ||
    piece.coefficients.length === 1 ||
    x - piece.start <= near ||
    (piece.end - x <= near && piece.coefficients.length === 2);
  if (isRead) return [{ left, chain: [{ sign: '=', of: result }] }];
  const length = piece.end - piece.start;
  const share = (x - piece.start) / length;
  const passed = value(printing, 'pure', share);
  const terms = piece.coefficients.flatMap((c, exponent): readonly Term[] => {
    const by = c * length ** exponent;
    if (by === 0) return [];
    const size = value(printing, unit, Math.abs(by));
    const times = exponent === 1 ? passed : power(passed, exponent);
    const of = exponent === 0 ? size : product(size, times);
    return [by < 0 ? minus(of) : plus(of)];
  });
  const at = tidy(printing, 'length', x);
  const start = tidy(printing, 'length', piece.start);
  return [
    {
      left: name(shareSymbol(index)),
      chain: [
        {
          sign: '=',
          of: quotient(
            piece.start === 0 ? at : sum(at, minus(start)),
            tidy(printing, 'length', length),
          ),
        },
        { sign: '=', of: passed },
      ],
    },
    {
      left,
      chain: [
        { sign: '=', of: sum(...terms) },
        { sign: '=', of: result },
      ],
    },
  ];
}

/** The stretch of a line that an axle stands on, coming to its end from a side. */
function pieceUnder(
  pieces: readonly Piece[],
  x: number,
  side: 'left' | 'right',
): Piece | undefined {
  const reach = (pieces.at(-1)?.end ?? 0) - (pieces[0]?.start ?? 0);
  const near = 1e-9 * reach;
  const found = pieces.find(({ end }) =>
    side === 'left' ? x <= end + near : x < end - near,
  );
  return found ?? pieces.at(-1);
}
