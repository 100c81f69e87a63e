import type { Piece, Piecewise } from '../piecewise.ts';
import { extremesOf } from '../piecewise/extremes.ts';
import {
  antiderivative,
  derivative,
  evaluatePolynomial,
  shiftOrigin,
  sizeOfPolynomial,
  trim,
  type Polynomial,
} from '../piecewise/polynomial.ts';
import type { Displacement } from '../solution.ts';
import type { FreeCurvature } from '../structure.ts';
import { dropNoise } from '../tolerances.ts';
import type { Bar, ElasticModel } from './elastic-model.ts';
import type { ElasticState, JointState } from './elastic-state.ts';

/** The elastic curve, and how well two ways to it agree. */
export interface ElasticCurve {
  readonly displacement: Displacement;
  /**
   * The moments integrated from the left joint of each bar miss what was found at its right joint by
   * this share of the greatest movement, rotations counted over the length of the longest bar.
   */
  readonly mismatch: number;
}

/**
 * The elastic curve of a state, bar by bar from the joints' own movements, so that no error runs
 * along the beam: EI v″ = M + EI κ integrated twice from the left joint, with the little that is
 * missing at the right joint (rounding of the moment curve) laid upon the bar as a cubic. It is
 * continuous, its slope too but at hinges, and a support that holds still has exactly 0.
 */
export function elasticCurve(
  model: ElasticModel,
  state: ElasticState,
  moment: Piecewise,
  curvatures: readonly FreeCurvature[],
): ElasticCurve {
  const bending = bendingOf(model, state.joints);
  const joints = withoutNoise(state.joints, model.reach, bending);
  const bounds = curvatures.flatMap(({ from, to }) => [from, to]).sort((a, b) => a - b);
  const pieces: Piece[] = [];
  const gaps: { v: number; turn: number }[] = [];
  let next = 0;
  for (const [place, bar] of model.bars.entries()) {
    const [left, right] = [joints[place], joints[place + 1]];
    if (left === undefined || right === undefined) continue;
    while ((moment.pieces[next]?.end ?? Infinity) <= bar.from) next += 1;
    const bends = bendsOf(bar, { moment: moment.pieces, next, bounds, curvatures });
    const { raw, v, turn } = integrated(bends, left);
    const gap = { v: right.v - v, turn: right.turnLeft - turn };
    gaps.push(gap);
    pieces.push(...raw.map((piece) => closed(piece, bar, gap)));
  }
  const deflection = { pieces };
  const slope = {
    pieces: pieces.map((piece) => ({
      ...piece,
      coefficients: trim(derivative(piece.coefficients)),
    })),
  };
  const { max, min } = extremesOf(deflection);
  return {
    displacement: { slope, deflection, extremes: { max, min } },
    mismatch: mismatchOf(gaps, pieces, { reach: model.reach, bending }),
  };
}

/**
 * How far the forces present would bend the stiffest bar if it were as long as the longest: what a beam
 * moves by that a force over a support hardly bends is to be judged beside it.
 */
function bendingOf(
  { bars, reach }: ElasticModel,
  joints: readonly JointState[],
): number {
  const EI = bars.reduce((most, bar) => Math.max(most, bar.EI), 0);
  const moment = joints.reduce(
    (most, { shearLeft, shearRight, momentLeft, momentRight }) =>
      Math.max(
        most,
        Math.abs(momentLeft),
        Math.abs(momentRight),
        Math.abs(shearRight - shearLeft) * reach,
      ),
    0,
  );
  return ((moment / EI) * reach * reach) / 16;
}

/** Movements that are only rounding beside the greatest, or beside what the forces would bend, are none. */
function withoutNoise(
  joints: readonly JointState[],
  reach: number,
  bending: number,
): readonly JointState[] {
  const size = joints.reduce(
    (most, { v, turnLeft, turnRight }) =>
      Math.max(
        most,
        Math.abs(v),
        Math.abs(turnLeft) * reach,
        Math.abs(turnRight) * reach,
      ),
    roundingOfBending * bending,
  );
  return joints.map((joint) => ({
    ...joint,
    v: dropNoise(joint.v, size) + 0,
    turnLeft: dropNoise(joint.turnLeft, size / reach) + 0,
    turnRight: dropNoise(joint.turnRight, size / reach) + 0,
  }));
}

