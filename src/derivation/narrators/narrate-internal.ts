import {
  cancelUnits,
  functionOf,
  name,
  number,
  power,
  product,
  quotient,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import { displayUnit, divideUnits, powerOfUnit, quantity, type Unit } from '../../units/index.ts';
import {
  keyStations,
  segmentsOf,
  zerosOf,
  type Segment,
  type SegmentFunction,
} from '../../statics/index.ts';
import { pointAt, type CaseContext } from '../case-context.ts';
import { lengthText, tidy, value } from '../printing.ts';
import type { InternalStep, Place, SegmentFact } from '../steps.ts';
import { axialSymbol, momentSymbol, shearSymbol, stationSymbol } from '../symbols.ts';

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

/** A station as a place. */
export function placeAtStation({ structure, printing }: Pick<CaseContext, 'structure' | 'printing'>, x: number): Place {
  const point = pointAt(structure, x);
  return { station: tidy(printing, 'length', x), ...(point === undefined ? {} : { point }) };
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

const symbolOf = { shear: shearSymbol, moment: momentSymbol, axial: axialSymbol } as const;

/**
 * `V(x) = 6.00 kip − 0.25 kip/ft (x − 6 ft)`: powers of the distance from the segment's start, so
 * that every coefficient is a value that the table shows or an intensity of the loads.
 */
function functionLine(
  context: CaseContext,
  segment: Segment,
  of: SegmentFunction,
  what: 'shear' | 'moment' | 'axial',
): StatementLine {
  const { printing } = context;
  const base = what === 'moment' ? 'moment' : 'force';
  const scale = Math.max(Math.abs(of.start), Math.abs(of.end), ...of.local.map((c, i) => Math.abs(c) * (segment.to - segment.from) ** i));
  const terms = of.local.flatMap((coefficient, degree): readonly Term[] => {
    if (Math.abs(coefficient) * (segment.to - segment.from) ** degree <= 1e-12 * scale) return [];
    const unit = unitOfDegree(printing.system, base, degree);
    const figure = figureIn(printing.figures, unit, Math.abs(coefficient));
    const of_: Expression =
      degree === 0 ? figure : product(figure, powerOf(distanceFrom(context, segment.from), degree));
    return [{ sign: coefficient < 0 ? -1 : 1, of: of_ }];
  });
  const right: Expression =
    terms.length === 0 ? value(printing, base, 0) : plain({ kind: 'sum', terms });
  return { left: functionOf(symbolOf[what], name(stationSymbol)), chain: [{ sign: '=', of: right }], recheck: 'none' };
}

function plain(of: Expression): Expression {
  if (of.kind !== 'sum') return of;
  const [only] = of.terms;
  return of.terms.length === 1 && only?.sign === 1 ? only.of : of;
}

function powerOf(of: Expression, degree: number): Expression {
  return degree === 1 ? of : power(of, degree);
}

function distanceFrom({ printing }: CaseContext, start: number): Expression {
  if (start === 0) return name(stationSymbol);
  const figure = tidy(printing, 'length', Math.abs(start));
  return { kind: 'sum', terms: [{ sign: 1, of: name(stationSymbol) }, { sign: start > 0 ? -1 : 1, of: figure }] };
}

function unitOfDegree(system: 'us' | 'si', base: 'moment' | 'force', degree: number): Unit {
  // A moment per length is a force: its coefficients count in kip, kip/ft, kip/ft².
  const force = displayUnit(system, 'force');
  const length = displayUnit(system, 'length');
  if (base === 'moment' && degree === 0) return displayUnit(system, 'moment');
  const steps = base === 'moment' ? degree - 1 : degree;
  return steps === 0 ? force : divideUnits(force, powerOfUnit(length, steps));
}

function figureIn(figures: number, unit: Unit, si: number): Figure {
  const of = quantity(si / unit.inSi, unit);
  return { kind: 'figure', quantity: of, unit, print: { kind: 'figures', count: figures } };
}

/** Where the shear passes through 0 inside a segment: the moment is greatest or least there. */
function zeroShear(context: CaseContext, segments: readonly Segment[]): readonly InternalStep[] {
  const places = segments.flatMap((segment) =>
    innerZeros(segment).map((x) => ({
      from: placeAtStation(context, segment.from),
      to: placeAtStation(context, segment.to),
      statement: zeroStatement(context, segment, x),
    })),
  );
  return places.length === 0 ? [] : [{ kind: 'zero-shear', places }];
}

function innerZeros(segment: Segment): readonly number[] {
  const { local } = segment.shear;
  if (local.length < 2) return [];
  const margin = 1e-9 * (segment.to - segment.from);
  const piece = { start: segment.from, end: segment.to, coefficients: local };
  return zerosOf({ pieces: [piece] }).flatMap((zero) =>
    zero.kind === 'at' && zero.x > segment.from + margin && zero.x < segment.to - margin
      ? [zero.x]
      : [],
  );
}

function zeroStatement(context: CaseContext, segment: Segment, x: number): Statement {
  const { printing } = context;
  const line = functionLine(context, segment, segment.shear, 'shear');
  const [first] = line.chain;
  const set: StatementLine = {
    ...line,
    chain: first === undefined ? [] : [first, { sign: '=', of: number(0) }],
  };
  const [c0 = 0, c1 = 0, c2 = 0] = segment.shear.local;
  const isLinear = Math.abs(c2) * (segment.to - segment.from) ** 2 <= 1e-12 * Math.abs(c0);
  const station = value(printing, 'length', x);
  const left = name(stationSymbol);
  if (!isLinear) return { lines: [set, { left, chain: [{ sign: '=', of: station }], boxed: true, recheck: 'none' }] };
  const ratio = cancelUnits(
    quotient(
      figureIn(printing.figures, displayUnit(printing.system, 'force'), Math.abs(c0)),
      figureIn(printing.figures, unitOfDegree(printing.system, 'force', 1), Math.abs(c1)),
    ),
  );
  const worked = segment.from === 0 ? ratio : sum(tidy(printing, 'length', segment.from), ratio);
  return { lines: [set, { left, chain: [{ sign: '=', of: worked }, { sign: '=', of: station }], boxed: true }] };
}

function areas(context: CaseContext, segments: readonly Segment[]): InternalStep {
  const { printing, structure, result } = context;
  const stations = keyStations(structure, result);
  const areaAt = (x: number): number | undefined =>
    segments.find((segment) => segment.from === x)?.shearArea;
  return {
    kind: 'areas',
    hasCouples: segments.some((segment) => segment.momentJump !== 0),
    rows: stations
      .filter(({ x }) => x === segments.at(-1)?.to || areaAt(x) !== undefined)
      .map((station) => {
        const area = areaAt(station.x);
        return {
          place: placeAtStation(context, station.x),
          shearLeft: value(printing, 'force', station.shear.left),
          shearRight: value(printing, 'force', station.shear.right),
          momentLeft: value(printing, 'moment', station.moment.left),
          momentRight: value(printing, 'moment', station.moment.right),
          ...(area === undefined ? {} : { area: value(printing, 'moment', area) }),
        };
      }),
  };
}

/** The extremes in one stack, each with its place in the margin; those that are 0 are left out. */
function extremes(context: CaseContext): Statement {
  const { result } = context;
  const lines = (['axial', 'shear', 'moment'] as const).flatMap((what) =>
    (['max', 'min'] as const).flatMap((word) => {
      const extreme = result.extremes[what][word];
      return extreme.value === 0 ? [] : [extremeLine(context, { what, word, ...extreme })];
    }),
  );
  return { lines };
}

function extremeLine(
  context: CaseContext,
  of: { readonly what: 'axial' | 'shear' | 'moment'; readonly word: 'max' | 'min'; readonly value: number; readonly x: number },
): StatementLine {
  const { printing, structure } = context;
  const letter = symbolOf[of.what];
  const meaning = `${of.word === 'max' ? 'greatest' : 'least'} ${letter.meaning}`;
  return {
    left: name({ ...letter, subscript: of.word, meaning }),
    chain: [{ sign: '=', of: value(printing, of.what === 'moment' ? 'moment' : 'force', of.value) }],
    boxed: true,
    margin: `at ${pointAt(structure, of.x) ?? lengthText(printing, of.x)}`,
    recheck: 'none',
  };
}
