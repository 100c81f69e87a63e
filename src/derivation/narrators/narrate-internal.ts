import {
  call,
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
import {
  displayUnit,
  divideUnits,
  powerOfUnit,
  quantity,
  type Unit,
} from '../../units/index.ts';
import {
  keyStations,
  segmentsOf,
  valueAt,
  type KeyStation,
  type Segment,
  type SegmentFunction,
} from '../../statics/index.ts';
import { pointAt, type CaseContext } from '../case-context.ts';
import { lengthText, tidy, value } from '../printing.ts';
import { innerZeros, shearAreas } from '../shear-areas.ts';
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
export function placeAtStation(
  { structure, printing }: Pick<CaseContext, 'structure' | 'printing'>,
  x: number,
): Place {
  const point = pointAt(structure, x);
  return {
    station: tidy(printing, 'length', x),
    ...(point === undefined ? {} : { point }),
  };
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

const symbolOf = {
  shear: shearSymbol,
  moment: momentSymbol,
  axial: axialSymbol,
} as const;

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
  const scale = Math.max(
    Math.abs(of.start),
    Math.abs(of.end),
    ...of.local.map((c, i) => Math.abs(c) * (segment.to - segment.from) ** i),
  );
  const terms = of.local.flatMap((coefficient, degree): readonly Term[] => {
    if (Math.abs(coefficient) * (segment.to - segment.from) ** degree <= 1e-12 * scale)
      return [];
    const unit = unitOfDegree(printing.system, base, degree);
    const figure = figureIn(printing.figures, unit, Math.abs(coefficient));
    const of_: Expression =
      degree === 0
        ? figure
        : product(figure, powerOf(distanceFrom(context, segment.from), degree));
    return [{ sign: coefficient < 0 ? -1 : 1, of: of_ }];
  });
  const right: Expression =
    terms.length === 0 ? value(printing, base, 0) : plain({ kind: 'sum', terms });
  return {
    left: functionOf(symbolOf[what], name(stationSymbol)),
    chain: [{ sign: '=', of: right }],
    recheck: 'none',
  };
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
  return {
    kind: 'sum',
    terms: [
      { sign: 1, of: name(stationSymbol) },
      { sign: start > 0 ? -1 : 1, of: figure },
    ],
  };
}

function unitOfDegree(
  system: 'us' | 'si',
  base: 'moment' | 'force',
  degree: number,
): Unit {
  // A moment per length is a force: its coefficients count in kip, kip/ft, kip/ft².
  const force = displayUnit(system, 'force');
  const length = displayUnit(system, 'length');
  if (base === 'moment' && degree === 0) return displayUnit(system, 'moment');
  const steps = base === 'moment' ? degree - 1 : degree;
  return steps === 0 ? force : divideUnits(force, powerOfUnit(length, steps));
}

function figureIn(figures: number, unit: Unit, si: number): Figure {
  const of = quantity(si / unit.inSi, unit);
  return {
    kind: 'figure',
    quantity: of,
    unit,
    print: { kind: 'figures', count: figures },
  };
}

/** Where the shear passes through 0 inside a segment: the moment is greatest or least there. */
function zeroShear(
  context: CaseContext,
  segments: readonly Segment[],
): readonly InternalStep[] {
  const places = segments.flatMap((segment) =>
    innerZeros(segment).map((x) => ({
      from: placeAtStation(context, segment.from),
      to: placeAtStation(context, segment.to),
      statement: zeroStatement(context, segment, x),
    })),
  );
  return places.length === 0 ? [] : [{ kind: 'zero-shear', places }];
}

function zeroStatement(context: CaseContext, segment: Segment, x: number): Statement {
  const { printing } = context;
  const line = functionLine(context, segment, segment.shear, 'shear');
  const [first] = line.chain;
  const set: StatementLine = {
    ...line,
    chain: first === undefined ? [] : [first, { sign: '=', of: number(0) }],
  };
  const station = value(printing, 'length', x);
  const reach = reachOfZero(context, segment, x);
  const worked =
    segment.from === 0 ? reach : sum(tidy(printing, 'length', segment.from), reach);
  const solved: StatementLine = {
    left: name(stationSymbol),
    chain: [
      { sign: '=', of: worked },
      { sign: '=', of: station },
    ],
    boxed: true,
  };
  return { lines: [set, solved] };
}

/**
 * The distance from a segment's start to where its shear c₀ + c₁ t + c₂ t² is 0: −c₀ / c₁ on a straight
 * line, √(−c₀ / c₂) on a parabola about the start, else the root of the quadratic that lies inside.
 */
function reachOfZero(context: CaseContext, segment: Segment, x: number): Expression {
  const { system, figures } = context.printing;
  const [c0 = 0, c1 = 0, c2 = 0] = segment.shear.local;
  const length = segment.to - segment.from;
  const size = Math.max(
    Math.abs(c0),
    Math.abs(c1) * length,
    Math.abs(c2) * length ** 2,
  );
  const isNothing = (c: number, degree: number): boolean =>
    Math.abs(c) * length ** degree <= 1e-12 * size;
  const figureOf = (c: number, degree: number): Figure =>
    figureIn(figures, unitOfDegree(system, 'force', degree), c);
  if (isNothing(c2, 2))
    return cancelUnits(quotient(figureOf(Math.abs(c0), 0), figureOf(Math.abs(c1), 1)));
  if (isNothing(c1, 1)) {
    return call(
      'sqrt',
      cancelUnits(quotient(figureOf(Math.abs(c0), 0), figureOf(Math.abs(c2), 2))),
    );
  }
  // Signs are turned so that the square's coefficient stands positive under the line.
  const [a, b, c] = c2 < 0 ? [-c2, -c1, -c0] : [c2, c1, c0];
  const root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
  const isPlus =
    Math.abs((-b + root) / (2 * a) - (x - segment.from)) <=
    Math.abs((-b - root) / (2 * a) - (x - segment.from));
  const under: Term = {
    sign: c < 0 ? 1 : -1,
    of: product(number(4), figureOf(a, 2), figureOf(Math.abs(c), 0)),
  };
  const discriminant = sum(power(figureOf(Math.abs(b), 1), 2), under);
  const over = sum(
    { sign: b < 0 ? 1 : -1, of: figureOf(Math.abs(b), 1) },
    { sign: isPlus ? 1 : -1, of: call('sqrt', discriminant) },
  );
  return quotient(over, product(number(2), figureOf(a, 2)));
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
  const rowAt = (x: number, area: number | undefined): AreaRow => {
    const { shear, moment } = sidesAt(x);
    return {
      place: placeAtStation(context, x),
      shearLeft: value(printing, 'force', shear.left),
      shearRight: value(printing, 'force', shear.right),
      momentLeft: value(printing, 'moment', moment.left),
      momentRight: value(printing, 'moment', moment.right),
      ...(area === undefined ? {} : { area: value(printing, 'moment', area) }),
    };
  };
  return {
    kind: 'areas',
    hasCouples: segments.some((segment) => segment.momentJump !== 0),
    rows: [
      ...stretches.map(({ from, area }) => rowAt(from, area)),
      rowAt(end, undefined),
    ],
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
