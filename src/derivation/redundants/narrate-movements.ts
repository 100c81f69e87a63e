import {
  name,
  product,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type {
  ForceMethod,
  Movement,
  Stretch,
  StretchShare,
} from '../../statics/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import type { Step } from '../steps.ts';
import type { ForceStep, ShareFact, StretchFact } from '../steps/redundant-steps.ts';
import { curvatureFigure, referenceRigidity, rigidityFigure } from './rigidity.ts';
import {
  functionLine,
  integralOver,
  polynomialOf,
  settled,
  type LocalFunction,
} from './stretch-functions.ts';
import {
  movementSymbol,
  stateMoment,
  unitOfMoment,
  unitOfMovement,
} from './movement-symbols.ts';
import { supportProduct } from './support-shares.ts';

/** Movements at the releases under the loads, then under each redundant of size 1 (each pair once: δ₁₂ is δ₂₁). */
export function narrateMovements(
  context: CaseContext,
  work: ForceMethod,
): readonly Step[] {
  const numbers = work.releases.map((_, index) => index + 1);
  const loads = numbers.flatMap((j) => pairOf(work, [j, 0]));
  const units = numbers.flatMap((j) =>
    numbers.filter((k) => k >= j).flatMap((k) => pairOf(work, [j, k])),
  );
  const isMoved = work.underLoads.some(({ total }) => total !== 0);
  return [
    ...(isMoved ? [movementsStep(context, work, { of: 'loads', pairs: loads })] : []),
    movementsStep(context, work, { of: 'units', pairs: units }),
  ];
}

/** A movement with its numbers: at release j in state k. */
interface Pair {
  readonly j: number;
  readonly k: number;
  readonly movement: Movement;
}

function pairOf(
  { underLoads, underUnits }: ForceMethod,
  [j, k]: readonly [number, number],
): readonly Pair[] {
  const movement = k === 0 ? underLoads[j - 1] : underUnits[j - 1]?.[k - 1];
  return movement === undefined ? [] : [{ j, k, movement }];
}

function movementsStep(
  context: CaseContext,
  work: ForceMethod,
  { of, pairs }: { readonly of: 'loads' | 'units'; readonly pairs: readonly Pair[] },
): ForceStep {
  const symbolOf = (index: number): Symbol => {
    const release = work.releases[index - 1];
    if (release === undefined) throw new RangeError('no such release');
    return context.symbols.unknown(release.unknown);
  };
  return {
    kind: 'movements',
    of,
    stretches: stretchFacts(context, work, pairs),
    movements: pairs.map((pair) => ({
      release: symbolOf(pair.j),
      ...(pair.k === 0 ? {} : { under: symbolOf(pair.k) }),
      shares: sharesOf(context, work, pair),
      statement: totalStatement(context, work, pair),
    })),
  };
}

/** Where the shares stand, each stretch once, with every function that they need. */
function stretchFacts(
  context: CaseContext,
  work: ForceMethod,
  pairs: readonly Pair[],
): readonly StretchFact[] {
  const facts = new Map<
    string,
    { stretch: Stretch; functions: Map<string, LocalFunction> }
  >();
  for (const { j, k, movement } of pairs) {
    for (const share of [...movement.bending, ...movement.curvature]) {
      if (share.value === 0) continue;
      const { stretch } = share;
      const key = `${stretch.from} ${stretch.to}`;
      const entry = facts.get(key) ?? { stretch, functions: new Map() };
      const [unit, acting] = functionsOf(context, work, { share, j, k });
      const isBending = movement.bending.includes(share);
      for (const one of isBending ? [acting, unit] : [unit])
        entry.functions.set(one.symbol.letter + (one.symbol.subscript ?? ''), one);
      facts.set(key, entry);
    }
  }
  return [...facts.values()]
    .sort((a, b) => a.stretch.from - b.stretch.from)
    .map(({ stretch, functions }) => ({
      from: placeAtStation(context, stretch.from),
      to: placeAtStation(context, stretch.to),
      functions: {
        lines: [...functions.values()].map((one) => functionLine(context, one)),
      },
    }));
}

/** The unit moment at release j, and what acts in state k. */
function functionsOf(
  context: CaseContext,
  work: ForceMethod,
  {
    share,
    j,
    k,
  }: { readonly share: StretchShare; readonly j: number; readonly k: number },
): readonly [LocalFunction, LocalFunction] {
  const { stretch } = share;
  const [unit = [], acting = []] = stretch.functions;
  const at = (state: number, coefficients: readonly number[]): LocalFunction => ({
    symbol: stateMoment(state),
    coefficients: settled(
      coefficients,
      stretch.to - stretch.from,
      sizeOfState(work, state),
    ),
    unit: unitOfMoment(context, work, state),
  });
  return [at(j, unit), at(k, acting)];
}

function sizeOfState({ base, units }: ForceMethod, state: number): number {
  const extremes = (state === 0 ? base : units[state - 1])?.extremes.moment;
  if (extremes === undefined) return 0;
  return Math.max(Math.abs(extremes.max.value), Math.abs(extremes.min.value));
}

function sharesOf(
  context: CaseContext,
  work: ForceMethod,
  pair: Pair,
): readonly ShareFact[] {
  const { j, k, movement } = pair;
  const figure = (si: number): Figure =>
    figureIn(context.printing.figures, unitOfMovement(context, work, [j, k]), si);
  const line = (left: Expression, si: number): Statement => ({
    lines: [{ left, chain: [{ sign: '=', of: figure(si) }] }],
  });
  const bending = movement.bending
    .filter(({ value: si }) => si !== 0)
    .map((share): ShareFact => {
      const [unit, acting] = functionsOf(context, work, { share, j, k });
      const ratio = work.EI / share.stretch.EI;
      const over = integralOver(context, share.stretch, [
        polynomialOf(context, acting),
        polynomialOf(context, unit),
      ]);
      const times = figureIn(context.printing.figures, pureUnit, ratio);
      const left = ratio === 1 ? over : product(times, over);
      return { what: 'bending', statement: line(left, share.value) };
    });
  const warmth = movement.curvature
    .filter(({ value: si }) => si !== 0)
    .map((share): ShareFact => {
      const [unit] = functionsOf(context, work, { share, j, k });
      const curvature = share.stretch.functions[1]?.[0] ?? 0;
      const left = product(
        rigidityFigure(context, work.EI),
        curvatureFigure(context, curvature),
        integralOver(context, share.stretch, [polynomialOf(context, unit)]),
      );
      return { what: 'warmth', statement: line(left, share.value) };
    });
  const supports = movement.supports
    .filter(({ value: si }) => si !== 0)
    .map((share): ShareFact => ({
      what: share.moved === undefined ? 'spring' : 'foot',
      point: share.unknown.point,
      statement: line(supportProduct(context, work, { share, j, k }), share.value),
    }));
  return [...bending, ...warmth, ...supports];
}

/** `E I δ₁₀ = share + share … = total`, the total boxed. */
function totalStatement(
  context: CaseContext,
  work: ForceMethod,
  { j, k, movement }: Pair,
): Statement {
  const unit = unitOfMovement(context, work, [j, k]);
  const { bending, curvature, supports, total } = movement;
  const values = [...bending, ...curvature, ...supports]
    .map(({ value: si }) => si)
    .filter((si) => si !== 0);
  const figure = (si: number): Figure => figureIn(context.printing.figures, unit, si);
  const left = product(referenceRigidity(context), name(movementSymbol(j, k)));
  const found = { sign: '=' as const, of: figure(total) };
  if (values.length < 2) return { lines: [{ left, chain: [found], boxed: true }] };
  return {
    lines: [
      { left, chain: [{ sign: '=', of: sum(...values.map(figure)) }] },
      { chain: [found], boxed: true },
    ],
  };
}
