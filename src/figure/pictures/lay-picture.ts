import type { FigureSetting } from '../figure-setting.ts';
import type { BeamPicture, PictureLoad } from '../figure-spec.ts';
import { boxAt } from '../geometry/box.ts';
import { beside, boundsOf, emptyStrip, moveStrip } from '../strip.ts';
import type { Strip } from '../strip.ts';
import { layStrip } from './lay-strip.ts';
import type { StripContent } from './lay-strip.ts';
import type { Magnitudes } from './magnitudes.ts';
import { setInGutter } from '../labels/small-label.ts';
import { isSame } from './stations.ts';
import type { Stations } from './stations.ts';
import type { StripSetting } from './strip-setting.ts';

/** What drawing one picture on the stations of a figure depends on. */
export interface PictureSetting extends FigureSetting {
  readonly stations: Stations;
  readonly magnitudes: Magnitudes;
  /** Bounds of labels, x. */
  readonly bounds: { readonly left: number; readonly right: number };
  /** True where each row carries the tag of its case in the gutter; false where all loads are of one case. */
  readonly hasTags: boolean;
}

/** Between strips, points. */
const stripGap = 7;

/**
 * Draws a member with everything that stands on it. The loads of the first case stand on the
 * member; those of every other case, and loads that would cover others, stand in rows above,
 * each on a base line as long as the member.
 */
export function layPicture(picture: BeamPicture, setting: PictureSetting): Strip {
  let whole = emptyStrip;
  let axis: StripContent['axis'] = 'member';
  for (const loads of byCase(picture.loads)) {
    let waiting = loads;
    do {
      const laid = layStrip(
        { axis, picture, loads: waiting },
        stripSetting(picture, setting, axis),
      );
      if (axis === 'base-line' && laid.overflow.length === waiting.length)
        throw new Error('A load has no room on an empty strip.');
      const tagged = withTag(laid.strip, waiting[0]?.case, setting);
      whole = axis === 'member' ? tagged : onTop(whole, tagged);
      axis = 'base-line';
      waiting = laid.overflow;
    } while (waiting.length > 0);
  }
  return whole;
}

/** Loads by their case, in the order in which cases first appear; one empty list where there are none. */
function byCase(loads: readonly PictureLoad[]): readonly (readonly PictureLoad[])[] {
  const cases = [...new Set(loads.map((load) => load.case))];
  if (cases.length === 0) return [[]];
  return cases.map((name) => loads.filter((load) => load.case === name));
}

function stripSetting(
  picture: BeamPicture,
  setting: PictureSetting,
  axis: StripContent['axis'],
): StripSetting {
  const { stations, theme } = setting;
  const line = axis === 'member' ? theme.line.member : theme.line.dimension;
  const hinges =
    axis === 'member' ? picture.hinges.map(({ x }) => stations.xOf(x)) : [];
  return {
    ...setting,
    ends: { left: stations.xOf(picture.start), right: stations.xOf(picture.end) },
    surfaceAt: (x) => (hinges.some((at) => isSame(at, x)) ? 2.8 : line / 2 + 0.3),
  };
}

/** The strip with the tag of its case in the gutter at its left. */
function withTag(
  strip: Strip,
  name: string | undefined,
  setting: PictureSetting,
): Strip {
  if (!setting.hasTags || name === undefined) return strip;
  const label = setInGutter({ kind: 'text', text: name }, setting, { heavy: true });
  const box = boxAt(0, -label.height - 3, label);
  return {
    ...strip,
    marks: [
      ...strip.marks,
      { kind: 'group', x: box.left, y: box.top, marks: label.marks },
    ],
    labels: [...strip.labels, box],
  };
}

/** Sets a strip on top of all that is there. */
function onTop(whole: Strip, strip: Strip): Strip {
  const top = boundsOf(whole)?.top ?? 0;
  const foot = boundsOf(strip)?.bottom ?? 0;
  return beside(whole, moveStrip(strip, top - stripGap - foot));
}
