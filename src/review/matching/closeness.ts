/** One unit of the last of so many significant figures of a value. */
export function unitOfPlace(value: number, figures: number): number {
  const size = Math.abs(value);
  if (size === 0) return 0;
  return 10 ** (Math.floor(Math.log10(size) + 1e-12) - figures + 1);
}

/** True where two values agree to one unit of so many figures (3 where not said), rounded or cut off. */
export function isClose(found: number, truth: number, figures: number = 3): boolean {
  const room = Math.max(unitOfPlace(truth, figures), unitOfPlace(found, figures));
  return Math.abs(found - truth) <= room * (1 + 1e-6) + 1e-12 * Math.abs(truth);
}

/** The same for values that were written in a unit, in which the figures are counted; 53 400 N and 53 200 N are 12.0 kip and 11.96 kip. */
export function isCloseIn(unit: number, found: number, truth: number): boolean {
  return isClose(found / unit, truth / unit);
}

/** True where two values may be one and the same rounded to three figures in whatever unit. */
export function isCloseInSome(found: number, truth: number): boolean {
  return isClose(found, truth) || isNear(found, truth);
}

/** True where a written value stands for a true one: to three figures, or within what rounding its figures can have moved it. */
export function standsFor(written: number, truth: number, spread: number): boolean {
  return (
    isClose(written, truth) ||
    Math.abs(written - truth) <= spread * Math.abs(written) * (1 + 1e-6)
  );
}

/** True where two values are one number, rounding of the last bits aside. */
export function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));
}

/** True where two values are one number as people write it, to three figures of whatever unit. */
export function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) <= 5e-3 * (1 + 1e-6) * Math.max(Math.abs(a), Math.abs(b));
}

/**
 * True where a value is another one rightly rounded to two figures, counted in the unit in which it
 * was written; without a unit nobody can tell. One figure is no rounding but another number.
 */
export function isRounded(
  written: number,
  truth: number,
  unit: number | undefined,
): boolean {
  if (unit === undefined || unit <= 0 || truth === 0 || written === 0) return false;
  const [count, right] = [Math.abs(written / unit), Math.abs(truth / unit)];
  const place = unitOfPlace(right, 2);
  const isWhole = isSame(count / place, Math.round(count / place));
  return isWhole && Math.abs(count - right) <= place * (0.5 + 1e-6);
}
