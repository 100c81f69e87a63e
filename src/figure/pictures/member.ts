import type { FigureSetting } from '../figure-setting.ts';
import type { BeamPicture } from '../figure-spec.ts';
import type { Strip } from '../strip.ts';
import { withDimensions } from './dimensions.ts';
import { framePictures } from './frame-pictures.ts';
import { layPicture } from './lay-picture.ts';

/** A member as loaded, with its dimensions. */
export function layMember(picture: BeamPicture, setting: FigureSetting): Strip {
  const frame = framePictures([picture], setting);
  return withDimensions(layPicture(picture, frame), picture.dimensions, frame);
}
