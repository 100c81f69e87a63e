import type { Diagram, FigureSpec, KeyValue } from '../../figure/index.ts';
import { valueAt, type BeamResult, type Displacement } from '../../statics/index.ts';
import { formatNumber } from '../../units/index.ts';
import { pointAt, type MemberContext } from '../case-context.ts';
import { countOf, lengthText, unitName, value, valueText } from '../printing.ts';
import { textLabel } from './labels.ts';
import { memberPicture, pictureSupports } from './member-picture.ts';
import { pictureLoad } from './picture-loads.ts';

/** A part of the greatest movement that is none to label. */
const leastPart = 1e-6;

/**
 * The elastic curve of a result under its member: extremes labelled, and the supports that move.
 *
 * @throws RangeError where the result has none.
 */
export function elasticCurveFigure(
  context: MemberContext,
  result: Pick<BeamResult, 'mark' | 'displacement'>,
): FigureSpec {
  const { displacement } = result;
  if (displacement === undefined) throw new RangeError('no elastic curve');
  const picture = memberPicture(context, {
    supports: pictureSupports(context),
    loads: context.structure.loads
      .filter((load) => load.case === result.mark)
      .map((load) => pictureLoad(context, load, 'symbol')),
    reactions: [],
  });
  const diagram: Diagram = {
    quantity: 'deflection',
    title: textLabel(`v (${unitName(context.printing, 'deflection')})`),
    curves: [{ of: displacement.deflection, style: 'solid' }],
    keyValues: keyValues(context, displacement),
    positive: 'up',
  };
  return {
    kind: 'diagrams',
    picture: { ...picture, dimensions: [] },
    diagrams: [diagram],
    alternate: describe(context, result.mark, displacement),
  };
}

/** The extremes, and the supports and ends that move, each once. */
function keyValues(
  context: MemberContext,
  { deflection, extremes: { max, min } }: Displacement,
): readonly KeyValue[] {
  const { structure, printing } = context;
  const size = Math.max(Math.abs(max.value), Math.abs(min.value));
  const shown = [max, min].filter(({ value: si }) => Math.abs(si) > leastPart * size);
  const places = [
    ...structure.supports.map(({ x }) => x),
    ...structure.hinges.map(({ x }) => x),
    structure.points[0]?.x ?? 0,
    structure.points.at(-1)?.x ?? 0,
  ];
  const others = [...new Set(places)]
    .filter((x) => !shown.some((one) => one.x === x))
    .map((x) => ({ x, value: valueAt(deflection, x, 'left') }))
    .filter(({ value: si }) => Math.abs(si) > 0.01 * size);
  const label = (si: number): string =>
    formatNumber(countOf(value(printing, 'deflection', si)), {
      kind: 'figures',
      count: printing.figures,
    }).text;
  return [
    ...shown.map(({ x, value: si }): KeyValue => ({
      x,
      value: si,
      label: textLabel(
        `${label(si)} at ${pointAt(structure, x) ?? lengthText(printing, x)}`,
      ),
      isExtreme: true,
    })),
    ...others.map(({ x, value: si }): KeyValue => ({
      x,
      value: si,
      label: textLabel(label(si)),
    })),
  ];
}

function describe(
  { structure, printing }: MemberContext,
  mark: string,
  { extremes: { max, min } }: Displacement,
): string {
  const one = ({ value: si, x }: typeof max): string =>
    `${valueText(printing, 'deflection', si)} at ${pointAt(structure, x) ?? `x = ${lengthText(printing, x)}`}`;
  return `Elastic curve of ${mark}, up positive: between ${one(min)} and ${one(max)}.`;
}
