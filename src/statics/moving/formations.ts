import type { TrainPlace } from '../solution.ts';
import type { Train } from '../structure.ts';

/** Axles that roll at fixed distances from one another. */
export interface RigidGroup {
  /** Front first; `offset` is the station of the axle less that of the group's first, in metres. */
  readonly axles: readonly {
    readonly index: number;
    readonly size: number;
    readonly offset: number;
  }[];
}

/**
 * A train with some of its variable spacings at a bound and the others free within theirs: rigid
 * groups one behind the other, and the bounds of the free spacing from each group's last axle to
 * the first of the next.
 */
export interface Formation {
  readonly direction: TrainPlace['direction'];
  readonly groups: readonly RigidGroup[];
  readonly gaps: readonly { readonly least: number; readonly greatest: number }[];
}

/**
 * Every formation of a train, both ways where it may travel both. Where an effect is greatest, each
 * variable spacing is either at a bound, and the groups on both sides of it roll as one, or it is free, and
 * each group stands where its own sum is greatest: so these are all there is to try, 3 to the power
 * of the number of variable spacings for each way.
 */
export function formationsOf(train: Train): readonly Formation[] {
  const { axles, spacings, travel } = train;
  const directions = travel === 'both' ? (['right', 'left'] as const) : [travel];
  return directions.flatMap((direction) => {
    const [size = 0, ...rest] = axles;
    const start: Formation = {
      direction,
      groups: [{ axles: [{ index: 0, size, offset: 0 }] }],
      gaps: [],
    };
    return rest.reduce<readonly Formation[]>(
      (formations, next, place) => {
        const { least, greatest } = spacings[place] ?? { least: 0, greatest: 0 };
        const axle = { index: place + 1, size: next };
        return formations.flatMap((formation) =>
          least === greatest
            ? [coupled(formation, axle, least)]
            : [
                coupled(formation, axle, least),
                coupled(formation, axle, greatest),
                trailing(formation, axle, { least, greatest }),
              ],
        );
      },
      [start],
    );
  });
}

type NextAxle = Pick<RigidGroup['axles'][number], 'index' | 'size'>;

/** The formation with one more axle at a fixed distance behind its last. */
function coupled(formation: Formation, axle: NextAxle, spacing: number): Formation {
  const last = formation.groups.at(-1) ?? { axles: [] };
  const behind = formation.direction === 'right' ? -spacing : spacing;
  const offset = (last.axles.at(-1)?.offset ?? 0) + behind;
  return {
    ...formation,
    groups: [
      ...formation.groups.slice(0, -1),
      { axles: [...last.axles, { ...axle, offset }] },
    ],
  };
}

/** The formation with one more axle, the first of a group of its own. */
function trailing(
  formation: Formation,
  axle: NextAxle,
  gap: Formation['gaps'][number],
): Formation {
  return {
    ...formation,
    groups: [...formation.groups, { axles: [{ ...axle, offset: 0 }] }],
    gaps: [...formation.gaps, gap],
  };
}
