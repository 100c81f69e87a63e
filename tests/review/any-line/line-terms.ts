import {
  resultantsOf,
  termsOfCutSum,
  valueOfCutForce,
  valueOfUnknown,
  type BeamStructure,
  type CutPart,
  type CutTerm,
  type Resultant,
  type Sum,
} from '../../../src/statics/index.ts';
import type { MarkingContext } from '../../../src/review/marking-context.ts';

/** A term of an equilibrium sum as somebody is about to write it; SI, signs apart. */
export interface LineTerm {
  readonly what: 'unknown' | 'force' | 'spread' | 'couple' | 'lump';
  /** Sign in the sense that the solver counts positive. */
  readonly sign: 1 | -1;
  /** Size of the force or couple; of an unknown how much of it the symbol counts with. */
  readonly size: number;
  /** The distance from the point; absent in sums of forces, and for couples. */
  readonly arm?: number;
  /** What it truly adds, without sign. */
  readonly worth: number;
  readonly x: number;
  readonly symbol?: string;
  readonly resultant?: Resultant;
  /** By what a slip multiplied what is written. */
  readonly slip?: { readonly size?: number; readonly arm?: number };
}

/** A sum of a member in terms, with what its symbols stand for. */
export interface LineSum {
  readonly claim: string;
  readonly part?: string;
  readonly sum: Sum;
  readonly terms: readonly LineTerm[];
  /** `R0: reaction P1 up`. */
  readonly names: readonly string[];
}

/** What is asked for: forces or moments, about which place, of which part. */
export interface Asked {
  readonly isForces: boolean;
  readonly about: number;
  readonly isPart: boolean;
  readonly ends: readonly [number, number];
  /** How distributed loads are taken: bits, one a load. */
  readonly splits: number;
}

/** The terms that statics gives a sum of the whole member, or of a piece between two cuts away from everything. */
export function lineSum(context: MarkingContext, asked: Asked): LineSum | undefined {
  const { structure, loading } = context;
  const { points } = structure;
  const about = points[asked.about % points.length]!;
  const sum: Sum = asked.isForces
    ? { kind: 'forces', along: 'y' }
    : { kind: 'moments', about: about.x };
  const cuts = asked.isPart ? cutsOf(structure, asked.ends) : undefined;
  if (asked.isPart && cuts === undefined) return undefined;
  const part: CutPart =
    cuts === undefined
      ? {}
      : { from: { x: cuts[0], side: 'right' }, to: { x: cuts[1], side: 'left' } };
  const names: string[] = [];
  const spread = new Set<string>();
  const terms = termsOfCutSum(structure, loading, part, sum).flatMap((term) => {
    if (term.source.kind !== 'load' || term.resultant === undefined)
      return single({ context, sum, names }, term);
    const { id } = term.source;
    if (spread.has(id)) return [];
    spread.add(id);
    return spreadTerms({ context, part, sum }, term, {
      id,
      isSplit: (asked.splits & (1 << spread.size)) !== 0,
    });
  });
  const claim = asked.isForces ? 'forces up' : `moments about ${about.name}`;
  return {
    claim,
    sum,
    terms,
    names,
    ...(cuts === undefined ? {} : { part: `${cuts[0]} m to ${cuts[1]} m` }),
  };
}

/** Two stations of three decimals, away from everything that stands on the beam; undefined where there are none. */
function cutsOf(
  structure: BeamStructure,
  shares: readonly [number, number],
): readonly [number, number] | undefined {
  const first = structure.points[0]!.x;
  const length = structure.points.at(-1)!.x - first;
  const [one = 0, other = 0] = shares.map((share) =>
    Number((first + (share / 1000) * length).toFixed(3)),
  );
  const [a, b] = [Math.min(one, other), Math.max(one, other)];
  const places = [
    ...structure.points.map(({ x }) => x),
    ...structure.loads.flatMap((load) =>
      load.kind === 'distributed' ? [load.from, load.to] : [load.x],
    ),
  ];
  const isFree = [a, b].every((x) =>
    places.every((place) => Math.abs(place - x) > 0.01 * length),
  );
  return isFree && b - a > 0.1 * length ? [a, b] : undefined;
}

