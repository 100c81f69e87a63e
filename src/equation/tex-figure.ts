import {
  formatQuantity,
  type PrintedFigure,
  type Unit,
  type UnitFactor,
} from '../units/index.ts';
import type { Figure } from './expression.ts';

/** A figure as TeX, its minus in front: `8.4\,\text{kip}`, `36.9\times 10^{6}\,\text{mm}^{4}`, `60^{\circ}`. */
export function figureToTex(figure: Figure): string {
  const printed = formatQuantity(figure.quantity, figure.unit, figure.print);
  const sign = printed.negative ? '-' : '';
  const number = `${sign}${numberToTex(printed)}`;
  if (printed.compound) return number;
  const unit = unitToTex(figure.unit, figure.cancelled ?? []);
  if (unit === '') return number;
  if (isDegrees(figure.unit)) {
    // After a power of ten the sign needs a base of its own.
    return `${printed.exponent === 0 ? number : `${number}{}`}${unit}`;
  }
  return unit.startsWith('/') ? `${number}${unit}` : `${number}\\,${unit}`;
}

/** A unit as TeX, upright, a centred dot between factors; the cancelled symbols struck through, one power an entry. */
export function unitToTex(unit: Unit, cancelled: readonly string[] = []): string {
  if (isDegrees(unit)) return '^{\\circ}';
  const parts = (sign: 1 | -1): readonly string[] =>
    unit.factors
      .filter(({ power }) => power * sign > 0)
      .flatMap((factor) => factorToTex(factor, cancelled));
  const over = parts(1).join('{\\cdot}');
  const lower = parts(-1);
  const under = lower.join('{\\cdot}');
  if (lower.length === 0) return over;
  return `${over}/${lower.length > 1 ? `(${under})` : under}`;
}

function isDegrees(unit: Unit): boolean {
  const [factor] = unit.factors;
  return unit.factors.length === 1 && factor?.symbol === 'deg' && factor.power === 1;
}

// A power that cancels only in part is written out as the part that stays and the part that goes.
function factorToTex(
  { symbol, power }: UnitFactor,
  cancelled: readonly string[],
): readonly string[] {
  const size = Math.abs(power);
  const struck = Math.min(size, cancelled.filter((c) => c === symbol).length);
  const stays = size - struck;
  const parts: string[] = [];
  if (stays > 0) parts.push(powerToTex(symbol, stays));
  if (struck > 0) parts.push(`\\cancel{${powerToTex(symbol, struck)}}`);
  return parts;
}

function powerToTex(symbol: string, size: number): string {
  const degrees = symbol.startsWith('°');
  const base = degrees ? `{}^{\\circ}\\text{${symbol.slice(1)}}` : `\\text{${symbol}}`;
  return size === 1 ? base : `${base}^{${size}}`;
}

function numberToTex(printed: PrintedFigure): string {
  const digits = printed.mantissa
    .replaceAll(',', '{,}')
    .replaceAll(/(\d+)\/(\d+)/g, '\\tfrac{$1}{$2}')
    .replaceAll(/[ \u2009\u202f]*(ft|in)\b/g, '\\,\\text{$1}')
    .replaceAll(/(?<=text\{ft\}) /g, '\\;')
    .replaceAll(/[ \u2009\u202f]/g, '\\,');
  return printed.exponent === 0 ? digits : `${digits}\\times 10^{${printed.exponent}}`;
}
