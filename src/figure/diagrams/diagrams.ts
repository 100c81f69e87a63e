import type { FigureSetting } from '../figure-setting.ts';
import type { FigureSpec } from '../figure-spec.ts';
import type { Strip } from '../strip.ts';
import { withDimensions } from '../pictures/dimensions.ts';
import { framePictures } from '../pictures/frame-pictures.ts';
import { layPicture } from '../pictures/lay-picture.ts';
import { beside, boundsOf, moveStrip } from '../strip.ts';
import { setInGutter } from '../labels/small-label.ts';
import { dropLines } from './drop-lines.ts';
import type { PlacedDiagram } from './drop-lines.ts';
import { layDiagram } from './lay-diagram.ts';

type DiagramsSpec = Extract<FigureSpec, { readonly kind: 'diagrams' }>;

/** Between diagrams, and between a title and the plot, points. */
const diagramGap = 11;
const titleGap = 4;

/** Diagrams one under the other, under the member on common stations. */
export function layDiagrams(
  { picture, diagrams }: DiagramsSpec,
  setting: FigureSetting,
): Strip {
  const titles = diagrams.map(({ title }) => setInGutter(title, setting).width);
  const frame = framePictures([picture], setting, Math.max(0, ...titles) + titleGap);
  const member = withDimensions(layPicture(picture, frame), picture.dimensions, frame);
  const placed: PlacedDiagram[] = [];
  let whole = member;
  for (const diagram of diagrams) {
    const strip = layDiagram(diagram, frame);
    const base =
      (boundsOf(whole)?.bottom ?? 0) + diagramGap - (boundsOf(strip)?.top ?? 0);
    const moved = moveStrip(strip, base);
    placed.push({ diagram, strip: moved, base });
    whole = beside(whole, moved);
  }
  const drops = dropLines(member, placed, frame);
  return {
    marks: [...drops.marks, ...whole.marks],
    labels: whole.labels,
    obstacles: [...whole.obstacles, ...drops.boxes],
  };
}