interface Setting {
  readonly context: MarkingContext;
  readonly sum: Sum;
  readonly names: string[];
}

function single(setting: Setting, term: CutTerm): readonly LineTerm[] {
  const { sum } = setting;
  const { quantity, factor, x } = term;
  const isMoment = sum.kind === 'moments' && quantity === 'force';
  const reach = isMoment ? Math.abs(x - sum.about) : 1;
  if (Math.abs(factor) <= 1e-9 * Math.max(1, reach)) return [];
  const arm = isMoment ? { arm: reach } : {};
  const own =
    term.source.kind === 'load'
      ? loadTerm(term, reach)
      : unknownTerm(setting, term, reach);
  return own.map((one) => ({ ...one, ...arm }));
}

/** The part of a load across the member; its arm is the distance along it. */
function loadTerm(
  { magnitude = 0, factor, quantity, x }: CutTerm,
  reach: number,
): readonly LineTerm[] {
  const worth = Math.abs(magnitude * factor);
  const sign = magnitude * factor < 0 ? -1 : 1;
  const what = quantity === 'couple' ? 'couple' : 'force';
  return worth === 0 ? [] : [{ what, sign, size: worth / reach, worth, x }];
}

function unknownTerm(
  { context, names }: Setting,
  { source, factor, x }: CutTerm,
  reach: number,
): readonly LineTerm[] {
  if (source.kind !== 'reaction' && source.kind !== 'cut') return [];
  const isReaction = source.kind === 'reaction';
  const symbol = `F${names.length}`;
  const means = isReaction
    ? `reaction ${source.point} ${senseOf(context, source.point, source.index)}`
    : `${source.force} at ${source.cut.x} m`;
  names.push(`${symbol}: ${means}`);
  const value = isReaction
    ? valueOfUnknown(context.result, source)
    : valueOfCutForce(context.result, source);
  return [
    {
      what: 'unknown',
      sign: factor < 0 ? -1 : 1,
      size: Math.abs(factor) / reach,
      worth: Math.abs(value * factor),
      x,
      symbol,
    },
  ];
}

/** The positive sense of a reaction in words. */
export function senseOf(
  { structure }: Pick<MarkingContext, 'structure'>,
  at: string,
  index: number,
): string {
  const support = structure.supports.find(({ point }) => point === at);
  const restraint = support?.restraints[index];
  if (restraint?.kind !== 'force') return 'counterclockwise';
  const [dx, dy] = restraint.direction;
  if (Math.abs(dx) > 1e-9 && Math.abs(dy) > 1e-9) return 'normal';
  if (Math.abs(dy) > 1e-9) return dy > 0 ? 'up' : 'down';
  return dx > 0 ? 'right' : 'left';
}

function spreadTerms(
  { context, part, sum }: { context: MarkingContext; part: CutPart; sum: Sum },
  term: CutTerm,
  { id, isSplit }: { readonly id: string; readonly isSplit: boolean },
): readonly LineTerm[] {
  const { structure } = context;
  const load = structure.loads.find((one) => one.id === id);
  if (load?.kind !== 'distributed') return [];
  const from = Math.max(load.from, part.from?.x ?? load.from);
  const to = Math.min(load.to, part.to?.x ?? load.to);
  const middle = structure.points.find(
    ({ x }) => x > from + 0.1 * (to - from) && x < to - 0.1 * (to - from),
  );
  const stretches = isSplit && middle !== undefined ? [from, middle.x, to] : [from, to];
  const factor = term.caseFactor ?? 1;
  return stretches.slice(1).flatMap((end, at) =>
    resultantsOf(load, stretches[at], end).flatMap((resultant): LineTerm[] => {
      const across = resultant.direction[1] * factor;
      const arm = sum.kind === 'moments' ? resultant.x - sum.about : 1;
      const size = Math.abs(resultant.magnitude * across);
      const worth = size * Math.abs(arm);
      if (worth <= 1e-9 * resultant.magnitude) return [];
      const sign = across * arm < 0 ? -1 : 1;
      const reach = sum.kind === 'moments' ? { arm: Math.abs(arm) } : {};
      return [
        { what: 'spread', sign, size, worth, x: resultant.x, resultant, ...reach },
      ];
    }),
  );
}
