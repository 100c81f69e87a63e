import { formatQuantity } from './format-quantity.ts';
import type { PrintedFigure } from './print.ts';
import { countIn, type Quantity } from './quantity.ts';
import { toDecimal } from './round-decimal.ts';
import type { Unit } from './unit.ts';

/** Values smaller than this part of the greatest do not ask for decimals of their own. */
const negligible = 1e-3;

/** A small value shows at least so many figures, however great the others are. */
const fewest = 2;

/**
 * The one number of decimals that a table column prints with: as many as show the greatest value to `figures`
 * significant figures, more where a value that matters would keep fewer than two.
 */
export function columnDecimals(
  column: readonly Quantity[],
  unit: Unit,
  figures: number,
): number {
  const sizes = column
    .map((of) => Math.abs(countIn(of, unit)))
    .filter((size) => size > 0);
  if (sizes.length === 0) return 0;
  const greatest = Math.max(...sizes);
  const least = Math.min(...sizes.filter((size) => size >= negligible * greatest));
  const wanted = (size: number, shown: number): number => shown - toDecimal(size).point;
  return Math.max(
    0,
    wanted(greatest, figures),
    wanted(least, Math.min(figures, fewest)),
  );
}

/** A table column in one unit, every value printed with the decimals that `columnDecimals` finds. */
export function alignDecimals(
  column: readonly Quantity[],
  unit: Unit,
  figures: number,
): readonly PrintedFigure[] {
  const decimals = columnDecimals(column, unit, figures);
  return column.map((of) =>
    formatQuantity(of, unit, { kind: 'decimals', count: decimals }),
  );
}
