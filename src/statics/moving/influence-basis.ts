import { elasticModel } from '../elastic/elastic-model.ts';
import { evaluatePolynomial } from '../piecewise/polynomial.ts';
import type { Piecewise } from '../piecewise.ts';
import type { BeamResult } from '../solution.ts';
import type { BeamSolver } from '../solver-of.ts';
import type { BeamStructure } from '../structure.ts';
import { tidyStructure } from '../tidy-structure.ts';
import { cubicThrough, lineThrough } from './interpolate.ts';

/** What a state has just right of a joint, of any load there too. */
export type StartQuantity = 'axial' | 'shear' | 'moment' | 'slope' | 'deflection';

/** A reaction component along the axes, or a moment. */
export type ReactionComponent = 'x' | 'y' | 'moment';

/**
 * Everything of a beam that depends on where one downward load of 1 N stands, as polynomials of
 * its station, bar by bar. While the load is within a bar, what that bar's ends feel is a cubic of its
 * station (the fixed-end forces are), and so is all the rest; a straight line where statics
 * solves it. Four loads a bar tell a cubic, two a line, exactly.
 */
export interface InfluenceBasis {
  /** Stretches without a support, hinge or step of stiffness inside, from left to right. */
  readonly bars: readonly BasisBar[];
  /** Reactions by support: a polynomial for each bar that the load may be in; null where the support gives none. */
  readonly reactions: readonly (Readonly<
    Record<ReactionComponent, InfluencePolynomials | null>
  > & { readonly point: string })[];
  /** True where displacements are known. */
  readonly isDisplaced: boolean;
  /** True where the loads send forces along the axis. */
  readonly isAxial: boolean;
}

/** A bar, and what its start feels of a load in each bar: left of all loads inside it. */
export interface BasisBar {
  readonly from: number;
  readonly to: number;
  /** N·m²; absent where E or I is not known. */
  readonly EI?: number;
  readonly start: Readonly<Record<StartQuantity, InfluencePolynomials>>;
}

/** Coefficients in powers of the load's distance from the left end of its bar, for each bar that it may be in. */
export type InfluencePolynomials = readonly (readonly number[])[];

/**
 * Solves unit loads on a beam made ready and takes from them all that influence lines are made of.
 * Undefined where the two ways of solving disagree under one of them.
 */
export function influenceBasis(
  structure: BeamStructure,
  solver: BeamSolver,
): InfluenceBasis | undefined {
  const tidy = tidyStructure({ ...structure, loads: [] });
  const bars = elasticModel(tidy).bars;
  const isDisplaced = tidy.stiffness !== undefined;
  const { redundants, axialOnly } = solver.determinacy;
  const isStraight = redundants === 0 || axialOnly;
  const nodes = bars.map(({ from, to }) =>
    nodesOf(from, to, !isStraight || isDisplaced),
  );
  const samples = samplesAt(nodes, solver, bars);
  if (samples === undefined) return undefined;
  const starts = bars.map((_, bar): BasisBar['start'] => {
    const forces = (name: 'axial' | 'shear' | 'moment'): InfluencePolynomials =>
      samples.map((within, place) =>
        throughAll(within, isStraight, (sample) => {
          const value = sample.starts[bar]?.[name] ?? NaN;
          // A load at the start of its own bar counts as right of it.
          const isAtStart = place === bar && sample.x === bars[bar]?.from;
          return name === 'shear' && isAtStart ? value + 1 : value;
        }),
      );
    const moves = (name: 'slope' | 'deflection'): InfluencePolynomials =>
      samples.map((within) =>
        isDisplaced
          ? throughAll(within, false, ({ starts: all }) => all[bar]?.[name] ?? NaN)
          : [0],
      );
    return {
      axial: forces('axial'),
      shear: forces('shear'),
      moment: forces('moment'),
      slope: moves('slope'),
      deflection: moves('deflection'),
    };
  });
  return {
    bars: bars.map(({ from, to, EI }, bar) => ({
      from,
      to,
      ...(isDisplaced ? { EI } : {}),
      start: starts[bar] ?? noStart(),
    })),
    reactions: reactionsOf(samples, isStraight),
    isDisplaced,
    isAxial: samples
      .flat()
      .some(({ starts: all }) => all.some(({ axial }) => axial !== 0)),
  };
}

