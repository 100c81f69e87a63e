import type { ImageMark } from '../../drawing/index.ts';
import { formatNumbers } from '../format-number.ts';
import { own } from './own.ts';
import type { PagePen, Surroundings } from './page-pen.ts';

/** Draws a picture into its rectangle. */
export function drawImage(
  { x, y, width, height, source }: ImageMark,
  around: Surroundings,
  pen: PagePen,
): void {
  const left = around.x + x;
  const top = around.y + y;
  const bottom = top + height;
  const { id, reference } = pen.images(source);
  own(around, pen, { left, top, right: left + width, bottom });
  pen.resources.useImage(id, reference);
  // A picture is one unit wide and one high, with its foot at the origin (ISO 32000-1, 8.9.5.1).
  const placed = formatNumbers(width, 0, 0, height, left, pen.height - bottom);
  pen.content.add(`q ${placed} cm /${id} Do Q`);
}
