import { sizeOf, type Piece, type Piecewise } from '../piecewise.ts';
import {
  antiderivative,
  derivative,
  evaluatePolynomial,
  rootsOf,
  shiftOrigin,
  sizeOfPolynomial,
  type Polynomial,
} from '../piecewise/polynomial.ts';
import type { Train } from '../structure.ts';
import { stationTolerance } from '../tolerances.ts';

/** The side of a station from which an axle comes to it: −1 its left, 1 its right, 0 exactly there. */
export type Approach = -1 | 0 | 1;

/**
 * An influence line turned so that more is worse: the least of an effect is sought as the greatest of its
 * opposite. An axle off the beam gives nothing, one exactly at an end is on it.
 */
export interface SignedLine {
  readonly pieces: readonly Piece[];
  /** Slopes of the pieces, as polynomials of the same origin. */
  readonly slopes: readonly Polynomial[];
  readonly start: number;
  readonly end: number;
  /** An upper bound of the size of ordinates. */
  readonly size: number;
  /** Stations this near are one. */
  readonly margin: number;
  /** Ends of pieces, from left to right. */
  readonly breakpoints: readonly number[];
  /** True where the line leaps, at the beam's ends too: it matters then from where an axle comes. */
  readonly leaps: boolean;
  /** True where no piece is more than a straight line: no sum of it has a turning point between breakpoints. */
  readonly isStraight: boolean;
  /** Area of what is above zero, and the stretches where that is; 0 and none where no lane load asks for them. */
  readonly worse: {
    readonly area: number;
    readonly stretches: readonly { readonly from: number; readonly to: number }[];
  };
}

/**
 * Turns a line for the end sought; where relieving axles are left out, what is below zero counts as
 * zero. What is above zero is looked for only where a lane load needs it.
 */
export function signedLine(
  line: Piecewise,
  sense: 'max' | 'min',
  { relieving, lane = 0 }: Pick<Train, 'relieving' | 'lane'>,
): SignedLine {
  const turned = sense === 'max' ? line.pieces : line.pieces.map(turnedOver);
  const parts =
    relieving === 'left out' || lane > 0 ? turned.flatMap(splitAtZeros) : [];
  const pieces =
    relieving === 'kept'
      ? turned
      : parts.map(({ worse, piece }) =>
          worse ? piece : { ...piece, coefficients: [0] },
        );
  const [start, end] = [pieces[0]?.start ?? 0, pieces.at(-1)?.end ?? 0];
  const above = parts.flatMap(({ worse, piece }) => (worse ? [piece] : []));
  const size = sizeOf({ pieces });
  return {
    pieces,
    slopes: pieces.map(({ coefficients }) => derivative(coefficients)),
    start,
    end,
    size,
    margin: stationTolerance * (end - start),
    breakpoints: [start, ...pieces.map((piece) => piece.end)],
    leaps: leapsOf(pieces, size),
    isStraight: pieces.every(({ coefficients }) => coefficients.length <= 2),
    worse: {
      area: above.reduce((sum, piece) => sum + areaOf(piece), 0),
      stretches: joined(above),
    },
  };
}

function turnedOver(piece: Piece): Piece {
  return {
    ...piece,
    coefficients: piece.coefficients.map((coefficient) => 0 - coefficient),
  };
}

/** What an axle of 1 N gives at a station that it comes to from a side. */
export function ordinateAt(line: SignedLine, x: number, from: Approach): number {
  const { start, end, margin, pieces } = line;
  if (!isOnBeam(line, x, from)) return 0;
  if (Math.abs(x - start) <= margin) return valueIn(pieces[0], start);
  if (Math.abs(x - end) <= margin) return valueIn(pieces.at(-1), end);
  const place = placeOf(line, x);
  const here = pieces[place];
  if (here === undefined) return 0;
  if (here.end - x > margin) return valueIn(here, x);
  const [left, right] = [valueIn(here, here.end), valueIn(pieces[place + 1], here.end)];
  if (from === 0) return Math.max(left, right);
  return from < 0 ? left : right;
}

/** Whether an axle at a station is on the beam: at an end only if it does not come from outside. */
export function isOnBeam(
  { start, end, margin }: SignedLine,
  x: number,
  from: Approach,
): boolean {
  if (x < start - margin || x > end + margin) return false;
  if (x <= start + margin) return from >= 0;
  if (x >= end - margin) return from <= 0;
  return true;
}

/** The first piece that ends at or right of a station. */
export function placeOf({ pieces, margin }: SignedLine, x: number): number {
  let place = 0;
  while (place < pieces.length - 1 && (pieces[place]?.end ?? x) < x - margin)
    place += 1;
  return place;
}

function valueIn(piece: Piece | undefined, x: number): number {
  return piece === undefined
    ? 0
    : evaluatePolynomial(piece.coefficients, x - piece.start);
}

/** A piece cut where it crosses zero; those parts that lie above are worse. */
function splitAtZeros(
  piece: Piece,
): readonly { readonly worse: boolean; readonly piece: Piece }[] {
  const { start, end, coefficients } = piece;
  const length = end - start;
  const floor = 1e-14 * sizeOfPolynomial(coefficients, length);
  const near = stationTolerance * length;
  const roots = rootsOf(coefficients, length, floor).filter(
    (s) => s > near && s < length - near,
  );
  const cuts = [0, ...roots, length];
  return cuts.slice(1).map((to, index) => {
    const from = cuts[index] ?? 0;
    return {
      worse: evaluatePolynomial(coefficients, (from + to) / 2) > floor,
      piece: {
        start: start + from,
        end: index + 2 === cuts.length ? end : start + to,
        coefficients: shiftOrigin(coefficients, from),
      },
    };
  });
}

function leapsOf(pieces: readonly Piece[], size: number): boolean {
  const last = pieces.at(-1);
  const ends = [
    valueIn(pieces[0], pieces[0]?.start ?? 0),
    valueIn(last, last?.end ?? 0),
  ];
  const steps = pieces
    .slice(1)
    .map(
      (piece, index) =>
        valueIn(piece, piece.start) - valueIn(pieces[index], piece.start),
    );
  return [...ends, ...steps].some((step) => Math.abs(step) > stationTolerance * size);
}

function areaOf({ start, end, coefficients }: Piece): number {
  return evaluatePolynomial(antiderivative(coefficients, 0), end - start);
}

function joined(
  pieces: readonly Piece[],
): readonly { readonly from: number; readonly to: number }[] {
  const list: { from: number; to: number }[] = [];
  for (const { start, end } of pieces) {
    const last = list.at(-1);
    if (last?.to === start) last.to = end;
    else list.push({ from: start, to: end });
  }
  return list;
}
