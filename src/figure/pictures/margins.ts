import type { BeamPicture, PictureLoad, PictureSupport } from '../figure-spec.ts';
import { directionOf } from '../geometry/point.ts';
import { isAxial } from './force-poses.ts';
import type { Magnitudes } from './magnitudes.ts';
import type { Stations } from './stations.ts';

/** How far a picture reaches beyond the ends of its stations, points. */
export interface Margins {
  readonly left: number;
  readonly right: number;
}

const least = 15;
/** Room that a support symbol needs beyond the end that it stands at. */
const supportReach: Readonly<Record<PictureSupport['type'], number>> = {
  pin: 12,
  roller: 12,
  fixed: 8,
  guide: 13,
  spring: 12,
  'pin-with-rotation-spring': 12,
};
/** The same for a roller on a slope. */
const slopedReach = 18;
const axialReach = 33;
const standOff = 12;
/** What stands nearer than this to an end can push an axial force outwards. */
const nearBy = 16;
const momentReach = 16;

/** Something that stands at a station and reaches so far to either side. */
interface Reach {
  readonly x: number;
  readonly kind: 'support' | 'wall' | 'moment' | 'force' | 'axial';
  readonly by: number;
}

/** The margins that a picture needs where its stations stand as given. */
export function marginsOf(
  picture: BeamPicture,
  {
    stations,
    magnitudes,
  }: { readonly stations: Stations; readonly magnitudes: Magnitudes },
): Margins {
  const reaches = [
    ...picture.supports.map(supportReachOf),
    ...picture.reactions.map((reaction) =>
      reaction.kind === 'moment'
        ? momentReachAt(reaction.x)
        : forceReach(reaction.x, reaction.degrees, axialReach),
    ),
    ...picture.loads.flatMap((load) => loadReaches(load, magnitudes)),
  ];
  const beyond = (end: number): number => {
    const stretches = reaches.map((reach) => {
      const x = stations.xOf(reach.x);
      const near = reaches.filter(
        (other) => Math.abs(stations.xOf(other.x) - x) < nearBy,
      );
      return stretchOf(near) - Math.abs(x - end);
    });
    return Math.max(least, ...stretches);
  };
  return { left: beyond(stations.left), right: beyond(stations.right) };
}

/** How far everything about one station reaches: an axial force stands outside what else acts there. */
function stretchOf(reaches: readonly Reach[]): number {
  const most = (kind: Reach['kind']): number =>
    Math.max(0, ...reaches.filter((each) => each.kind === kind).map(({ by }) => by));
  const across = Math.max(most('moment'), most('force'), most('wall'));
  const axial = most('axial') + (across > 0 ? standOff : 0);
  return Math.max(most('support'), across, axial);
}

/** A support under the member is in nobody's way along the axis, a wall or a slope is. */
function supportReachOf({ x, type, normal = 90 }: PictureSupport): Reach {
  if (normal !== 90) return { x, kind: 'wall', by: slopedReach };
  const isWall = ['fixed', 'guide', 'pin-with-rotation-spring'].includes(type);
  return { x, kind: isWall ? 'wall' : 'support', by: supportReach[type] };
}

function momentReachAt(x: number): Reach {
  return { x, kind: 'moment', by: momentReach };
}

function forceReach(x: number, degrees: number, length: number): Reach {
  const lean = Math.abs(directionOf(degrees).x) * length;
  return isAxial(degrees)
    ? { x, kind: 'axial', by: axialReach }
    : { x, kind: 'force', by: lean + 2.5 };
}

function loadReaches(load: PictureLoad, magnitudes: Magnitudes): readonly Reach[] {
  switch (load.kind) {
    case 'force':
      return [forceReach(load.x, load.degrees, magnitudes.forceLength(load.size))];
    case 'couple':
      return [momentReachAt(load.x)];
    case 'distributed': {
      const [first, last] = magnitudes.heights(load.sizes);
      return isAxial(load.degrees)
        ? []
        : [
            forceReach(load.from, load.degrees, Math.abs(first)),
            forceReach(load.to, load.degrees, Math.abs(last)),
          ];
    }
  }
}
