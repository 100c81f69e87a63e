import type { Piece, Piecewise } from '../piecewise.ts';
import {
  evaluatePolynomial,
  shiftOrigin,
  trim,
  type Polynomial,
} from '../piecewise/polynomial.ts';
import { joinPieces } from './join-pieces.ts';

/** A value along the beam, and what tells the rule that gives it: one rule, one smooth curve. */
export interface Sample {
  readonly value: number;
  readonly key: string;
}

/** How to see the curve, and how it may be fitted. */
interface Fitting {
  readonly sample: (x: number) => Sample;
  /** Greatest size of the values. */
  readonly scale: number;
  /** No piece is shorter. */
  readonly least: number;
}

/**
 * A curve that can only be asked for its values, as pieces of polynomials over stretches without a leap:
 * where one rule gives it and is a polynomial of the sixth degree or less, exactly that to rounding;
 * where another rule takes over, the place is found by halving; what is no polynomial is
 * cut until the sixth degree meets it within 1e-11 of the greatest value. Stretches in which the rule
 * changes within 1e-9 of the length go with their neighbours.
 */
export function fitCurve(
  stretches: readonly { readonly from: number; readonly to: number }[],
  sample: (x: number) => Sample,
): Piecewise {
  const length = (stretches.at(-1)?.to ?? 0) - (stretches[0]?.from ?? 0);
  let scale = 0;
  for (const { from, to } of stretches) {
    for (const t of [0.05, 0.275, 0.5, 0.725, 0.95])
      scale = Math.max(scale, Math.abs(sample(from + t * (to - from)).value));
  }
  const fitting = { sample, scale, least: 1e-9 * length };
  return joinPieces(
    stretches.flatMap(({ from, to }) =>
      withoutSlivers(fit(fitting, from, to), fitting),
    ),
  );
}

/** Chebyshev's seven places on 0 … 1, and three between them that have to agree. */
const nodes: readonly number[] = [0, 1, 2, 3, 4, 5, 6].map(
  (place) => (1 - Math.cos(((2 * place + 1) * Math.PI) / 14)) / 2,
);
const checks: readonly number[] = [0.003, 0.31, 0.84];

/** A polynomial of the sixth degree or less, known to be one over each stretch, from its values. */
export function polynomialsOver(
  stretches: readonly { readonly from: number; readonly to: number }[],
  value: (x: number) => number,
): Piecewise {
  const seen = stretches.map(({ from, to }) =>
    nodes.map((t) => value(from + t * (to - from))),
  );
  const scale = Math.max(0, ...seen.flat().map(Math.abs));
  const pieces = stretches.map(({ from, to }, index): Piece => {
    const polynomial = lowest(seen[index] ?? [], scale);
    return {
      start: from,
      end: to,
      coefficients: polynomial.map((c, power) => c / (to - from) ** power),
    };
  });
  return joinPieces(pieces);
}

function fit(
  fitting: Fitting,
  from: number,
  to: number,
  depth: number = 0,
): readonly Piece[] {
  const { sample, scale, least } = fitting;
  const length = to - from;
  const places = [...nodes, ...checks].sort((a, b) => a - b);
  const seen = places.map((t) => ({ t, ...sample(from + t * length) }));
  if (length <= 4 * least) return [lineOver(from, to, seen)];
  const values = nodes.map((t) => seen.find((one) => one.t === t)?.value ?? NaN);
  const polynomial = lowest(values, scale);
  const apart = Math.max(
    ...seen.map(({ t, value }) => Math.abs(evaluatePolynomial(polynomial, t) - value)),
  );
  // Where rules come to the same it does not matter which of them was found.
  if (apart <= toleranceAt(depth) * scale) {
    const coefficients = polynomial.map((c, power) => c / length ** power);
    return [{ start: from, end: to, coefficients }];
  }
  const change = seen.findIndex(({ key }) => key !== seen[0]?.key);
  const [before, after] = [seen[change - 1], seen[change]];
  const isChanging = change > 0 && before !== undefined && after !== undefined;
  const cut = isChanging
    ? borderOf(fitting, [from + before.t * length, from + after.t * length])
    : (from + to) / 2;
  // Rules take turns a few times at most; what takes turns for ever is rounding.
  const deeper = depth + (isChanging ? 0.2 : 1);
  return [...fit(fitting, from, cut, deeper), ...fit(fitting, cut, to, deeper)];
}

/** A fit is good that differs by less than this part of the greatest value. */
const fitTolerance = 1e-11;

/** Where halving has not helped, more is allowed, up to 1e-9; beyond twelve halvings only rounding is left to be fitted. */
function toleranceAt(depth: number): number {
  if (depth <= 4) return fitTolerance;
  return depth <= 12 ? 1e-9 : 1e-9 * 4 ** (depth - 12);
}

