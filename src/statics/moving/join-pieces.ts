import type { Piece, Piecewise } from '../piecewise.ts';
import { shiftOrigin } from '../piecewise/polynomial.ts';

/** Two polynomials whose coefficients differ by less than this part of their size are one. */
const sameTolerance = 1e-11;

/** Makes one piece of neighbours that are one and the same polynomial: a step of stiffness leaves no trace where statics solves all. */
export function joinPieces(pieces: readonly Piece[]): Piecewise {
  const list: Piece[] = [];
  for (const piece of pieces) {
    const last = list.at(-1);
    if (last !== undefined && continues(last, piece))
      list[list.length - 1] = { ...last, end: piece.end };
    else list.push(piece);
  }
  return { pieces: list };
}

function continues(before: Piece, after: Piece): boolean {
  const went = shiftOrigin(before.coefficients, after.start - before.start);
  const length = after.end - before.start;
  const count = Math.max(went.length, after.coefficients.length);
  let [apart, size] = [0, 0];
  for (let power = 0; power < count; power += 1) {
    const [one, other] = [went[power] ?? 0, after.coefficients[power] ?? 0];
    apart += Math.abs(one - other) * length ** power;
    size += Math.abs(before.coefficients[power] ?? 0) * length ** power;
    size += Math.abs(other) * length ** power;
  }
  return apart <= sameTolerance * size;
}
