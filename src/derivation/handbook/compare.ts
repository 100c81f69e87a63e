import { valueAt, type BeamResult, type Piecewise } from '../../statics/index.ts';
import type { CaseView } from './case-view.ts';
import type { HandbookFit } from './find-case.ts';
import type { Quantity } from './handbook-case.ts';
import { measureOf, type WorkedFormula } from './work-formulas.ts';

/** A formula's value beside what was found for it, both in the sense of the beam: up and sagging positive, SI. */
export interface Comparison {
  readonly worked: WorkedFormula;
  /** The formula's value, turned as the beam's loads are. */
  readonly si: number;
  /** What was found at every place that the formula speaks of. */
  readonly found: readonly number[];
  /** The size of what it is found among, to judge a difference by. */
  readonly scale: number;
}

/** Sets formulas worked for a fit beside a result; those of deflections only where the result has them. */
export function compareWith(
  { view }: HandbookFit,
  formulas: readonly WorkedFormula[],
  result: BeamResult,
): readonly Comparison[] {
  return formulas.flatMap((worked) => {
    const { gives } = worked.formula;
    const found = foundFor({ view, result, at: worked.at ?? NaN }, gives);
    const scale = scaleOf(result, gives);
    return found === undefined
      ? []
      : [{ worked, si: turned(view, gives, worked.si), found, scale }];
  });
}

/** The greatest where the view shows the beam as it is, the least where its loads are turned round, and the other way about. */
export function isGreatest(view: CaseView, end: 'greatest' | 'least'): boolean {
  return (end === 'greatest') === (view.sense === 1);
}

/** The member's own station of a place in a view, m from its first point. */
export function stationOf({ mirrored, length }: CaseView, at: number): number {
  return mirrored ? length - at : at;
}

function turned({ sense }: CaseView, { kind }: Quantity, si: number): number {
  return kind === 'greatest-shear' || sense === 1 ? si : 0 - si;
}

interface Place {
  readonly view: CaseView;
  readonly result: BeamResult;
  readonly at: number;
}

function foundFor(place: Place, gives: Quantity): readonly number[] | undefined {
  const { view, result } = place;
  switch (gives.kind) {
    case 'reaction':
      return gives.supports.map((index) => {
        const point = view.supports[index]?.point;
        return result.reactions.find((one) => one.point === point)?.y ?? NaN;
      });
    case 'support-moment':
      return gives.supports.map((index) =>
        read(result.moment, { ...place, at: view.supports[index]?.at ?? NaN }),
      );
    case 'moment':
      return [read(result.moment, place)];
    case 'greatest-shear': {
      const { max, min } = result.extremes.shear;
      return [Math.max(Math.abs(max.value), Math.abs(min.value))];
    }
    case 'deflection': {
      const curve = result.displacement?.deflection;
      return curve === undefined ? undefined : [read(curve, place)];
    }
    case 'extreme':
      return extremeOf(place, gives);
  }
}

function extremeOf(
  { view, result }: Place,
  { of, end }: Extract<Quantity, { kind: 'extreme' }>,
): readonly number[] | undefined {
  const ends = of === 'moment' ? result.extremes.moment : result.displacement?.extremes;
  if (ends === undefined) return undefined;
  return [isGreatest(view, end) ? ends.max.value : ends.min.value];
}

// The side towards the beam at its own ends; a couple that stands exactly at a support at the end is the end's.
function read(curve: Piecewise, { view, at }: Place): number {
  const first = curve.pieces[0]?.start ?? 0;
  const x = first + stationOf(view, at);
  return valueAt(curve, x, 'left');
}

function scaleOf(result: BeamResult, gives: Quantity): number {
  const { moment, shear } = result.extremes;
  const ends = {
    force: [shear.max, shear.min],
    moment: [moment.max, moment.min],
    deflection: Object.values(result.displacement?.extremes ?? {}),
  }[measureOf(gives)];
  const reactions =
    measureOf(gives) === 'force' ? result.reactions.map(({ y }) => y ?? 0) : [];
  return Math.max(
    ...[...ends.map(({ value }) => value), ...reactions].map((one) => Math.abs(one)),
  );
}
