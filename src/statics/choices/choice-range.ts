import { sizeOf, valueAt, type Piecewise } from '../piecewise.ts';
import { greatestOf, leastOf } from '../piecewise/greatest.ts';
import type {
  Arrangement,
  BeamResult,
  Range,
  RangeCurves,
  RangePart,
  RangeQuery,
} from '../solution.ts';
import { tieTolerance } from '../tolerances.ts';
import type { ChoiceResults } from './option-results.ts';

/**
 * What one choice gives at most and at least: at every station the greatest and the least of its
 * options. Where options come to the same, the first in the list stands for them.
 *
 * @throws RangeError where the choice has no option.
 */
export function choiceRange({ choice, options }: ChoiceResults): RangePart {
  const first = options[0]?.result;
  if (first === undefined) throw new RangeError(`choice ${choice.id} has no option`);
  const curves = (of: RangeQuery['of']): readonly Piecewise[] =>
    options.flatMap(({ result }) => curveOf(result, of) ?? []);
  const both = (of: RangeQuery['of']): RangeCurves => ({
    max: greatestOf(curves(of)),
    min: leastOf(curves(of)),
  });
  const arranged = (index: number): Arrangement => ({
    choices: [{ id: choice.id, option: options[index]?.name ?? '' }],
    trains: [],
  });
  const over = (read: (result: BeamResult) => number | null): Range | null => {
    const values = options.map(({ result }) => read(result));
    const known = values.filter((value) => value !== null);
    if (known.length < values.length) return null;
    const size = Math.max(...known.map(Math.abs));
    const of = (sense: 1 | -1): Range['max'] => {
      const index = firstOfBest(known, sense, size);
      return { value: known[index] ?? 0, arrangement: arranged(index) };
    };
    return { max: of(1), min: of(-1) };
  };
  const isDisplaced = options.every(({ result }) => result.displacement !== undefined);
  return {
    reactions: first.reactions.map(({ point }, index) => ({
      point,
      x: over((result) => result.reactions[index]?.x ?? null),
      y: over((result) => result.reactions[index]?.y ?? null),
      moment: over((result) => result.reactions[index]?.moment ?? null),
    })),
    axial: both('axial'),
    shear: both('shear'),
    moment: both('moment'),
    ...(isDisplaced ? { slope: both('slope'), deflection: both('deflection') } : {}),
    arrangementAt: ({ of, sense, x, side }) => {
      const here = curves(of);
      const values = here.map((f) => valueAt(f, x, side));
      const size = Math.max(...here.map(sizeOf));
      return arranged(firstOfBest(values, sense === 'max' ? 1 : -1, size));
    },
  };
}

/** One curve of a result, if it is known. */
export function curveOf(
  result: BeamResult,
  of: RangeQuery['of'],
): Piecewise | undefined {
  if (of === 'slope' || of === 'deflection') return result.displacement?.[of];
  return result[of];
}

/** The first of those that come within rounding of the greatest (sense 1) or least (−1). */
function firstOfBest(values: readonly number[], sense: 1 | -1, size: number): number {
  const best = Math.max(...values.map((value) => sense * value));
  return values.findIndex((value) => sense * value >= best - tieTolerance * size);
}
