import type { Piecewise } from '../piecewise.ts';
import { greatestOf, leastOf } from '../piecewise/greatest.ts';
import type {
  Arrangement,
  Range,
  RangeCurves,
  RangePart,
  RangeQuery,
} from '../solution.ts';
import type { Train } from '../structure.ts';
import {
  criticalPlace,
  rollingTrain,
  type CriticalPlace,
  type RollingTrain,
} from './critical-place.ts';
import { envelopeOf } from './train-envelope.ts';
import type { InfluenceBasis, ReactionComponent } from './influence-basis.ts';
import { influenceLine, type Effect } from './influence-line.ts';

/**
 * What trains that are alternatives to one another give at most and at least, wherever they are on
 * the beam or off it. The curves along the beam are those of `fitCurve`: exact polynomials as long
 * as an axle stands on the station, on a support or at an end, and else within 1e-9 of the greatest value.
 */
export function trainRange(basis: InfluenceBasis, trains: readonly Train[]): RangePart {
  const rolling = trains.map(rollingTrain);
  const worst = (effect: Effect, sense: 'max' | 'min'): CriticalPlace =>
    worstOf(rolling, influenceLine(basis, effect), sense);
  const curves = (of: RangeQuery['of']): RangeCurves => ({
    max: greatestOf(rolling.map((one) => envelopeOf(basis, one, { of, sense: 'max' }))),
    min: leastOf(rolling.map((one) => envelopeOf(basis, one, { of, sense: 'min' }))),
  });
  const reaction = (point: string, component: ReactionComponent): Range => {
    const end = (sense: 'max' | 'min'): Range['max'] => {
      const { value, place } = worst({ kind: 'reaction', point, component }, sense);
      return { value, arrangement: arranged(place) };
    };
    return { max: end('max'), min: end('min') };
  };
  return {
    reactions: basis.reactions.map(({ point, x, y, moment }) => ({
      point,
      x: x === null ? null : reaction(point, 'x'),
      y: y === null ? null : reaction(point, 'y'),
      moment: moment === null ? null : reaction(point, 'moment'),
    })),
    ...(basis.isAxial ? { axial: curves('axial') } : {}),
    shear: curves('shear'),
    moment: curves('moment'),
    ...(basis.isDisplaced
      ? { slope: curves('slope'), deflection: curves('deflection') }
      : {}),
    arrangementAt: ({ of, sense, x, side }) =>
      arranged(worst({ kind: 'station', of, x, side }, sense).place),
  };
}

/** The worst place of the train that gives most; the first where they come to the same. */
export function worstOf(
  trains: readonly RollingTrain[],
  line: Piecewise,
  sense: 'max' | 'min',
): CriticalPlace {
  const sign = sense === 'max' ? 1 : -1;
  const [first, ...rest] = trains.map((train) => criticalPlace(train, line, sense));
  if (first === undefined) throw new RangeError('no train to place');
  return rest.reduce(
    (best, one) =>
      sign * (one.value - best.value) > 1e-12 * Math.abs(best.value) ? one : best,
    first,
  );
}

function arranged(place: CriticalPlace['place']): Arrangement {
  return { choices: [], trains: [place] };
}
