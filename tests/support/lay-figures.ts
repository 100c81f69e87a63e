import { layOutFigure } from '../../src/figure/index.ts';
import type { BeamPicture, FigureSpec, LaidFigure } from '../../src/figure/index.ts';
import { figureSetting } from './figure-preview.ts';
import { member } from './pictures.ts';

/** A member laid out in the shared setting. */
export function layMember(picture: BeamPicture): LaidFigure {
  return layOutFigure(member(picture), figureSetting);
}

/** A free body, or several, laid out in the shared setting. */
export function layBodies(...pictures: readonly BeamPicture[]): LaidFigure {
  const spec: FigureSpec = { kind: 'free-body', pictures, alternate: '' };
  return layOutFigure(spec, figureSetting);
}
