import type { Box } from './box.ts';
import { overlap } from './box.ts';
import type { PagePen, Surroundings } from './page-pen.ts';

/**
 * Gives the mark that is about to be drawn to its owner, and tells the owner how far it reaches
 * (`extent` in points from the page's top left). Throws where no group around the mark says
 * whose it is: text that is neither tagged nor an artifact is lost to who cannot see it.
 */
export function own(
  { owner, clip }: Pick<Surroundings, 'owner' | 'clip'>,
  pen: PagePen,
  extent?: Box,
): void {
  if (owner === undefined)
    throw new RangeError('A mark belongs to no element and is no artifact.');
  pen.owners.belongTo(owner);
  if (owner.kind !== 'element' || extent === undefined) return;
  const visible = clip === undefined ? extent : overlap(extent, clip);
  if (visible !== undefined) pen.tags.addExtent(owner.element, visible);
}
