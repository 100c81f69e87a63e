import { superscript } from './superscript.ts';
import type { Unit, UnitFactor } from './unit.ts';

/**
 * A unit as text, for print (`kip·ft`, `kN/m²`, `in⁴`, `1/K`) or for data (`kip ft`, `kN/m^2`, `in^4`,
 * `1/K`); a pure number is empty in print and `1` in data. Both are read back by `parseUnit`.
 */
export function unitText(unit: Unit, style: 'print' | 'data' = 'print'): string {
  const upper = unit.factors.filter(({ power }) => power > 0);
  const lower = unit.factors.filter(({ power }) => power < 0);
  const dot = style === 'print' ? '·' : ' ';
  const written = (factors: readonly UnitFactor[]): string =>
    factors.map((factor) => factorText(factor, style)).join(dot);
  if (lower.length === 0) {
    if (upper.length === 0) return style === 'data' ? '1' : '';
    return written(upper);
  }
  const under = lower.length > 1 ? `(${written(lower)})` : written(lower);
  return `${upper.length === 0 ? '1' : written(upper)}/${under}`;
}

function factorText({ symbol, power }: UnitFactor, style: 'print' | 'data'): string {
  const shown = symbol === 'deg' && style === 'print' ? '°' : symbol;
  const size = Math.abs(power);
  if (size === 1) return shown;
  // Roots of units stand only inside a computation; they are written out where one shows.
  if (!Number.isInteger(size)) return `${shown}^${size}`;
  return style === 'print' ? `${shown}${superscript(size)}` : `${shown}^${size}`;
}
