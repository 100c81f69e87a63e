import { sizeOf, type Piece, type Piecewise } from '../piecewise.ts';
import { stationTolerance, tieTolerance } from '../tolerances.ts';
import { evaluatePolynomial, rootsOf, sizeOfPolynomial } from './polynomial.ts';

/** A place where a function is zero. */
export type Zero =
  /** It is zero at one station, crossing or only touching. */
  | { readonly kind: 'at'; readonly x: number }
  /** It leaps from one sign to the other there and takes the value on neither side. */
  | { readonly kind: 'jump'; readonly x: number }
  /** It is zero all the way from one station to another. */
  | { readonly kind: 'along'; readonly from: number; readonly to: number };

/**
 * Every zero of a function from left to right, each reported once: a stretch that is zero
 * throughout swallows its own ends and those of zero stretches beside it. A value within 1e-9 of
 * `size` (by default the function's own) counts as zero.
 */
export function zerosOf(f: Piecewise, size: number = sizeOf(f)): readonly Zero[] {
  const floor = tieTolerance * size;
  const found: Zero[] = [];
  for (const [index, piece] of f.pieces.entries()) {
    const before = f.pieces[index - 1];
    if (before !== undefined && leaps(before, piece, floor)) {
      found.push({ kind: 'jump', x: piece.start });
    }
    const length = piece.end - piece.start;
    if (sizeOfPolynomial(piece.coefficients, length) <= floor) {
      found.push({ kind: 'along', from: piece.start, to: piece.end });
    } else {
      for (const root of rootsOf(piece.coefficients, length, floor)) {
        found.push({ kind: 'at', x: piece.start + root });
      }
    }
  }
  const { pieces } = f;
  const margin =
    stationTolerance * ((pieces.at(-1)?.end ?? 0) - (pieces[0]?.start ?? 0));
  return found.reduce<readonly Zero[]>((list, zero) => joined(list, zero, margin), []);
}

function leaps(before: Piece, after: Piece, floor: number): boolean {
  const left = evaluatePolynomial(before.coefficients, before.end - before.start);
  const right = evaluatePolynomial(after.coefficients, 0);
  return Math.min(Math.abs(left), Math.abs(right)) > floor && left < 0 !== right < 0;
}

/** Adds a zero to a list, made one with the last where they touch. */
function joined(list: readonly Zero[], zero: Zero, margin: number): readonly Zero[] {
  const last = list.at(-1);
  if (last === undefined || startOf(zero) - endOf(last) > margin)
    return [...list, zero];
  const rest = list.slice(0, -1);
  if (last.kind !== 'along' && zero.kind !== 'along') return list;
  return [...rest, { kind: 'along', from: startOf(last), to: endOf(zero) }];
}

function startOf(zero: Zero): number {
  return zero.kind === 'along' ? zero.from : zero.x;
}

function endOf(zero: Zero): number {
  return zero.kind === 'along' ? zero.to : zero.x;
}
