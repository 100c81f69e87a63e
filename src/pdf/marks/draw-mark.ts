import type { Mark } from '../../drawing/index.ts';
import { drawGlyphs } from './glyphs.ts';
import { drawGroup } from './group.ts';
import { drawImage } from './image.ts';
import { drawLink } from './link.ts';
import type { PagePen, Surroundings } from './page-pen.ts';
import { drawShape } from './shape.ts';

/** Draws a mark where it stands. One kind of mark, one file. */
export function drawMark(mark: Mark, around: Surroundings, pen: PagePen): void {
  switch (mark.kind) {
    case 'glyphs': {
      drawGlyphs(mark, around, pen);
      return;
    }
    case 'shape': {
      drawShape(mark, around, pen);
      return;
    }
    case 'image': {
      drawImage(mark, around, pen);
      return;
    }
    case 'link': {
      drawLink(mark, around, pen);
      return;
    }
    case 'anchor': {
      pen.destinations.add(mark.name, pen.page, pen.height - around.y - mark.y);
      return;
    }
    case 'group': {
      drawGroup(mark, around, { pen, drawMark });
      return;
    }
  }
}