/** Movements are judged beside this part at least of what the forces present would bend. */
const roundingOfBending = 1e-3;

interface Bending {
  /** The moment's pieces, of which `next` is the first that reaches the bar. */
  readonly moment: readonly Piece[];
  readonly next: number;
  /** Where free curvatures begin and end, in order. */
  readonly bounds: readonly number[];
  readonly curvatures: readonly FreeCurvature[];
}

/** The curvature v″ along a bar, piece by piece. */
function bendsOf(
  bar: Bar,
  { moment, next, bounds, curvatures }: Bending,
): readonly Piece[] {
  const bends: Piece[] = [];
  for (let index = next; index < moment.length; index += 1) {
    const piece = moment[index];
    if (piece === undefined || piece.start >= bar.to) break;
    const start = Math.max(piece.start, bar.from);
    const end = Math.min(piece.end, bar.to);
    const cuts = [start, ...bounds.filter((x) => x > start && x < end), end];
    for (const [place, to] of cuts.slice(1).entries()) {
      const from = cuts[place] ?? start;
      if (to <= from) continue;
      const local = shiftOrigin(piece.coefficients, from - piece.start);
      const [first = 0, ...rest] = local.map((coefficient) => coefficient / bar.EI);
      const free = curvatures
        .filter((one) => one.from <= from && one.to >= to)
        .reduce((sum, { curvature }) => sum + curvature, 0);
      bends.push({ start: from, end: to, coefficients: [first + free, ...rest] });
    }
  }
  return bends;
}

/** Deflections from the left joint on, and what they come to at the right one. */
function integrated(
  bends: readonly Piece[],
  left: JointState,
): { readonly raw: readonly Piece[]; readonly v: number; readonly turn: number } {
  let [v, turn] = [left.v, left.turnRight];
  const raw = bends.map((bend): Piece => {
    const slope = antiderivative(bend.coefficients, turn);
    const coefficients = antiderivative(slope, v);
    const length = bend.end - bend.start;
    v = evaluatePolynomial(coefficients, length);
    turn = evaluatePolynomial(slope, length);
    return { ...bend, coefficients };
  });
  return { raw, v, turn };
}

/** A piece with its share of the cubic that starts from nothing at the bar's left end and closes the gap at its right end. */
function closed(
  piece: Piece,
  bar: Bar,
  gap: { readonly v: number; readonly turn: number },
): Piece {
  const length = bar.length[0];
  const square = (3 * gap.v) / length - gap.turn;
  const cube = gap.turn - (2 * gap.v) / length;
  const cubic: Polynomial = [0, 0, square / length, cube / length / length];
  const local = shiftOrigin(cubic, piece.start - bar.from);
  const count = Math.max(local.length, piece.coefficients.length);
  const coefficients = Array.from(
    { length: count },
    (_, power) => (piece.coefficients[power] ?? 0) + (local[power] ?? 0) + 0,
  );
  return { ...piece, coefficients: trim(coefficients) };
}

function mismatchOf(
  gaps: readonly { readonly v: number; readonly turn: number }[],
  pieces: readonly Piece[],
  { reach, bending }: { readonly reach: number; readonly bending: number },
): number {
  let [worst, size] = [0, roundingOfBending * bending];
  for (const { v, turn } of gaps)
    worst = Math.max(worst, Math.abs(v), Math.abs(turn) * reach);
  for (const { coefficients, start, end } of pieces)
    size = Math.max(size, sizeOfPolynomial(coefficients, end - start));
  if (Number.isNaN(worst) || Number.isNaN(size)) return Infinity;
  return size === 0 ? 0 : worst / size;
}
