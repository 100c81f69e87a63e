import type { FigureSetting } from '../figure-setting.ts';
import type { BeamPicture } from '../figure-spec.ts';
import type { PictureSetting } from './lay-picture.ts';
import { magnitudesOf } from './magnitudes.ts';
import { marginsOf } from './margins.ts';
import { setInGutter } from '../labels/small-label.ts';
import { stationsBetween } from './stations.ts';

/** Between case tags and what is right of them, points. */
const tagGap = 7;

/**
 * The common frame of the pictures of one figure: one scale of stations, one scale of magnitudes,
 * margins for whatever reaches past the ends, and a gutter at the left for case tags and, not
 * narrower than asked for, for what the figure itself sets there.
 */
export function framePictures(
  pictures: readonly BeamPicture[],
  setting: FigureSetting,
  ownGutter: number = 0,
): PictureSetting {
  const span = {
    start: Math.min(...pictures.map(({ start }) => start)),
    end: Math.max(...pictures.map(({ end }) => end)),
  };
  const loads = pictures.flatMap((picture) => picture.loads);
  const magnitudes = magnitudesOf(loads);
  const tags = tagWidth(pictures, setting);
  const gutter = Math.max(ownGutter, tags === 0 ? 0 : tags + tagGap);
  const bounds = { left: gutter, right: setting.width };
  let stations = stationsBetween(span, bounds);
  // Margins shorten the member and so need a little more margin: three rounds settle that.
  for (let round = 0; round < 3; round += 1) {
    const margins = pictures.map((picture) =>
      marginsOf(picture, { stations, magnitudes }),
    );
    stations = stationsBetween(span, {
      left: bounds.left + Math.max(...margins.map(({ left }) => left)),
      right: bounds.right - Math.max(...margins.map(({ right }) => right)),
    });
  }
  return {
    ...setting,
    stations,
    magnitudes,
    bounds,
    hasTags: tags > 0,
  };
}

/** Width of the widest case tag; 0 where all loads are of one case and none is tagged. */
function tagWidth(pictures: readonly BeamPicture[], setting: FigureSetting): number {
  const cases = new Set(
    pictures.flatMap(({ loads }) => loads.map((load) => load.case)),
  );
  if (cases.size < 2) return 0;
  const widths = [...cases].map((name) =>
    name === undefined
      ? 0
      : setInGutter({ kind: 'text', text: name }, setting, { heavy: true }).width,
  );
  return Math.max(...widths);
}
