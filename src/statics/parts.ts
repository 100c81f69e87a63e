import type { BeamStructure, Load } from './structure.ts';
import { stationTolerance } from './tolerances.ts';

/** A part of the beam between two stations that are ends or hinges, in metres. */
export interface Part {
  readonly from: number;
  readonly to: number;
}

/** The whole beam as a part. */
export function wholeOf(structure: BeamStructure): Part {
  return { from: structure.points[0]?.x ?? 0, to: structure.points.at(-1)?.x ?? 0 };
}

/** The pieces between ends and hinges, from left to right; the whole beam where it has no hinge. */
export function partsOf(structure: BeamStructure): readonly Part[] {
  const whole = wholeOf(structure);
  const hinges = structure.hinges.map((hinge) => hinge.x).sort((a, b) => a - b);
  const cuts = [whole.from, ...hinges, whole.to];
  return hinges
    .concat(whole.to)
    .map((to, index) => ({ from: cuts[index] ?? whole.from, to }));
}

/**
 * Which of the pieces carries something at a station. What stands exactly at a hinge goes to
 * the piece on its left, a support too, unless `side` says right. (A force there has no moment
 * about the hinge, so the choice moves nothing but the force through the hinge itself.)
 */
export function pieceAt(
  pieces: readonly Part[],
  x: number,
  side: 'left' | 'right' = 'left',
): number {
  const index = pieces.findIndex((piece) =>
    side === 'left' ? x <= piece.to : x < piece.to,
  );
  return index < 0 ? pieces.length - 1 : index;
}

/** Which piece carries a point load or a couple. */
export function pieceOfLoad(
  pieces: readonly Part[],
  load: Exclude<Load, { kind: 'distributed' }>,
): number {
  return pieceAt(pieces, load.x, load.kind === 'couple' ? load.side : undefined);
}

/**
 * The part whose ends are the ends or hinges at the stations given, made exact.
 *
 * @throws RangeError where an end of the part is neither.
 */
export function exactPart(structure: BeamStructure, part: Part): Part {
  const pieces = partsOf(structure);
  const whole = wholeOf(structure);
  const margin = stationTolerance * (whole.to - whole.from);
  const from = pieces.find((piece) => Math.abs(piece.from - part.from) <= margin)?.from;
  const to = pieces.find((piece) => Math.abs(piece.to - part.to) <= margin)?.to;
  if (from === undefined || to === undefined || to <= from) {
    throw new RangeError(
      `no part from ${part.from} to ${part.to}: parts run between ends and hinges`,
    );
  }
  return { from, to };
}

/** The first and last piece (inclusive) that a part covers. */
export function piecesOn(
  pieces: readonly Part[],
  part: Part,
): readonly [number, number] {
  const first = pieces.findIndex((piece) => piece.from === part.from);
  const last = pieces.findIndex((piece) => piece.to === part.to);
  return [first, last];
}
