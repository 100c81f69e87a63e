import type { RolledCase } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { componentsOf } from '../narrators/reaction-components.ts';
import { tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { MovingStep } from '../steps/moving-steps.ts';
import type { QuantityHead } from '../steps/range-steps.ts';
import { momentSymbol, shearSymbol } from '../symbols.ts';
import { governingEffects, type GoverningEffect } from './governing-effects.ts';
import { influenceFigure, movingEnvelopeFigure } from './moving-figures.ts';
import { movingExtremes } from './moving-extremes.ts';
import { ordinateStatement, ordinateUnit } from './ordinates.ts';
import { sumStatement } from './sum-of-axles.ts';
import { trainFacts } from './train-facts.ts';

/**
 * The trains of a case: what rolls, the influence line of every reaction and of shear and moment where they
 * are greatest and least, the place where the train stands worst for each and the sum there, and the
 * envelope. Loads of the case that do not roll are left to the sections that follow.
 */
export function narrateMoving(
  context: CaseContext,
  rolled: RolledCase,
): readonly Step[] {
  const { definition, mark } = context;
  const trains = definition.trains.filter((train) => train.case === mark);
  const effects = governingEffects(context, rolled);
  return [
    ...trains.map((train, index) =>
      trainFacts(context, train, trains.length > 1 ? index + 1 : undefined),
    ),
    ...effects.flatMap((effect) => {
      const head = headOf(context, effect);
      const step = influenceStep(context, effect, head);
      const figure: Step = {
        kind: 'figure',
        shows: 'influence-line',
        case: mark,
        figure: influenceFigure(context, effect, head),
      };
      return [step, figure];
    }),
    movingExtremes(context, rolled),
    {
      kind: 'figure',
      shows: 'moving-envelope',
      case: mark,
      figure: movingEnvelopeFigure(context, rolled),
    },
    {
      kind: 'caution',
      caution: 'moving',
      facts: {
        case: mark,
        ...(trains.some(({ factors }) => factors?.axles !== undefined)
          ? { factored: 'yes' }
          : {}),
        ...(trains.some(({ lane }) => lane !== undefined) ? { lane: 'yes' } : {}),
      },
    },
  ];
}

function influenceStep(
  context: CaseContext,
  effect: GoverningEffect,
  head: QuantityHead,
): MovingStep {
  const { printing } = context;
  const { critical, near, line, train, of, sense } = effect;
  const here = near.find(({ shift }) => Math.abs(shift) < 1e-9 * reachOf(effect));
  const ordinates = ordinateStatement(context, effect);
  const counted = new Set(critical.place.axles.map(({ index }) => index));
  const { pieces } = line;
  const [start, end] = [pieces[0]?.start ?? 0, pieces.at(-1)?.end ?? 0];
  const margin = 1e-9 * (end - start);
  const missing = critical.axles.filter(({ index }) => !counted.has(index));
  const isOff = (x: number): boolean => x < start + margin || x > end - margin;
  const unit = ordinateUnit(effect) === 'length' ? 'moment' : 'force';
  return {
    kind: 'influence',
    case: context.mark,
    of,
    head,
    sense,
    direction: critical.place.direction,
    ...(here?.on === undefined
      ? {}
      : { axle: here.on.axle + 1, at: placeAtStation(context, here.on.x) }),
    isStraight: pieces.every(({ coefficients }) => coefficients.length <= 2),
    off: missing.filter(({ x }) => isOff(x)).map(({ index }) => index + 1),
    leftOut: missing.filter(({ x }) => !isOff(x)).map(({ index }) => index + 1),
    ...(ordinates === undefined ? {} : { ordinates }),
    lane: critical.place.lane.map(({ from, to }) => ({
      from: placeAtStation(context, from),
      to: placeAtStation(context, to),
    })),
    sum: sumStatement(context, effect, head.symbol),
    places: (train.axles.length === 0 ? [] : near).map((place) => ({
      shift: tidy(printing, 'length', Math.abs(place.shift) < margin ? 0 : place.shift),
      ...(place.on === undefined
        ? {}
        : { axle: place.on.axle + 1, at: placeAtStation(context, place.on.x) }),
      value: value(printing, unit, place.value),
      isWorst: place === here,
    })),
  };
}

function reachOf({ line: { pieces } }: GoverningEffect): number {
  return (pieces.at(-1)?.end ?? 0) - (pieces[0]?.start ?? 0);
}

function headOf(context: CaseContext, { effect }: GoverningEffect): QuantityHead {
  if (effect.kind === 'reaction') {
    const component = componentsOf(context).find(
      ({ point, kind }) => point === effect.point && kind === effect.component,
    );
    if (component === undefined) throw new RangeError(`no reaction at ${effect.point}`);
    return { symbol: component.symbol };
  }
  const { of, x, side } = effect;
  const isInside = context.structure.supports.some(
    (support) => Math.abs(support.x - x) < 1e-9 * reachAlong(context),
  );
  return {
    symbol: of === 'shear' ? shearSymbol : momentSymbol,
    place: placeAtStation(context, x),
    ...(of === 'shear' && isInside ? { side } : {}),
  };
}

function reachAlong({ structure: { points } }: CaseContext): number {
  return (points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0);
}
