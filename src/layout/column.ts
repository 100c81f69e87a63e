import type { Column } from './setting.ts';

/**
 * The column that is left when a block is set in by so much on the left, and on the right. Notes
 * of what stands in it still stand in the same margin column.
 */
export function narrowed(column: Column, left: number, right: number = 0): Column {
  const { margin } = column;
  return {
    x: column.x + left,
    width: column.width - left - right,
    height: column.height,
    ...(margin === undefined ? {} : { margin }),
  };
}
