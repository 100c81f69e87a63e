import { arrowStyles } from '../figure-setting.ts';
import type { PictureReaction } from '../figure-spec.ts';
import type { Wish } from '../labels/settle-labels.ts';
import type { Board } from '../board.ts';
import { axialPoses, crossPoses, isAxial, standOff } from './force-poses.ts';
import type { ForcePose } from './force-poses.ts';
import { drawPose, wishForArrow } from './put-force.ts';
import { putMoment } from './put-moment.ts';
import { setSmall } from '../labels/small-label.ts';
import type { StripSetting } from './strip-setting.ts';

/** Length of every reaction's arrow, points: its size is not known when it is drawn. */
const reactionLength = 24;
/** How far a reaction's arrow may stand off the member where others crowd it, points. */
const standOffs = [26, 52, 78, 104];

/**
 * Draws the reactions of a free body, moments first; every one is drawn. An upward reaction
 * pushes from below, a downward one from above.
 */
export function putReactions(
  board: Board,
  reactions: readonly PictureReaction[],
  setting: StripSetting,
): readonly Wish[] {
  const moments = reactions.filter(({ kind }) => kind === 'moment');
  const forces = reactions.filter(({ kind }) => kind === 'force');
  return [...moments, ...forces].flatMap((reaction) =>
    putReaction(board, reaction, setting),
  );
}

function putReaction(
  board: Board,
  reaction: PictureReaction,
  setting: StripSetting,
): readonly Wish[] {
  const { stations, theme, ends } = setting;
  const style = arrowStyles(theme).reaction;
  const label = setSmall(reaction.label, setting, { colour: style.colour });
  const x = stations.xOf(reaction.x);
  if (reaction.kind === 'moment') {
    const turning = { x, turn: reaction.turn, label, style, ends, openAbove: false };
    const wish = putMoment(board, turning, true);
    return wish === undefined ? [] : [wish];
  }
  const poses = posesOf(x, reaction.degrees, setting);
  const pose =
    poses.find((each) => board.hasRoomFor(drawPose(each, style, setting), 0.2)) ??
    poses[0];
  if (pose === undefined) return [];
  board.draw(drawPose(pose, style, setting));
  return [wishForArrow(label, pose, { beside: true })];
}

function posesOf(
  x: number,
  degrees: number,
  { surfaceAt, ends }: StripSetting,
): readonly ForcePose[] {
  const surface = surfaceAt(x);
  const force = { x, degrees, length: reactionLength, surface, ends };
  if (isAxial(degrees)) return axialPoses(force, 'below');
  const [push, pull] = crossPoses(force);
  if (push === undefined || pull === undefined) return [];
  return [push, pull, ...standOffs.map((by) => standOff(push, by))];
}
