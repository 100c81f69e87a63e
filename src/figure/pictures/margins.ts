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
  roller: 16,
  fixed: 8,
  guide: 13,
  spring: 12,
  'pin-with-rotation-spring': 12,
};
const axialReach = 32;
const momentReach = 16;

/** Something that stands at a station and reaches to either side. */
interface Reach {
  readonly x: number;
  readonly left: number;
  readonly right: number;
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
    ...picture.supports.map((support) => both(support.x, supportReach[support.type])),
    ...picture.reactions.map((reaction) =>
      reaction.kind === 'moment'
        ? both(reaction.x, momentReach)
        : forceReach(reaction.x, reaction.degrees, 24),
    ),
    ...picture.loads.flatMap((load) => loadReaches(load, magnitudes)),
  ];
  const beyond = (side: 'left' | 'right', end: number): number => {
    // What reaches outwards at one station stands one behind the other there: a moment, then a force.
    const sums = new Map<number, number>();
    for (const reach of reaches) {
      const inside = Math.abs(stations.xOf(reach.x) - end);
      sums.set(reach.x, (sums.get(reach.x) ?? -inside) + reach[side]);
    }
    return Math.max(least, ...sums.values());
  };
  return {
    left: beyond('left', stations.left),
    right: beyond('right', stations.right),
  };
}

function both(x: number, reach: number): Reach {
  return { x, left: reach, right: reach };
}

function forceReach(x: number, degrees: number, length: number): Reach {
  if (isAxial(degrees)) return both(x, axialReach);
  const lean = Math.abs(directionOf(degrees).x) * length;
  return both(x, lean + 2);
}

function loadReaches(load: PictureLoad, magnitudes: Magnitudes): readonly Reach[] {
  switch (load.kind) {
    case 'force':
      return [forceReach(load.x, load.degrees, magnitudes.forceLength(load.size))];
    case 'couple':
      return [both(load.x, momentReach)];
    case 'distributed': {
      const [first, last] = magnitudes.heights(load.sizes);
      const across = !isAxial(load.degrees);
      return across
        ? [
            forceReach(load.from, load.degrees, Math.abs(first)),
            forceReach(load.to, load.degrees, Math.abs(last)),
          ]
        : [];
    }
  }
}
