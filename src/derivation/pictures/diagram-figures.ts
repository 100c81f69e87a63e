import type { Diagram, FigureSpec, KeyValue } from '../../figure/index.ts';
import {
  envelopeCurves,
  extremesOf,
  keyStations,
  type BeamResult,
  type EntryResult,
  type Piecewise,
} from '../../statics/index.ts';
import { formatNumber } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { countOf, unitName, value } from '../printing.ts';
import { describeDiagrams, describeEnvelope } from './alternates.ts';
import { textLabel } from './labels.ts';
import { memberPicture, pictureSupports } from './member-picture.ts';
import { pictureLoad } from './picture-loads.ts';

type InternalForce = 'axial' | 'shear' | 'moment';

const letters: Readonly<Record<InternalForce, string>> = {
  axial: 'N',
  shear: 'V',
  moment: 'M',
};

/** Shear and moment (and axial force where there is any) of one result under the member. */
export function diagramsFigure(context: MemberContext, result: BeamResult): FigureSpec {
  const loads = context.structure.loads.filter((load) => load.case === result.mark);
  const picture = memberPicture(context, {
    supports: pictureSupports(context),
    loads: loads.map((load) => pictureLoad(context, load, 'symbol')),
    reactions: [],
  });
  const { max, min } = result.extremes.axial;
  const shown: readonly InternalForce[] =
    max.value === 0 && min.value === 0
      ? ['shear', 'moment']
      : ['axial', 'shear', 'moment'];
  return {
    kind: 'diagrams',
    picture: { ...picture, dimensions: [] },
    diagrams: shown.map((what) => diagramOf(context, result, what)),
    alternate: describeDiagrams(context, result),
  };
}

/** The greatest and least shear and moment over several results; those of one range with its least dashed. */
export function envelopeFigure(
  context: MemberContext,
  results: readonly EntryResult[],
): FigureSpec {
  const picture = memberPicture(context, {
    supports: pictureSupports(context),
    loads: [],
    reactions: [],
  });
  const diagrams = (['shear', 'moment'] as const).map((what): Diagram => {
    const { max, min } = envelopeCurves(results, what);
    return {
      ...frameOf(context, what),
      curves: [
        { of: max, style: 'solid' },
        { of: min, style: results.length === 1 ? 'dashed' : 'solid' },
      ],
      keyValues: [
        ...extremeValue(context, max, what, 'max'),
        ...extremeValue(context, min, what, 'min'),
      ],
    };
  });
  return {
    kind: 'diagrams',
    picture: { ...picture, dimensions: [] },
    diagrams,
    alternate: describeEnvelope(context, results),
  };
}

function frameOf(
  context: MemberContext,
  what: InternalForce,
): Pick<Diagram, 'quantity' | 'title' | 'positive'> {
  const unit = unitName(context.printing, what === 'moment' ? 'moment' : 'force');
  const onTension = context.conventions.momentDiagram.value === 'tension';
  return {
    quantity: what,
    title: textLabel(`${letters[what]} (${unit})`),
    positive: what === 'moment' && onTension ? 'down' : 'up',
  };
}

function diagramOf(
  context: MemberContext,
  result: BeamResult,
  what: InternalForce,
): Diagram {
  return {
    ...frameOf(context, what),
    curves: [{ of: result[what], style: 'solid' }],
    keyValues: keyValues(context, result, what),
  };
}

/** Values on both sides of every key station, each once where they are equal, and the extremes between. */
function keyValues(
  context: MemberContext,
  result: BeamResult,
  what: InternalForce,
): readonly KeyValue[] {
  const { max, min } = result.extremes[what];
  const isExtreme = (x: number, si: number): boolean =>
    [max, min].some((extreme) => extreme.x === x && extreme.value === si && si !== 0);
  const at = (x: number, si: number, side?: 'left' | 'right'): KeyValue => ({
    x,
    value: si,
    ...(side === undefined ? {} : { side }),
    label: textLabel(numberLabel(context, what, si)),
    ...(isExtreme(x, si) ? { isExtreme: true } : {}),
  });
  const stations = keyStations(context.structure, result);
  const fromStations = stations.flatMap((station, index): readonly KeyValue[] => {
    const { left, right } = station[what];
    if (index === 0) return [at(station.x, right, 'right')];
    if (index === stations.length - 1) return [at(station.x, left, 'left')];
    return left === right
      ? [at(station.x, left)]
      : [at(station.x, left, 'left'), at(station.x, right, 'right')];
  });
  const between = [max, min].filter(
    ({ x }) => !stations.some((station) => station.x === x),
  );
  return [...fromStations, ...between.map(({ x, value: si }) => at(x, si))];
}

function extremeValue(
  context: MemberContext,
  of: Piecewise,
  what: InternalForce,
  which: 'max' | 'min',
): readonly KeyValue[] {
  const extreme = extremesOf(of)[which];
  if (extreme.value === 0) return [];
  const label = textLabel(numberLabel(context, what, extreme.value));
  return [{ x: extreme.x, value: extreme.value, label, isExtreme: true }];
}

function numberLabel(
  { printing }: MemberContext,
  what: InternalForce,
  si: number,
): string {
  const of = value(printing, what === 'moment' ? 'moment' : 'force', si);
  return formatNumber(countOf(of), { kind: 'figures', count: printing.figures }).text;
}
