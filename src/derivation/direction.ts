import type { Figure } from '../equation/index.ts';
import { tidy, type Printing } from './printing.ts';

/** A unit vector's direction in degrees from +x, counterclockwise, 0 to 360. */
export function degreesOf([dx, dy]: readonly [number, number]): number {
  const degrees = (Math.atan2(dy, dx) * 180) / Math.PI;
  const full = degrees < 0 ? degrees + 360 : degrees;
  const whole = Math.round(full);
  return Math.abs(full - whole) < 1e-9 ? whole % 360 : full;
}

/** A unit vector's direction as a figure in degrees. */
export function asDirection(
  printing: Printing,
  direction: readonly [number, number],
): Figure {
  return tidy(printing, 'direction', (degreesOf(direction) * Math.PI) / 180);
}

/** The acute angle between a direction and the x axis, 0 to 90 degrees. */
export function acuteAngle(
  printing: Printing,
  [dx, dy]: readonly [number, number],
): Figure {
  return asDirection(printing, [Math.abs(dx), Math.abs(dy)]);
}

const named: Readonly<Record<number, string>> = {
  0: 'right',
  90: 'up',
  180: 'left',
  270: 'down',
};

/** The word for a direction along an axis, in degrees from +x; undefined for a slanted one. */
export function wordOf(degrees: number): string | undefined {
  return named[degrees];
}

/** A direction in words: down, up, right, left, or where it points. */
export function wordsOfDirection(direction: readonly [number, number]): string {
  const degrees = degreesOf(direction);
  return (
    wordOf(degrees) ??
    `toward ${Number(degrees.toFixed(2))}° (from +x, counterclockwise)`
  );
}
