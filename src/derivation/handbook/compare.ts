import { valueAt, type BeamResult, type Piecewise } from '../../statics/index.ts';
import type { CaseView } from './case-view.ts';
import type { HandbookFit } from './find-case.ts';
import type { Quantity } from './handbook-case.ts';
import type { WorkedFormula } from './work-formulas.ts';

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
  const { moment, shear } = result.extremes;
  const deflections = result.displacement?.extremes;
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
    case 'greatest-moment':
    case 'least-moment': {
      const end = gives.kind === 'greatest-moment' ? 'greatest' : 'least';
      return [isGreatest(view, end) ? moment.max.value : moment.min.value];
    }
    case 'greatest-shear':
      return [Math.max(Math.abs(shear.max.value), Math.abs(shear.min.value))];
    case 'deflection': {
      const curve = result.displacement?.deflection;
      return curve === undefined ? undefined : [read(curve, place)];
    }
    case 'greatest-deflection':
    case 'least-deflection': {
      if (deflections === undefined) return undefined;
      const end = gives.kind === 'greatest-deflection' ? 'greatest' : 'least';
      const { max, min } = deflections;
      return [isGreatest(view, end) ? max.value : min.value];
    }
  }
}

// The side towards the beam at its own ends; a couple that stands exactly at a support at the end is the end's.
function read(curve: Piecewise, { view, at }: Place): number {
  const first = curve.pieces[0]?.start ?? 0;
  const x = first + stationOf(view, at);
  return valueAt(curve, x, 'left');
}

function scaleOf(result: BeamResult, gives: Quantity): number {
  const { moment, shear } = result.extremes;
  const largest = (ends: readonly number[]): number =>
    Math.max(...ends.map((end) => Math.abs(end)));
  switch (gives.kind) {
    case 'reaction':
    case 'greatest-shear':
      return largest([
        shear.max.value,
        shear.min.value,
        ...result.reactions.map(({ y }) => y ?? 0),
      ]);
    case 'support-moment':
    case 'moment':
    case 'greatest-moment':
    case 'least-moment':
      return largest([moment.max.value, moment.min.value]);
    case 'deflection':
    case 'greatest-deflection':
    case 'least-deflection': {
      const { max, min } = result.displacement?.extremes ?? {
        max: { value: 0 },
        min: { value: 0 },
      };
      return largest([max.value, min.value]);
    }
  }
}
