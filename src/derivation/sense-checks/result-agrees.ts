import {
  keyStations,
  valueAt,
  type BeamResult,
  type KeyStation,
  type Reaction,
  type Restraint,
  type Side,
} from '../../statics/index.ts';
import { pointAt, type CaseContext } from '../case-context.ts';
import { forceFromRight, momentFromRight } from '../moment-from-right.ts';
import { lengthText, valueText } from '../printing.ts';
import { shearAreas } from '../shear-areas.ts';
import { segmentsOf } from '../../statics/index.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';

/** The forces of a support along the axes are those of its restraints, so that tables and sums speak of the same numbers. */
export function componentsAgree({
  structure,
  result,
  printing,
}: CaseContext): readonly CheckOutcome[] {
  return structure.supports.map(({ point, restraints }) => {
    const reaction = result.reactions.find((one) => one.point === point);
    const scale = (reaction?.components ?? []).reduce(
      (all, component) => all + Math.abs(component),
      0,
    );
    const off =
      reaction === undefined ? Infinity : greatestDifference(reaction, restraints);
    return {
      holds: off <= 1e-9 * scale,
      finding: `the reaction at ${point} is not that of its restraints; it is off by ${Number.isFinite(off) ? valueText(printing, 'force', off) : 'all'}`,
    };
  });
}

function greatestDifference(
  reaction: Reaction,
  restraints: readonly Restraint[],
): number {
  const worked = { x: 0, y: 0, moment: 0 };
  for (const [index, restraint] of restraints.entries()) {
    const component = reaction.components[index] ?? 0;
    if (restraint.kind === 'moment') worked.moment += component;
    else {
      worked.x += restraint.direction[0] * component;
      worked.y += restraint.direction[1] * component;
    }
  }
  return Math.max(
    Math.abs(worked.x - (reaction.x ?? 0)),
    Math.abs(worked.y - (reaction.y ?? 0)),
    Math.abs(worked.moment - (reaction.moment ?? 0)),
  );
}

/** Axial force, shear and moment on both sides of every key station, found again from everything to the right of the cut. */
export function curvesFromTheRight(context: CaseContext): readonly CheckOutcome[] {
  const { structure, result } = context;
  const stations = keyStations(structure, result);
  const last = stations.at(-1)?.x ?? 0;
  return stations.flatMap((station) =>
    (['left', 'right'] as const)
      .filter(
        (side) =>
          !(side === 'right' && station.x === last) &&
          !(side === 'left' && station === stations[0]),
      )
      .flatMap((side) => atCut(context, station, side)),
  );
}

function atCut(
  context: CaseContext,
  { x, axial, shear, moment }: KeyStation,
  side: Side,
): readonly CheckOutcome[] {
  const { printing } = context;
  const place = pointAt(context.structure, x) ?? lengthText(printing, x);
  const one = (
    what: string,
    kind: 'force' | 'moment',
    { claimed, found }: { claimed: number; found: { total: number; scale: number } },
  ): CheckOutcome => ({
    // A curve counts as much as rounding of all that acts on the beam leaves in it.
    holds: agree(
      found.total,
      claimed,
      Math.max(found.scale, sizeOfAll(context.result, kind)),
    ),
    finding: `the ${what} just ${side} of ${place} is ${valueText(printing, kind, claimed)}, but the part to its right gives ${valueText(printing, kind, found.total)}`,
  });
  return [
    one('axial force', 'force', {
      claimed: axial[side],
      found: forceFromRight(context, { x, side, along: 'x' }),
    }),
    one('shear', 'force', {
      claimed: shear[side],
      found: forceFromRight(context, { x, side, along: 'y' }),
    }),
    one('moment', 'moment', {
      claimed: moment[side],
      found: momentFromRight(context, x, side),
    }),
  ];
}

function sizeOfAll(
  { extremes, reactions }: BeamResult,
  kind: 'force' | 'moment',
): number {
  const { axial, shear, moment } = extremes;
  const greatest = (of: typeof axial): number =>
    Math.max(Math.abs(of.max.value), Math.abs(of.min.value));
  if (kind === 'moment') return greatest(moment);
  return reactions.reduce(
    (all, { x, y }) => all + Math.abs(x ?? 0) + Math.abs(y ?? 0),
    greatest(shear) + greatest(axial),
  );
}

/** The extremes stand on their curves, and no key station or place of zero shear passes them. */
export function extremesAreGreatest({
  structure,
  result,
  printing,
}: CaseContext): readonly CheckOutcome[] {
  const zeros = shearAreas(segmentsOf(result)).map(({ from }) => from);
  const stations = [...keyStations(structure, result).map(({ x }) => x), ...zeros];
  return (['axial', 'shear', 'moment'] as const).map((what) => {
    const { max, min } = result.extremes[what];
    const values = stations.flatMap((x) => [
      valueAt(result[what], x, 'left'),
      valueAt(result[what], x, 'right'),
    ]);
    const size = Math.max(
      Math.abs(max.value),
      Math.abs(min.value),
      ...values.map(Math.abs),
    );
    const stands = ({ value, x }: typeof max): boolean =>
      (['left', 'right'] as const).some((side) =>
        agree(valueAt(result[what], x, side), value, size),
      );
    const kind = what === 'moment' ? 'moment' : 'force';
    return {
      holds:
        stands(max) &&
        stands(min) &&
        values.every(
          (value) =>
            value <= max.value + 1e-9 * size && value >= min.value - 1e-9 * size,
        ),
      finding: `the ${what} curve does not have the extremes ${valueText(printing, kind, max.value)} and ${valueText(printing, kind, min.value)} where they are said to be`,
    };
  });
}
