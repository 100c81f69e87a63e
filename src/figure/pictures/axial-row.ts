import type { PictureLoad } from '../figure-spec.ts';
import { directionOf } from '../geometry/point.ts';
import type { ArrowStyle } from '../ink/arrow.ts';
import { arrow } from '../ink/arrow.ts';
import type { Part } from '../ink/part.ts';
import { together } from '../ink/part.ts';
import type { StripSetting } from './strip-setting.ts';

type DistributedLoad = Extract<PictureLoad, { readonly kind: 'distributed' }>;

/** Room of one arrow and the part of it that the longest fills, points. */
const cell = 15;
const fill = 0.82;

/**
 * A force per length along the axis: a row of arrows one behind the other beside the member, as
 * long as the intensity is great, at a height y.
 */
export function axialRow(
  load: DistributedLoad,
  { y, style }: { readonly y: number; readonly style: ArrowStyle },
  { stations }: StripSetting,
): Part {
  const [from, to] = [stations.xOf(load.from), stations.xOf(load.to)];
  const [first, last] = load.sizes;
  const peak = Math.max(Math.abs(first), Math.abs(last));
  if (peak === 0) return together();
  const count = Math.max(1, Math.round((to - from) / cell));
  const room = (to - from) / count;
  const sense = Math.sign(directionOf(load.degrees).x);
  const arrows = Array.from({ length: count }, (_, index): Part => {
    const middle = from + (index + 0.5) * room;
    const part = (first + ((last - first) * (index + 0.5)) / count) / peak;
    const half = ((sense * part * room) / 2) * fill;
    return arrow({ x: middle - half, y }, { x: middle + half, y }, style);
  });
  return together(...arrows);
}
