import {
  breakpointsOf,
  valueAt,
  type Arrangement,
  type Range,
  type RangeCurves,
  type RangeExtremes,
  type RangeResult,
} from '../statics/index.ts';
import type { Display } from '../units/index.ts';
import { extremeFigure, stationsAlong } from './beam-figures.ts';
import type { FigureMaker } from './figures-in.ts';
import type {
  ArrangementFigures,
  EndsFigures,
  RangeEntryResults,
  RangeExtremeFigures,
  RangeStationFigures,
} from './results.ts';
import type { ChoiceInput } from './results-input.ts';

/** What the figures of a range are made with: the maker of figures, and what the choices of the beam stand for. */
export interface RangeSetting {
  readonly figure: FigureMaker;
  readonly choices: ReadonlyMap<string, ChoiceInput>;
}

/** A case or combination without a single state as data; stations where their number is given. */
export function rangeFigures(
  range: RangeResult,
  setting: RangeSetting,
  stations: number | undefined,
): RangeEntryResults {
  const { shear, moment, deflection } = range.extremes;
  return {
    kind: 'range',
    reactions: range.reactions.map(({ point, x, y, moment: couple }) => ({
      point,
      x: endsFigures(x, 'force', setting),
      y: endsFigures(y, 'force', setting),
      moment: endsFigures(couple, 'moment', setting),
    })),
    shear: extremesFigures(shear, 'force', setting),
    moment: extremesFigures(moment, 'moment', setting),
    ...(deflection === undefined
      ? {}
      : { deflection: extremesFigures(deflection, 'deflection', setting) }),
    ...(stations === undefined
      ? {}
      : { stations: stationFigures(range, setting.figure, stations) }),
  };
}

/** How the loads stand as data: the loaded spans, what is taken of carried reactions, and where trains are. */
export function arrangementFigures(
  arrangement: Arrangement,
  { figure, choices }: RangeSetting,
): ArrangementFigures {
  const chosen = arrangement.choices.flatMap(({ id, option }) => {
    const choice = choices.get(id);
    return choice === undefined ? [] : [{ choice, option }];
  });
  const spans = chosen.flatMap(({ choice, option }) =>
    choice.kind === 'span' && option !== 'off'
      ? [{ case: choice.case, from: choice.from, to: choice.to }]
      : [],
  );
  const carried = chosen.flatMap(({ choice, option }) =>
    choice.kind === 'carried'
      ? [
          {
            case: choice.case,
            member: choice.member,
            point: choice.point,
            component: choice.component,
            taken: option,
          },
        ]
      : [],
  );
  const trains = arrangement.trains.map(({ id, direction, axles, lane }) => ({
    train: id,
    direction,
    axles: axles.map(({ index, x }) => ({ axle: index + 1, at: figure(x, 'length') })),
    lane: lane.map(({ from, to }) => ({
      from: figure(from, 'length'),
      to: figure(to, 'length'),
    })),
  }));
  return {
    spans,
    ...(carried.length === 0 ? {} : { carried }),
    ...(trains.length === 0 ? {} : { trains }),
  };
}

function endsFigures(
  range: Range | null,
  what: 'force' | 'moment',
  setting: RangeSetting,
): EndsFigures | null {
  if (range === null) return null;
  const end = ({ value, arrangement }: Range['max']): EndsFigures['max'] => ({
    ...setting.figure(value, what),
    arrangement: arrangementFigures(arrangement, setting),
  });
  return { max: end(range.max), min: end(range.min) };
}

function extremesFigures(
  { max, min }: RangeExtremes,
  what: 'force' | 'moment' | 'deflection',
  setting: RangeSetting,
): RangeExtremeFigures {
  const end = (extreme: RangeExtremes['max']): RangeExtremeFigures['max'] => ({
    ...extremeFigure(extreme, what, setting.figure),
    arrangement: arrangementFigures(extreme.arrangement, setting),
  });
  return { max: end(max), min: end(min) };
}

function stationFigures(
  range: RangeResult,
  figure: FigureMaker,
  count: number,
): readonly RangeStationFigures[] {
  return stationsAlong(breakpointsOf(range.shear.max), count).map(({ x, side }) => {
    const known = (
      { max, min }: RangeCurves,
      what: Display,
    ): readonly [
      RangeStationFigures['shear_max'],
      RangeStationFigures['shear_min'],
    ] => [figure(valueAt(max, x, side), what), figure(valueAt(min, x, side), what)];
    const [shear_max, shear_min] = known(range.shear, 'force');
    const [moment_max, moment_min] = known(range.moment, 'moment');
    const slope = range.slope === undefined ? null : known(range.slope, 'angle');
    const deflection =
      range.deflection === undefined ? null : known(range.deflection, 'deflection');
    return {
      x: figure(x, 'length'),
      shear_max,
      shear_min,
      moment_max,
      moment_min,
      slope_max: slope?.[0] ?? null,
      slope_min: slope?.[1] ?? null,
      deflection_max: deflection?.[0] ?? null,
      deflection_min: deflection?.[1] ?? null,
    };
  });
}