function noStart(): never {
  throw new RangeError('a bar without a start');
}

/** The states of unit loads at the nodes of every bar; undefined where one cannot be told. */
function samplesAt(
  nodes: readonly (readonly number[])[],
  solver: BeamSolver,
  bars: readonly { readonly from: number }[],
): readonly (readonly Sample[])[] | undefined {
  const known = new Map<number, Sample>();
  for (const x of nodes.flat()) {
    if (known.has(x)) continue;
    const load = { id: 'unit', case: 'unit', kind: 'point', x, fx: 0, fy: -1 } as const;
    const state = solver.state('unit', [load]);
    if (state.kind === 'unsolved') return undefined;
    known.set(x, sampleOf(x, state.result, bars));
  }
  return nodes.map((stations) => stations.flatMap((x) => known.get(x) ?? []));
}

/** The polynomial of a value that samples within one bar have. */
function throughAll(
  within: readonly Sample[],
  isStraight: boolean,
  read: (sample: Sample) => number,
): readonly number[] {
  const values = within.map(read);
  const length = (within.at(-1)?.x ?? NaN) - (within[0]?.x ?? NaN);
  return isStraight
    ? lineThrough([values[0] ?? NaN, values.at(-1) ?? NaN], length)
    : cubicThrough(values, length);
}

function reactionsOf(
  samples: readonly (readonly Sample[])[],
  isStraight: boolean,
): InfluenceBasis['reactions'] {
  const first = samples[0]?.[0]?.reactions ?? [];
  return first.map((reaction, index) => {
    const component = (name: ReactionComponent): InfluencePolynomials | null =>
      reaction[name] === null
        ? null
        : samples.map((within) =>
            throughAll(
              within,
              isStraight,
              ({ reactions }) => reactions[index]?.[name] ?? NaN,
            ),
          );
    return {
      point: reaction.point,
      x: component('x'),
      y: component('y'),
      moment: component('moment'),
    };
  });
}

/** The stations of unit loads in a bar: its ends, and two between where the curves are no lines. */
function nodesOf(from: number, to: number, isCurved: boolean): readonly number[] {
  if (!isCurved) return [from, to];
  const third = (to - from) / 3;
  return [from, from + third, to - third, to];
}

/** One unit load's state, as far as it is needed. */
interface Sample {
  readonly x: number;
  readonly reactions: readonly {
    readonly point: string;
    readonly x: number | null;
    readonly y: number | null;
    readonly moment: number | null;
  }[];
  readonly starts: readonly Readonly<Record<StartQuantity, number>>[];
}

function sampleOf(
  at: number,
  result: BeamResult,
  bars: readonly { readonly from: number }[],
): Sample {
  const stations = bars.map(({ from }) => from);
  const none = stations.map(() => 0);
  const [axial, shear, moment, slope, deflection] = (
    [
      result.axial,
      result.shear,
      result.moment,
      result.displacement?.slope,
      result.displacement?.deflection,
    ] as const
  ).map((f) => (f === undefined ? none : valuesRightOf(f, stations)));
  return {
    x: at,
    reactions: result.reactions,
    starts: stations.map((_, index) => ({
      axial: axial?.[index] ?? 0,
      shear: shear?.[index] ?? 0,
      moment: moment?.[index] ?? 0,
      slope: slope?.[index] ?? 0,
      deflection: deflection?.[index] ?? 0,
    })),
  };
}

/** Values just right of stations that run from left to right. */
function valuesRightOf(
  { pieces }: Piecewise,
  stations: readonly number[],
): readonly number[] {
  let next = 0;
  return stations.map((x) => {
    while (next + 1 < pieces.length && (pieces[next]?.end ?? x) <= x) next += 1;
    const piece = pieces[next];
    return piece === undefined
      ? 0
      : evaluatePolynomial(piece.coefficients, x - piece.start);
  });
}
