import { exactly, figure, type Figure } from '../../equation/index.ts';
import { quantity, type Unit } from '../../units/index.ts';
import type { Printing } from '../printing.ts';

/** A value in any unit to the project's figures; an exact 0 as such. */
export function exactZeroOr(printing: Printing, unit: Unit, si: number): Figure {
  if (si === 0) return exactly(0, unit);
  return figure(quantity(si / unit.inSi, unit), unit, {
    kind: 'figures',
    count: printing.figures,
  });
}

/** The same, printed with its own few digits where these say it exactly (0.5, 150 kip·ft). */
export function tidyIn(printing: Printing, unit: Unit, si: number): Figure {
  const count = si / unit.inSi;
  const shortest = Number(count.toPrecision(printing.figures));
  const isExact = Math.abs(count - shortest) <= 1e-9 * Math.abs(count);
  if (!isExact || String(shortest).includes('e'))
    return exactZeroOr(printing, unit, si);
  return { ...exactly(shortest, unit), quantity: quantity(count, unit) };
}
