import type { Restraint, Support } from '../../statics/index.ts';
import type { BeamPoint, BeamSupport } from '../definitions.ts';
import { directionCosines } from './direction-cosines.ts';

/** A support as the reaction components that it can give, with its stiffness and its settlement. */
export function idealiseSupport(
  support: BeamSupport,
  points: readonly BeamPoint[],
): Support {
  const point = points.find((one) => one.name === support.point);
  if (point === undefined) throw new RangeError(`no point ${support.point}`);
  return {
    point: support.point,
    x: point.x,
    type: support.type,
    restraints: [...forcesOf(support), ...momentsOf(support)].map((restraint) =>
      settled(restraint, support),
    ),
  };
}

const alongX: Restraint = { kind: 'force', direction: [1, 0] };
const alongY: Restraint = { kind: 'force', direction: [0, 1] };

function forcesOf(support: BeamSupport): readonly Restraint[] {
  switch (support.type) {
    case 'pin':
    case 'fixed':
      return [alongX, alongY];
    case 'guide':
      return [alongX];
    case 'roller':
      return [
        support.normal === undefined
          ? alongY
          : { kind: 'force', direction: directionCosines(support.normal.si) },
      ];
    case 'spring':
      return support.stiffness === undefined
        ? []
        : [{ ...alongY, stiffness: support.stiffness.si }];
  }
}

function momentsOf(support: BeamSupport): readonly Restraint[] {
  if (support.rotation !== undefined)
    return [{ kind: 'moment', stiffness: support.rotation.si }];
  return support.type === 'fixed' || support.type === 'guide'
    ? [{ kind: 'moment' }]
    : [];
}

// The foot sinks by s: against a reaction along n it moves by s·n_y, which is the part an inclined roller feels.
function settled(restraint: Restraint, support: BeamSupport): Restraint {
  const { settlement } = support;
  if (
    settlement === undefined ||
    restraint.kind === 'moment' ||
    restraint.direction[1] === 0
  )
    return restraint;
  const value = settlement.value.si * restraint.direction[1];
  return { ...restraint, settlements: [{ case: settlement.case, value }] };
}
