/** A part of a unit vector smaller than this is rounding: cos 90° comes out as 6e-17. */
const noise = 1e-12;

/** The unit vector that points at an angle from +x, counterclockwise, in radians; exact along the axes. */
export function directionCosines(angle: number): readonly [x: number, y: number] {
  return [tidied(Math.cos(angle)), tidied(Math.sin(angle))];
}

function tidied(part: number): number {
  if (Math.abs(part) < noise) return 0;
  return Math.abs(Math.abs(part) - 1) < noise ? Math.sign(part) : part;
}
