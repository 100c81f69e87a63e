import type { ComparedFigure } from '../comparison.ts';
import { countIn, parseUnit, quantity, sameDimension } from '../../units/index.ts';

/** Two figures that differ by less than this share of the greatest of their kind are one. */
export const tolerance: number = 1e-9;

/** A figure's value counted in another unit, where both measure the same. */
export function inUnit(
  { value, unit }: Pick<ComparedFigure, 'value' | 'unit'>,
  other: string,
): number | undefined {
  if (unit === other) return value;
  const [own, wanted] = [parseUnit(unit).unit, parseUnit(other).unit];
  if (own === undefined || wanted === undefined) return undefined;
  if (!sameDimension(own.dimension, wanted.dimension)) return undefined;
  return countIn(quantity(value, own), wanted);
}

/** True where two figures differ by more than the tolerance's share of `scale`, counted in the later's unit. */
export function differs(
  before: ComparedFigure,
  after: ComparedFigure,
  scale: number,
): boolean {
  const was = inUnit(before, after.unit);
  return was === undefined || Math.abs(after.value - was) > tolerance * scale;
}

/** (after − before)/before, both in the later's unit: positive where the size grows, whatever its sign; undefined where before is 0 or they do not compare. */
export function shareOf(
  before: ComparedFigure,
  after: ComparedFigure,
): number | undefined {
  const was = inUnit(before, after.unit);
  if (was === undefined || Math.abs(was) === 0) return undefined;
  return (after.value - was) / was;
}
