import { name, type Statement, type StatementLine } from '../../equation/index.ts';
import {
  keyStations,
  segmentsOf,
  valueAt,
  type KeyStation,
  type Segment,
} from '../../statics/index.ts';
import { pointAt, type CaseContext } from '../case-context.ts';
import { cell, decimalsOf, lengthText, unitName, value } from '../printing.ts';
import { shearAreas } from '../shear-areas.ts';
import type { InternalStep, SegmentFact } from '../steps.ts';
import { placeAtStation } from './places.ts';
import { functionLine, symbolOf } from './segment-functions.ts';
import { zeroShear } from './zero-shear.ts';

/** Item 6 for one case: functions by segment, zero shear, areas as changes of moment, extremes. */
export function narrateInternal(context: CaseContext): readonly InternalStep[] {
  const segments = segmentsOf(context.result);
  return [
    {
      kind: 'segments',
      form: 'running',
      segments: segments.map((segment) => segmentFact(context, segment)),
    },
    ...zeroShear(context, segments),
    areas(context, segments),
    { kind: 'extremes', statement: extremes(context) },
  ];
}

function segmentFact(context: CaseContext, segment: Segment): SegmentFact {
  const { from, to } = segment;
  const hasAxial = segment.axial.local.some((coefficient) => coefficient !== 0);
  return {
    from: placeAtStation(context, from),
    to: placeAtStation(context, to),
    functions: {
      lines: [
        ...(hasAxial ? [functionLine(context, segment, segment.axial, 'axial')] : []),
        functionLine(context, segment, segment.shear, 'shear'),
        functionLine(context, segment, segment.moment, 'moment'),
      ],
    },
  };
}

/** Rows at every key station and wherever the shear passes through 0, with the area of one sign between each and the next. */
function areas(context: CaseContext, segments: readonly Segment[]): InternalStep {
  const { printing, structure, result } = context;
  const stations = keyStations(structure, result);
  const stretches = shearAreas(segments);
  const end = segments.at(-1)?.to ?? 0;
  const sidesAt = (x: number): Pick<KeyStation, 'shear' | 'moment'> => {
    const found = stations.find((station) => station.x === x);
    if (found !== undefined) return found;
    const moment = valueAt(result.moment, x, 'left');
    return { shear: { left: 0, right: 0 }, moment: { left: moment, right: moment } };
  };
  const ends = [...stretches.map(({ from }) => from), end];
  const sides = ends.map((x) => ({ x, ...sidesAt(x) }));
  const shears = decimalsOf(
    printing,
    'force',
    sides.flatMap(({ shear }) => [shear.left, shear.right]),
  );
  const moments = decimalsOf(
    printing,
    'moment',
    sides.flatMap(({ moment }) => [moment.left, moment.right]),
  );
  return {
    kind: 'areas',
    units: { force: unitName(printing, 'force'), moment: unitName(printing, 'moment') },
    hasCouples: segments.some((segment) => segment.momentJump !== 0),
    rows: sides.map(({ x, shear, moment }, index): AreaRow => {
      const area = stretches[index]?.area;
      return {
        place: placeAtStation(context, x),
        shearLeft: cell(printing, 'force', shear.left, shears),
        shearRight: cell(printing, 'force', shear.right, shears),
        momentLeft: cell(printing, 'moment', moment.left, moments),
        momentRight: cell(printing, 'moment', moment.right, moments),
        ...(area === undefined
          ? {}
          : { area: cell(printing, 'moment', area, moments) }),
      };
    }),
  };
}

type AreaRow = Extract<InternalStep, { kind: 'areas' }>['rows'][number];

/** The extremes in one stack, each with its place in the margin; those that are 0 are left out. */
function extremes(context: CaseContext): Statement {
  const { result } = context;
  const lines = (['axial', 'shear', 'moment'] as const).flatMap((what) =>
    (['max', 'min'] as const).flatMap((word) => {
      const extreme = result.extremes[what][word];
      return extreme.value === 0
        ? []
        : [extremeLine(context, { what, word, ...extreme })];
    }),
  );
  return { lines };
}

function extremeLine(
  context: CaseContext,
  of: {
    readonly what: 'axial' | 'shear' | 'moment';
    readonly word: 'max' | 'min';
    readonly value: number;
    readonly x: number;
  },
): StatementLine {
  const { printing, structure } = context;
  const letter = symbolOf[of.what];
  const meaning = `${of.word === 'max' ? 'greatest' : 'least'} ${letter.meaning}`;
  return {
    left: name({ ...letter, subscript: of.word, meaning }),
    chain: [
      {
        sign: '=',
        of: value(printing, of.what === 'moment' ? 'moment' : 'force', of.value),
      },
    ],
    boxed: true,
    margin: `at ${pointAt(structure, of.x) ?? lengthText(printing, of.x)}`,
    recheck: 'none',
  };
}
