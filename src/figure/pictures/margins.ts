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
const momentReach = 16;

/** Something that stands at a station and reaches so far to either side. */
interface Reach {
  readonly x: number;
  readonly kind: 'support' | 'moment' | 'force' | 'axial';
  readonly by: number;
}

/** The margins that a picture needs, found with stations that leave none. */
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
      const inside = Math.abs(stations.xOf(reach.x) - end);
      return stretchAt(reach.x, reaches) - inside;
    });
    return Math.max(least, ...stretches);
  };
  return { left: beyond(stations.left), right: beyond(stations.right) };
}

/** How far everything at one station reaches: an axial force stands outside what else acts there. */
function stretchAt(x: number, reaches: readonly Reach[]): number {
  const most = (kind: Reach['kind']): number =>
    Math.max(
      0,
      ...reaches
        .filter((each) => each.x === x && each.kind === kind)
        .map(({ by }) => by),
    );
  const across = Math.max(most('moment'), most('force'));
  const axial = most('axial') + (across > 0 ? standOff : 0);
  return Math.max(most('support'), across, axial);
}

function supportReachOf({ x, type, normal = 90 }: PictureSupport): Reach {
  return { x, kind: 'support', by: normal === 90 ? supportReach[type] : slopedReach };
}

function momentReachAt(x: number): Reach {
  return { x, kind: 'moment', by: momentReach };
}

function forceReach(x: number, degrees: number, length: number): Reach {
  const lean = Math.abs(directionOf(degrees).x) * length;
  return isAxial(degrees)
    ? { x, kind: 'axial', by: axialReach }
    : { x, kind: 'force', by: lean + 2 };
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