/** The polynomial of t through the values at all nodes: of the second degree, or the fourth, where that does. */
function lowest(values: readonly number[], scale: number): Polynomial {
  if (values.every((value) => value === 0)) return [0];
  for (const places of [
    [0, 3, 6],
    [0, 2, 3, 4, 6],
  ]) {
    const polynomial = through(places, values);
    const fits = nodes.every(
      (t, place) =>
        Math.abs(evaluatePolynomial(polynomial, t) - (values[place] ?? 0)) <=
        0.1 * fitTolerance * scale,
    );
    if (fits) return tidy(polynomial, scale);
  }
  return tidy(through([0, 1, 2, 3, 4, 5, 6], values), scale);
}

/** Newton's divided differences at some of the nodes, as powers of t. */
function through(places: readonly number[], values: readonly number[]): Polynomial {
  const stations = places.map((place) => nodes[place] ?? 0);
  const table = places.map((place) => values[place] ?? 0);
  for (let order = 1; order < table.length; order += 1) {
    for (let row = table.length - 1; row >= order; row -= 1) {
      const apart = (stations[row] ?? 0) - (stations[row - order] ?? 0);
      table[row] = ((table[row] ?? 0) - (table[row - 1] ?? 0)) / apart;
    }
  }
  let powers: readonly number[] = [];
  for (let row = table.length - 1; row >= 0; row -= 1) {
    const by = stations[row] ?? 0;
    const raised = [0, ...powers];
    powers = raised.map(
      (power, index) =>
        power - by * (powers[index] ?? 0) + (index === 0 ? (table[row] ?? 0) : 0),
    );
  }
  return powers;
}

function tidy(polynomial: Polynomial, scale: number): Polynomial {
  return trim(
    polynomial.map((c) => (Math.abs(c) <= 0.1 * fitTolerance * scale ? 0 : c)),
  );
}

/** A station and what is seen there. */
interface Seen extends Sample {
  readonly x: number;
}

/**
 * Where the rule of the left station ends: where the straight lines through the last two places of each
 * rule meet, again and again, and the middle wherever that leaves the bracket or gets nowhere.
 */
function borderOf(
  { sample, least }: Fitting,
  [from, to]: readonly [number, number],
): number {
  const see = (x: number): Seen => ({ x, ...sample(x) });
  let [low, high] = [see(from), see(to)];
  let [lower, higher]: [Seen | undefined, Seen | undefined] = [undefined, undefined];
  let guess = NaN;
  for (let step = 0; step < mostSteps && high.x - low.x > precise * least; step += 1) {
    const meeting = step % 4 === 3 ? NaN : meetingOf([lower, low], [high, higher]);
    const isInside = meeting > low.x && meeting < high.x;
    if (isInside && Math.abs(meeting - guess) <= precise * least) return meeting;
    guess = isInside ? meeting : NaN;
    const next = see(isInside ? meeting : (low.x + high.x) / 2);
    if (next.key === low.key) [lower, low] = [low, next];
    else [high, higher] = [next, next.key === high.key ? high : undefined];
  }
  return (low.x + high.x) / 2;
}

/** More steps are never taken, and a border is known when it moves by less than this part of the least length. */
const [mostSteps, precise] = [100, 1e-4];

/** Where the line through two places on the left meets that through two on the right. */
function meetingOf(
  [lower, low]: readonly [Seen | undefined, Seen],
  [high, higher]: readonly [Seen, Seen | undefined],
): number {
  if (lower === undefined || higher === undefined) return NaN;
  const rise = (low.value - lower.value) / (low.x - lower.x);
  const other = (higher.value - high.value) / (higher.x - high.x);
  return low.x + (high.value - low.value - other * (high.x - low.x)) / (rise - other);
}

function lineOver(
  from: number,
  to: number,
  seen: readonly { readonly t: number; readonly value: number }[],
): Piece {
  const [first, last] = [seen[0], seen.at(-1)];
  if (first === undefined || last === undefined)
    throw new RangeError('a line takes two places');
  const rise = (last.value - first.value) / (last.t - first.t);
  return {
    start: from,
    end: to,
    coefficients: trim([first.value - rise * first.t, rise / (to - from)]),
  };
}

/** Pieces of next to no length go with the neighbour on their left, the first with that on its right. */
function withoutSlivers(
  pieces: readonly Piece[],
  { least }: Fitting,
): readonly Piece[] {
  const list: Piece[] = [];
  for (const piece of pieces) {
    const last = list.at(-1);
    if (last !== undefined && piece.end - piece.start <= 4 * least)
      list[list.length - 1] = { ...last, end: piece.end };
    else if (last !== undefined && last.end - last.start <= 4 * least)
      list[list.length - 1] = {
        ...piece,
        start: last.start,
        coefficients: shifted(piece, last.start),
      };
    else list.push(piece);
  }
  return list;
}

function shifted({ coefficients, start }: Piece, to: number): Polynomial {
  return shiftOrigin(coefficients, to - start);
}
