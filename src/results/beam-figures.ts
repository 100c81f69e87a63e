import {
  breakpointsOf,
  valueAt,
  type BeamResult,
  type Extreme,
  type Reaction,
  type Side,
} from '../statics/index.ts';
import type { FigureMaker } from './figures-in.ts';
import type {
  ClosureFigures,
  EntryResults,
  ExtremeFigure,
  Figure,
  ReactionFigures,
  StationFigures,
} from './results.ts';

/** One case or combination of a beam as data; stations where their number is given. */
export function entryFigures(
  result: BeamResult,
  figure: FigureMaker,
  stations: number | undefined,
): EntryResults {
  const { shear, moment } = result.extremes;
  const deflection = result.displacement?.extremes;
  return {
    reactions: result.reactions.map((reaction) => reactionFigures(reaction, figure)),
    shear: {
      max: extremeFigure(shear.max, 'force', figure),
      min: extremeFigure(shear.min, 'force', figure),
    },
    moment: {
      max: extremeFigure(moment.max, 'moment', figure),
      min: extremeFigure(moment.min, 'moment', figure),
    },
    ...(deflection === undefined
      ? {}
      : {
          deflection: {
            max: extremeFigure(deflection.max, 'deflection', figure),
            min: extremeFigure(deflection.min, 'deflection', figure),
          },
        }),
    ...(stations === undefined
      ? {}
      : { stations: stationFigures(result, figure, stations) }),
  };
}

/** An extreme with its station. */
export function extremeFigure(
  extreme: Extreme,
  what: 'force' | 'moment' | 'deflection',
  figure: FigureMaker,
): ExtremeFigure {
  return { ...figure(extreme.value, what), at: figure(extreme.x, 'length') };
}

function reactionFigures(reaction: Reaction, figure: FigureMaker): ReactionFigures {
  const given = (value: number | null, what: 'force' | 'moment'): Figure | null =>
    value === null ? null : figure(value, what);
  return {
    point: reaction.point,
    x: given(reaction.x, 'force'),
    y: given(reaction.y, 'force'),
    moment: given(reaction.moment, 'moment'),
  };
}

/**
 * Evenly spaced stations from end to end, each with the side that it is read from: the first just right of
 * itself, all others just left; a station that rounding has pushed off a jump still counts as standing on it.
 *
 * @throws RangeError where the count is no whole number of 1 or more.
 */
export function stationsAlong(
  breakpoints: readonly number[],
  count: number,
): readonly { readonly x: number; readonly side: Side }[] {
  if (!Number.isInteger(count) || count < 1) {
    throw new RangeError(`stations must divide a member into 1 or more, not ${count}`);
  }
  const start = breakpoints[0] ?? 0;
  const end = breakpoints.at(-1) ?? start;
  return Array.from({ length: count + 1 }, (_, index) => ({
    x: index === count ? end : start + ((end - start) * index) / count,
    side: index === 0 ? 'right' : 'left',
  }));
}

/** Values at evenly spaced stations. */
function stationFigures(
  result: BeamResult,
  figure: FigureMaker,
  count: number,
): readonly StationFigures[] {
  const { displacement } = result;
  return stationsAlong(breakpointsOf(result.shear), count).map(({ x, side }) => {
    return {
      x: figure(x, 'length'),
      shear: figure(valueAt(result.shear, x, side), 'force'),
      moment: figure(valueAt(result.moment, x, side), 'moment'),
      slope:
        displacement === undefined
          ? null
          : figure(valueAt(displacement.slope, x, side), 'angle'),
      deflection:
        displacement === undefined
          ? null
          : figure(valueAt(displacement.deflection, x, side), 'deflection'),
    };
  });
}

/** How every sum of a result closed. */
export function closureFigures(
  result: BeamResult,
  figure: FigureMaker,
): readonly ClosureFigures[] {
  return result.residuals.map(({ equation, residual, scale }) => {
    const what = /^forces |^closing (axial|shear)$/.test(equation) ? 'force' : 'moment';
    return {
      result: result.mark,
      equation,
      residual: figure(residual, what),
      scale: figure(scale, what),
    };
  });
}
