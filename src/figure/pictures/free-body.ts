import type { FigureSetting } from '../figure-setting.ts';
import type { BeamPicture } from '../figure-spec.ts';
import { axesWidth, layAxes } from './axes.ts';
import type { Strip } from '../strip.ts';
import { withDimensions } from './dimensions.ts';
import { framePictures } from './frame-pictures.ts';
import { layPicture } from './lay-picture.ts';
import { beside, boundsOf, moveStrip } from '../strip.ts';

/** Between free bodies, points. */
const bodyGap = 16;

/**
 * Free bodies one under the other on common stations, with the axes at the left. A free body has
 * no supports: their reactions stand in their places.
 */
export function layFreeBodies(
  pictures: readonly BeamPicture[],
  setting: FigureSetting,
): Strip {
  const free = pictures.map((picture) => ({ ...picture, supports: [] }));
  const frame = framePictures(free, setting, axesWidth);
  // The axes stand beside the first body, under its case tag where it has one.
  let whole = moveStrip(layAxes(setting), frame.hasTags ? 26 : 6);
  for (const [index, picture] of free.entries()) {
    const body = withDimensions(layPicture(picture, frame), picture.dimensions, frame);
    const foot = (boundsOf(whole)?.bottom ?? 0) + bodyGap;
    const y = index === 0 ? 0 : foot - (boundsOf(body)?.top ?? 0);
    whole = beside(whole, moveStrip(body, y));
  }
  return whole;
}
