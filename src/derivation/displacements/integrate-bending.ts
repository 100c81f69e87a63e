import type { CaseContext } from '../case-context.ts';
import type { Bending } from './bending.ts';
import { conditionsOf, slideOf, type Condition } from './conditions.ts';
import { independentRows, solveRows, type Row } from './condition-rows.ts';

/** An unknown of the integration, its factors and values all in SI. */
export type IntegrationUnknown =
  /** Of E I θ: what the terms leave open of the slope. */
  | { readonly kind: 'slope' }
  /** Of E I v. */
  | { readonly kind: 'deflection' }
  /** E I times the jump of the slope at a hinge. */
  | { readonly kind: 'hinge'; readonly point: string; readonly x: number }
  /** E I times the slide of the member along its axis, where only inclined supports hold it. */
  | { readonly kind: 'slide' };

/** A condition as an equation of the unknowns: Σ factor · unknown = E I movement − terms. */
export interface ConditionRow {
  readonly condition: Condition;
  readonly factors: readonly number[];
  /** What the terms of E I θ or E I v give at the condition's station. */
  readonly terms: number;
  readonly known: number;
}

/** The elastic curve over a stretch: E I v″ integrated twice, its constants found from the supports. */
export interface Integration {
  readonly bending: Bending;
  /** The constant of the slope is multiplied by the distance from here: the first support of the stretch. */
  readonly origin: number;
  readonly unknowns: readonly IntegrationUnknown[];
  readonly values: readonly number[];
  /** One an unknown, independent of one another. */
  readonly rows: readonly ConditionRow[];
  /** Conditions that the redundants found before must have met. */
  readonly others: readonly ConditionRow[];
}

/**
 * Integrates a moment twice and finds the constants. Undefined where the supports of the stretch are too few to tell them.
 */
export function integrateBending(
  context: CaseContext,
  bending: Bending,
): Integration | undefined {
  const conditions = conditionsOf(context, bending);
  const origin = conditions[0]?.x;
  if (origin === undefined) return undefined;
  const hinges = context.structure.hinges.filter(
    ({ x }) => x > bending.from && x < bending.to,
  );
  const unknowns: readonly IntegrationUnknown[] = [
    { kind: 'slope' },
    { kind: 'deflection' },
    ...hinges.map(({ point, x }) => ({ kind: 'hinge' as const, point, x })),
    ...(slideOf(context) === undefined ? [{ kind: 'slide' as const }] : []),
  ];
  const all = conditions.map((condition): ConditionRow => {
    const times = condition.what === 'slope' ? 1 : 2;
    const terms = termsAt(bending, condition.x, times);
    return {
      condition,
      factors: unknowns.map((unknown) => factorOf(unknown, condition, origin)),
      terms,
      known: bending.EI * condition.movement - terms,
    };
  });
  const reach = bending.to - bending.from;
  const scaled = all.map((row): Row => scaledRow(row, unknowns, reach));
  const chosen = independentRows(scaled, unknowns.length);
  if (chosen.length < unknowns.length) return undefined;
  const found = solveRows(chosen.flatMap((index) => scaled[index] ?? []));
  return {
    bending,
    origin,
    unknowns,
    values: unknowns.map((unknown, i) => (found[i] ?? 0) / scaleOf(unknown, reach) + 0),
    rows: chosen.flatMap((index) => all[index] ?? []),
    others: all.filter((_, index) => !chosen.includes(index)),
  };
}

/** What stands before an unknown in E I v (or E I θ) at a condition's station. */
function factorOf(
  unknown: IntegrationUnknown,
  { what, x, slide }: Condition,
  origin: number,
): number {
  const isSlope = what === 'slope';
  switch (unknown.kind) {
    case 'slope':
      return isSlope ? 1 : x - origin;
    case 'deflection':
      return isSlope ? 0 : 1;
    case 'hinge':
      if (x <= unknown.x) return 0;
      return isSlope ? 1 : x - unknown.x;
    case 'slide':
      return slide;
  }
}

/** Slopes count over the length of the stretch, so that all unknowns and all rows have one unit. */
function scaleOf({ kind }: IntegrationUnknown, reach: number): number {
  return kind === 'slope' || kind === 'hinge' ? reach : 1;
}

function scaledRow(
  { condition, factors, known }: ConditionRow,
  unknowns: readonly IntegrationUnknown[],
  reach: number,
): Row {
  const weight = condition.what === 'slope' ? reach : 1;
  return {
    factors: factors.map((factor, i) => {
      const unknown = unknowns[i];
      return unknown === undefined ? 0 : (weight * factor) / scaleOf(unknown, reach);
    }),
    known: weight * known,
  };
}

/** The terms of E I θ (once) or E I v (twice integrated) at a station, without the constants. */
export function termsAt(
  { terms }: Pick<Bending, 'terms'>,
  x: number,
  times: 0 | 1 | 2,
): number {
  return terms.reduce(
    (all, { at, order, size }) =>
      x <= at ? all : all + grown(size, x - at, order + times),
    0,
  );
}

/** The sum of the sizes of the same terms: what a difference of them is judged by. */
export function sizeOfTermsAt(
  { terms }: Pick<Bending, 'terms'>,
  x: number,
  times: 1 | 2,
): number {
  return terms.reduce(
    (all, { at, order, size }) =>
      x <= at ? all : all + Math.abs(grown(size, x - at, order + times)),
    0,
  );
}

function grown(size: number, reach: number, power: number): number {
  return (size * reach ** power) / factorial(power);
}

/** n!, the divisor of a term of power n. */
export function factorial(n: number): number {
  return n <= 1 ? 1 : n * factorial(n - 1);
}

/** What the constants add to E I θ or E I v at a station, just right of it. */
export function constantsAt(
  of: Integration,
  x: number,
  times: 1 | 2,
): readonly number[] {
  return of.unknowns.map((unknown, index) => {
    const value = of.values[index] ?? 0;
    switch (unknown.kind) {
      case 'slope':
        return times === 1 ? value : value * (x - of.origin);
      case 'deflection':
        return times === 1 ? 0 : value;
      case 'hinge':
        if (x < unknown.x) return 0;
        return times === 1 ? value : value * (x - unknown.x);
      case 'slide':
        return 0;
    }
  });
}

/** E I θ or E I v at a station. */
export function integratedAt(of: Integration, x: number, times: 1 | 2): number {
  return constantsAt(of, x, times).reduce(
    (all, constant) => all + constant,
    termsAt(of.bending, x, times),
  );
}
