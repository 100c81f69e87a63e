import type { FigureSpec, KeyValue, PictureLoad } from '../../figure/index.ts';
import { extremesOf, sumOfRanges, type RolledCase } from '../../statics/index.ts';
import { formatNumber } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { envelopeFigure } from '../pictures/diagram-figures.ts';
import { symbolLabel, textLabel } from '../pictures/labels.ts';
import { memberPicture, pictureSupports } from '../pictures/member-picture.ts';
import { countOf, lengthText, unitName, value } from '../printing.ts';
import type { QuantityHead } from '../steps/range-steps.ts';
import type { GoverningEffect } from './governing-effects.ts';
import { axleSymbol, laneSymbol } from './moving-symbols.ts';
import { ordinatesUnder, ordinateUnit } from './ordinates.ts';

/** An influence line under the member, the axles that count standing at the worst place. */
export function influenceFigure(
  context: CaseContext,
  effect: GoverningEffect,
  head: QuantityHead,
): FigureSpec {
  const { line } = effect;
  const picture = memberPicture(context, {
    supports: pictureSupports(context),
    loads: standing(effect),
    reactions: [],
  });
  const unit = ordinateUnit(effect);
  const title = unit === 'length' ? `η (${unitName(context.printing, 'length')})` : 'η';
  const under = ordinatesUnder(effect);
  const keyValues = [
    ...under.map(({ x, ordinate, side }): KeyValue => ({
      x,
      value: ordinate,
      side,
      label: textLabel(ordinateText(context, unit, ordinate)),
    })),
    ...extremeKeys(context, effect, unit),
  ];
  const places = under
    .map(
      ({ index, x, ordinate }) =>
        `axle ${index + 1} at ${lengthText(context.printing, x)} on ${ordinateText(context, unit, ordinate)}`,
    )
    .join(', ');
  return {
    kind: 'diagrams',
    picture: { ...picture, dimensions: [] },
    diagrams: [
      {
        quantity: effect.of === 'moment' ? 'moment' : 'shear',
        title: textLabel(title),
        curves: [{ of: line, style: 'solid' }],
        keyValues: distinct(keyValues),
        positive: 'up',
      },
    ],
    alternate: `Influence line for ${wordsOf(head)}: ${places === '' ? 'no axle stands on it' : places}.`,
  };
}

/** The axles that count and the lane load, by their symbols. */
function standing({ critical, train }: GoverningEffect): readonly PictureLoad[] {
  const { lane = 0 } = train;
  return [
    ...critical.place.axles.map(({ index, x }) => ({
      kind: 'force' as const,
      x,
      degrees: 270,
      size: train.axles[index] ?? 0,
      label: symbolLabel(axleSymbol(index)),
    })),
    ...critical.place.lane.map(({ from, to }) => ({
      kind: 'distributed' as const,
      from,
      to,
      degrees: 270,
      sizes: [lane, lane] as const,
      labels: [symbolLabel(laneSymbol), undefined] as const,
    })),
  ];
}

/** The greatest and least ordinate of the line itself. */
function extremeKeys(
  context: CaseContext,
  { line }: GoverningEffect,
  unit: 'length' | 'pure',
): readonly KeyValue[] {
  const { max, min } = extremesOf(line);
  return [max, min].flatMap(({ x, value: si }) =>
    si === 0
      ? []
      : [
          {
            x,
            value: si,
            label: textLabel(ordinateText(context, unit, si)),
            isExtreme: true,
          },
        ],
  );
}

function distinct(values: readonly KeyValue[]): readonly KeyValue[] {
  const size = Math.max(0, ...values.map(({ value: si }) => Math.abs(si)));
  return values.filter(
    (one, index) =>
      values.findIndex(
        (other) =>
          Math.abs(other.x - one.x) < 1e-6 * (1 + Math.abs(one.x)) &&
          Math.abs(other.value - one.value) <= 1e-6 * size,
      ) === index,
  );
}

function ordinateText(
  { printing }: CaseContext,
  unit: 'length' | 'pure',
  si: number,
): string {
  const count = countOf(value(printing, unit, si));
  return formatNumber(count, { kind: 'figures', count: printing.figures }).text;
}

function wordsOf({ symbol, place }: QuantityHead): string {
  if (place === undefined) return `the ${symbol.meaning}`;
  return `the ${symbol.meaning} at ${place.point ?? 'its greatest or least'}`;
}

/** Greatest and least shear and moment of the trains alone. */
export function movingEnvelopeFigure(
  context: CaseContext,
  { mark, part }: RolledCase,
): FigureSpec {
  return envelopeFigure(context, [sumOfRanges(mark, [{ factor: 1, part }])]);
}
