import type { Cell, ColumnAlign } from '../../report/index.ts';
import { breakRagged, widestChunk } from '../break-ragged.ts';
import { lineItems } from '../line-items.ts';
import type { LineItem } from '../line-items.ts';
import { setLine } from '../set-line.ts';
import type { Line } from '../set-line.ts';
import type { Setting } from '../setting.ts';
import type { TextBase } from '../text-look.ts';
import { decimalPointOf } from './decimal-point.ts';

/** A cell measured before the columns have their widths. */
export interface MeasuredCell {
  readonly cell: Cell;
  /** First column that it stands in, and how many it spans. */
  readonly from: number;
  readonly count: number;
  readonly base: TextBase;
  readonly items: readonly LineItem[];
  /** Its lines where nothing makes it wrap. */
  readonly unwrapped: readonly Line[];
  readonly natural: number;
  readonly least: number;
  readonly align: ColumnAlign;
  /** In a decimal column: where its point stands from its left. */
  readonly point?: number;
}

/** Measures a cell: how wide it is unwrapped, and the widest part that cannot be broken. */
export function measureCell(
  cell: Cell,
  place: Pick<MeasuredCell, 'from' | 'count' | 'base' | 'align'>,
  setting: Setting,
): MeasuredCell {
  if (cell.content.length === 0)
    return { cell, ...place, items: [], unwrapped: [], natural: 0, least: 0 };
  const items = lineItems(cell.content, place.base, setting);
  const ranges = breakRagged(items, Infinity, setting);
  const unwrapped = ranges.map((range) => setLine(range, setting));
  const natural = Math.max(0, ...unwrapped.map(({ width }) => width));
  const measured = { cell, ...place, items, unwrapped, natural };
  const [only, ...others] = unwrapped;
  const isNumber =
    place.align === 'decimal' &&
    !cell.isHead &&
    place.count === 1 &&
    others.length === 0;
  const point = isNumber && only !== undefined ? decimalPointOf(only) : undefined;
  if (point === undefined) return { ...measured, least: widestChunk(items) };
  // A number with its unit is never wrapped away from its point.
  return { ...measured, least: natural, point };
}
