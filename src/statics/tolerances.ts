/**
 * Every tolerance of the room, each a plain ratio: nothing here has a unit, so nothing here
 * depends on whether a beam is given in feet or in millimetres.
 */

/**
 * A singular value below this part of the greatest counts as zero. Stations and direction
 * cosines carry rounding of about 1e-16; an honest beam, even one with a piece a millionth of
 * its length, stays far above 1e-10, and a true mechanism lies far below.
 */
export const rankTolerance: number = 1e-10;

/**
 * Above this condition number a stable beam is called nearly unstable. An error of one part in
 * the condition number can change the forces by their own size: with 50, that is two per cent
 * of a length, or little more than a degree of a bearing's direction, which is what building
 * tolerances allow. A roller whose line passes the pin of a simple beam at an angle α has about
 * 2 / sin α, so it is called so from 2.3° down; a beam on two bearings 4 % of its length apart has
 * as much. Ordinary beams have 1 to 10.
 */
export const nearlyUnstableCondition: number = 50;

/** Two stations nearer than this part of the beam's length are one station. */
export const stationTolerance: number = 1e-9;

/** A direction cosine, or a component's part of a force, below this is zero: cos 90° is 6e-17. */
export const directionTolerance: number = 1e-12;

/** A value below this part of the sum of sizes that went into it is rounding noise: zero. */
export const noiseTolerance: number = 1e-12;

/** Two values that agree to this part of the scale count as one extreme, found leftmost. */
export const tieTolerance: number = 1e-9;

/** A part of a free movement below this is no part of it when the movement is named. */
export const movementTolerance: number = 1e-8;

/** An equilibrium sum that comes within this part of the sum of its absolute terms is closed. */
export const closureTolerance: number = 1e-9;

/** A value, or an exact zero where it is only noise beside the sizes that went into it. */
export function dropNoise(
  value: number,
  size: number,
  tolerance: number = noiseTolerance,
): number {
  return Math.abs(value) <= tolerance * size ? 0 : value;
}
