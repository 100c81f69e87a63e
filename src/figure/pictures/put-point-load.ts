import { arrowStyles } from '../figure-setting.ts';
import type { PictureLoad } from '../figure-spec.ts';
import type { Board } from '../board.ts';
import type { DistributedShape } from './distributed-shape.ts';
import { axialPoses, crossPoses, isAxial, standOff } from './force-poses.ts';
import type { ForcePose, PosedForce } from './force-poses.ts';
import type { PutLoad } from './put-distributed.ts';
import { drawPose, wishForArrow } from './put-force.ts';
import { setSmall } from '../labels/small-label.ts';
import type { StripSetting } from './strip-setting.ts';

type PointLoad = Extract<PictureLoad, { readonly kind: 'force' }>;

/** An axial arrow is never longer than this, points: it stands in the margin. */
const longestAxial = 28;

/**
 * Draws a point load on the strip: at the member, or standing on a distributed load that is
 * there already; undefined where there is no room for it.
 */
export function putPointLoad(
  board: Board,
  load: PointLoad,
  setting: StripSetting & { readonly shelves: readonly DistributedShape[] },
): PutLoad | undefined {
  const style = arrowStyles(setting.theme).load;
  for (const pose of posesOf(load, setting)) {
    const part = drawPose(pose, style, setting);
    if (!board.hasRoomFor(part)) continue;
    board.draw(part);
    const label = setSmall(load.label, setting);
    return { wishes: [wishForArrow(label, pose, { beside: false })] };
  }
  return undefined;
}

function posesOf(
  load: PointLoad,
  setting: StripSetting & { readonly shelves: readonly DistributedShape[] },
): readonly ForcePose[] {
  const { stations, surfaceAt, ends, magnitudes } = setting;
  const length = magnitudes.forceLength(load.size);
  const x = stations.xOf(load.x);
  const { degrees } = load;
  const force: PosedForce = { x, degrees, length, surface: surfaceAt(x), ends };
  if (isAxial(load.degrees))
    return axialPoses({ ...force, length: Math.min(length, longestAxial) }, 'above');
  const [push, pull] = crossPoses(force);
  if (push === undefined || pull === undefined) return [];
  // An upward load may pull from above; a downward one must never seem to hang below.
  const poses = pull.lies === 'above' ? [push, pull] : [push];
  return poses.flatMap((pose) => onShelves(pose, setting.shelves));
}

/** An arrow over a sloping load may have to rise a little more than the load under its foot. */
const rises = [0.6, 3, 6, 9, 12, 16, 20];

/** The pose as it is, or raised on the distributed load under its foot: an arrow never stands among the arrows of a row. */
function onShelves(
  pose: ForcePose,
  shelves: readonly DistributedShape[],
): readonly ForcePose[] {
  const foot = Math.abs(pose.tip.y) < Math.abs(pose.tail.y) ? pose.tip : pose.tail;
  const heights = shelves
    .filter(({ from, to }) => foot.x >= from - 1 && foot.x <= to + 1)
    .map(({ from, to, outerAt }) => outerAt(Math.min(Math.max(foot.x, from), to)).y)
    .map((y) => (pose.lies === 'above' ? -y : y) - Math.abs(foot.y));
  const height = Math.max(0, ...heights);
  return height === 0 ? [pose] : rises.map((rise) => standOff(pose, height + rise));
}
