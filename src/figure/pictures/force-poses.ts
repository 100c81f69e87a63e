import type { Point } from '../geometry/point.ts';
import { directionOf, pointFrom } from '../geometry/point.ts';
import { isSame } from './stations.ts';
import type { Ends } from './strip-setting.ts';

/** One way to draw a force: an arrow, and for a force along the axis inside the member the post it stands on. */
export interface ForcePose {
  readonly tail: Point;
  readonly tip: Point;
  /** Where the arrow lies: above the member, below it, or along its axis outside an end. */
  readonly lies: 'above' | 'below' | 'outside';
  readonly post?: readonly [Point, Point];
}

/** The force to be posed. */
export interface PosedForce {
  /** Where it acts, x in points. */
  readonly x: number;
  readonly degrees: number;
  /** Length of its arrow, points. */
  readonly length: number;
  /** From the axis to where arrows touch. */
  readonly surface: number;
  readonly ends: Ends;
}

/** A force nearer to the axis than about 10° is drawn along it. */
const alongAxis = 0.17;

/** True where a force is drawn along the axis. */
export function isAxial(degrees: number): boolean {
  return Math.abs(directionOf(degrees).y) < alongAxis;
}

/**
 * The ways to draw a force across the axis: pushing, its tip at the member; then pulling, its
 * tail at the member on the other side. A force that points up pushes from below.
 */
export function crossPoses(force: PosedForce): readonly ForcePose[] {
  const direction = directionOf(force.degrees);
  const sideOfTail = direction.y > 0 ? -1 : 1;
  const touch = { x: force.x, y: sideOfTail * force.surface };
  const opposite = { x: force.x, y: -sideOfTail * force.surface };
  const tailLies = sideOfTail < 0 ? 'above' : 'below';
  const tipLies = sideOfTail < 0 ? 'below' : 'above';
  return [
    {
      tail: pointFrom(touch, direction, -force.length),
      tip: touch,
      lies: tailLies,
    },
    {
      tail: opposite,
      tip: pointFrom(opposite, direction, force.length),
      lies: tipLies,
    },
  ];
}

/** The same arrow moved along its own line, away from the member. */
export function standOff(pose: ForcePose, by: number): ForcePose {
  const outward = pose.lies === 'above' ? -by : by;
  const move = ({ x, y }: Point): Point => ({ x, y: y + outward });
  return { ...pose, tail: move(pose.tail), tip: move(pose.tip) };
}

/** How far outside an end, and how far above or below the axis, axial arrows may stand; the first is the most wanted. */
const endGaps = [3.4, 8, 14.5];
const postHeights = [7, 12];

/**
 * The ways to draw a force along the axis: outside an end where it acts at one; else on a short
 * post beside the member, above or below.
 */
export function axialPoses(
  force: PosedForce,
  first: 'above' | 'below',
): readonly ForcePose[] {
  return [...endPoses(force), ...postPoses(force, first)];
}

function endPoses({ x, degrees, length, ends }: PosedForce): readonly ForcePose[] {
  const outwards = [
    ...(isSame(x, ends.left) ? [-1] : []),
    ...(isSame(x, ends.right) ? [1] : []),
  ];
  const direction = directionOf(degrees);
  return outwards.flatMap((outward) =>
    endGaps.map((gap): ForcePose => {
      const inner = { x: x + outward * gap, y: 0 };
      const pulls = direction.x * outward > 0;
      const outer = pointFrom(inner, direction, pulls ? length : -length);
      return pulls
        ? { tail: inner, tip: outer, lies: 'outside' }
        : { tail: outer, tip: inner, lies: 'outside' };
    }),
  );
}

function postPoses(force: PosedForce, first: 'above' | 'below'): readonly ForcePose[] {
  const { x, degrees, length, surface, ends } = force;
  const direction = directionOf(degrees);
  const sides = first === 'above' ? ([-1, 1] as const) : ([1, -1] as const);
  return postHeights.flatMap((height) =>
    sides.flatMap((side) => {
      const foot = { x, y: side * surface };
      const top = { x, y: side * height };
      const lies = side < 0 ? 'above' : 'below';
      const pulling = { tail: top, tip: pointFrom(top, direction, length) };
      const pushing = { tail: pointFrom(top, direction, -length), tip: top };
      const post = [foot, { x, y: side * (height + 2.5) }] as const;
      const both = [pulling, pushing];
      const beside = both.filter(({ tail, tip }) =>
        [tail.x, tip.x].every((at) => at >= ends.left - 1 && at <= ends.right + 1),
      );
      return (beside.length === 0 ? both : beside).map(({ tail, tip }): ForcePose => ({
        tail,
        tip,
        lies,
        post,
      }));
    }),
  );
}
