import type { Vector } from './linear/vector.ts';
import { partsOf, pieceAt, type Part } from './parts.ts';
import type { BeamStructure, Restraint, Support } from './structure.ts';

/**
 * The equilibrium of a beam as a matrix: one column an unknown reaction component, one row an
 * independent equation. Instead of ΣFx, ΣFy, ΣM and one ΣM about each hinge, the rows are the
 * same equations recombined, one for each movement that the beam could make without supports:
 *
 *      row 0        the whole beam slides along x
 *      row 1 + i    joint i alone rises by 1, and the pieces beside it turn to follow
 *
 *                      ╱╲             the joints are the two ends and the hinges,
 *      ●───────●──────╱──╲──●         so there are 3 + hinges rows either way
 *
 * A force's entry is the work that it does on the movement. Entries are at most 1 in size and know
 * nothing of units (a moment unknown is measured in moment per length of its piece), so rank
 * and condition number do not change with them; and a combination of rows that vanishes IS
 * a movement that no support resists.
 */
export interface EquilibriumSystem {
  readonly pieces: readonly Part[];
  /** Entries of each row, in the order of `unknownsOf`. */
  readonly rows: readonly Vector[];
  /** By what each unknown of the system is multiplied to be in N or N·m: 1, or a piece's length. */
  readonly units: Vector;
}

/** Builds the system of a tidy structure. */
export function equilibriumSystem(structure: BeamStructure): EquilibriumSystem {
  const pieces = partsOf(structure);
  const unknowns = structure.supports.flatMap((support) =>
    support.restraints.map((restraint) => {
      const piece = pieceAt(pieces, support.x);
      const length = lengthOf(pieces[piece]);
      const unit = restraint.kind === 'moment' ? length : 1;
      return { column: columnOf(pieces, piece, support, restraint), unit };
    }),
  );
  const rows = Array.from({ length: pieces.length + 2 }, (_, row) =>
    unknowns.map(({ column }) => column[row] ?? 0),
  );
  return { pieces, rows, units: unknowns.map(({ unit }) => unit) };
}

function columnOf(
  pieces: readonly Part[],
  piece: number,
  support: Support,
  restraint: Restraint,
): Vector {
  const column = new Array<number>(pieces.length + 2).fill(0);
  if (restraint.kind === 'moment') {
    addWork(column, pieces, piece, { fx: 0, fy: 0, m: lengthOf(pieces[piece]) });
    return column;
  }
  const [fx, fy] = restraint.direction;
  const m = fy * (support.x - (pieces[piece]?.from ?? 0));
  addWork(column, pieces, piece, { fx, fy, m });
  return column;
}

/** Forces on one piece brought together at its left end, N and N·m counterclockwise. */
export interface PieceForce {
  readonly fx: number;
  readonly fy: number;
  readonly m: number;
}

/** Adds the work of forces on a piece to the entry of every movement. */
export function addWork(
  work: number[],
  pieces: readonly Part[],
  piece: number,
  { fx, fy, m }: PieceForce,
): void {
  const atRight = m / lengthOf(pieces[piece]);
  work[0] = (work[0] ?? 0) + fx;
  work[1 + piece] = (work[1 + piece] ?? 0) + fy - atRight;
  work[2 + piece] = (work[2 + piece] ?? 0) + atRight;
}

function lengthOf(piece: Part | undefined): number {
  return piece === undefined ? 1 : piece.to - piece.from;
}
