import { displayUnit, unitText, type Display } from '../units/index.ts';
import type { Figure } from './results.ts';

/** Turns SI numbers into figures of one system of display units. */
export type FigureMaker = (si: number, what: Display) => Figure;

/**
 * The maker of figures for a system. Values keep 15 significant digits, all that a double holds
 * for certain, so that 6.4008 m is 21 ft and not 21.000000000000004; zero has no sign.
 *
 * A number that is none (NaN, infinity) is a programmer's mistake: a RangeError, never `null` in the data.
 */
export function figuresIn(system: 'us' | 'si'): FigureMaker {
  return (si, what) => {
    if (!Number.isFinite(si)) throw new RangeError(`no ${what} can be ${si}`);
    const unit = displayUnit(system, what);
    const value = Number((si / unit.inSi).toPrecision(15)) + 0;
    return { value, unit: unitText(unit, 'data') };
  };
}
