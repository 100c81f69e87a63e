import type { Extreme, Piecewise } from '../piecewise.ts';
import { valueAt } from '../piecewise.ts';
import { combine } from '../piecewise/combine.ts';
import { extremesOf } from '../piecewise/extremes.ts';
import type {
  Arrangement,
  BeamResult,
  Range,
  RangeCurves,
  RangeExtremes,
  RangePart,
  RangeQuery,
  RangeResult,
} from '../solution.ts';
import { dropNoise } from '../tolerances.ts';

/** A range and what it is multiplied by. */
export interface RangeTerm {
  readonly factor: number;
  readonly part: RangePart;
}

type CurveName = RangeQuery['of'];

const nowhere: Arrangement = { choices: [], trains: [] };

/** A single state as a range: greatest and least are one, and nothing is to be arranged. */
export function rangeOfState(result: BeamResult): RangePart {
  const both = (f: Piecewise): RangeCurves => ({ max: f, min: f });
  const { displacement } = result;
  const fixed = (value: number | null): Range | null =>
    value === null
      ? null
      : {
          max: { value, arrangement: nowhere },
          min: { value, arrangement: nowhere },
        };
  return {
    reactions: result.reactions.map(({ point, x, y, moment }) => ({
      point,
      x: fixed(x),
      y: fixed(y),
      moment: fixed(moment),
    })),
    axial: both(result.axial),
    shear: both(result.shear),
    moment: both(result.moment),
    ...(displacement === undefined
      ? {}
      : { slope: both(displacement.slope), deflection: both(displacement.deflection) }),
    arrangementAt: () => nowhere,
  };
}

/**
 * The sum of factored ranges that do not depend on one another: the greatest of the sum is the sum
 * of the greatest, of the least where a factor is negative. One of factor 0 adds nothing.
 *
 * @throws RangeError where there are no terms.
 */
export function sumOfRanges(mark: string, terms: readonly RangeTerm[]): RangeResult {
  const first = terms[0];
  if (first === undefined) throw new RangeError(`nothing to add up for ${mark}`);
  const arrangementAt = (query: RangeQuery): Arrangement =>
    together(
      terms
        .filter(({ factor, part }) => factor !== 0 && part[query.of] !== undefined)
        .map(({ factor, part }) =>
          part.arrangementAt({ ...query, sense: senseUnder(factor, query.sense) }),
        ),
    );
  // A part without axial force adds none; one without displacements leaves those of the sum unknown.
  const axial = curvesOf(
    terms.filter(({ part }) => part.axial !== undefined),
    'axial',
  );
  const [slope, deflection] = [curvesOf(terms, 'slope'), curvesOf(terms, 'deflection')];
  const [shear, moment] = [curvesOf(terms, 'shear'), curvesOf(terms, 'moment')];
  if (shear === undefined || moment === undefined)
    throw new RangeError(`${mark} has no curves`);
  const found = (of: CurveName, curves: RangeCurves): RangeExtremes =>
    extremes(of, curves, arrangementAt);
  return {
    kind: 'range',
    mark,
    reactions: first.part.reactions.map((reaction, index) => ({
      point: reaction.point,
      x: reaction.x === null ? null : sumAt(terms, index, 'x'),
      y: reaction.y === null ? null : sumAt(terms, index, 'y'),
      moment: reaction.moment === null ? null : sumAt(terms, index, 'moment'),
    })),
    ...(axial === undefined ? {} : { axial }),
    shear,
    moment,
    ...(slope === undefined ? {} : { slope }),
    ...(deflection === undefined ? {} : { deflection }),
    arrangementAt,
    extremes: {
      ...(axial === undefined ? {} : { axial: found('axial', axial) }),
      shear: found('shear', shear),
      moment: found('moment', moment),
      ...(deflection === undefined
        ? {}
        : { deflection: found('deflection', deflection) }),
    },
  };
}

/** Under a negative factor the least becomes the greatest. */
function senseUnder(factor: number, sense: 'max' | 'min'): 'max' | 'min' {
  if (factor >= 0) return sense;
  return sense === 'max' ? 'min' : 'max';
}

function together(all: readonly Arrangement[]): Arrangement {
  return {
    choices: all.flatMap(({ choices }) => choices),
    trains: all.flatMap(({ trains }) => trains),
  };
}

function curvesOf(
  terms: readonly RangeTerm[],
  name: CurveName,
): RangeCurves | undefined {
  const of = (sense: 'max' | 'min'): Piecewise | undefined => {
    const factored = terms.flatMap(({ factor, part }) => {
      const f = part[name]?.[senseUnder(factor, sense)];
      return f === undefined ? [] : [{ factor, f }];
    });
    if (factored.length < terms.length || terms.length === 0) return undefined;
    return combine(factored);
  };
  const [max, min] = [of('max'), of('min')];
  return max === undefined || min === undefined ? undefined : { max, min };
}

function sumAt(
  terms: readonly RangeTerm[],
  index: number,
  component: 'x' | 'y' | 'moment',
): Range {
  const of = (sense: 'max' | 'min'): Range['max'] => {
    let [value, size] = [0, 0];
    const arrangements: Arrangement[] = [];
    for (const { factor, part } of terms) {
      const range = part.reactions[index]?.[component];
      if (range === null || range === undefined || factor === 0) continue;
      const end = range[senseUnder(factor, sense)];
      value += factor * end.value;
      size += Math.abs(factor * end.value);
      arrangements.push(end.arrangement);
    }
    return { value: dropNoise(value, size) + 0, arrangement: together(arrangements) };
  };
  return { max: of('max'), min: of('min') };
}

function extremes(
  of: CurveName,
  curves: RangeCurves,
  arrangementAt: RangePart['arrangementAt'],
): RangeExtremes {
  const placed = (
    sense: 'max' | 'min',
    extreme: Extreme,
  ): RangeExtremes['max' | 'min'] => {
    const off = (side: 'left' | 'right'): number =>
      Math.abs(valueAt(curves[sense], extreme.x, side) - extreme.value);
    const side = off('left') <= off('right') ? 'left' : 'right';
    const query: RangeQuery = { of, sense, x: extreme.x, side };
    return { ...extreme, arrangement: arrangementAt(query) };
  };
  return {
    max: placed('max', extremesOf(curves.max).max),
    min: placed('min', extremesOf(curves.min).min),
  };
}
