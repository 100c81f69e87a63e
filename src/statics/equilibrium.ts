import { actionsOn, type Action } from './actions.ts';
import type { CaseFactor } from './loading.ts';
import { exactPart, type Part } from './parts.ts';
import type { Resultant } from './resultants.ts';
import type { BeamStructure } from './structure.ts';
import { tidyStructure } from './tidy-structure.ts';

/**
 * The terms of any equilibrium sum, about any point, of any part. One term a force or couple on
 * the part, in the order reactions (left to right), hinge forces, loads (as defined); every one
 * stands in every sum, those with a zero arm or a zero component too (a couple stands in a sum
 * of forces with the factor 0). Derivation prints these terms, checks re-work them, and a
 * reviewer's line is matched against them.
 */
export interface SumTerm {
  readonly source:
    /** The `index`-th restraint of the support at a point: an unknown. */
    | { readonly kind: 'reaction'; readonly point: string; readonly index: number }
    /**
     * The x or y force through a hinge on this part: an unknown until the other part is solved.
     * `side` is the side of the hinge on which this part lies; the unknown is what the left piece
     * does to the right one, so it acts on a part at its left with the factor −1.
     */
    | {
        readonly kind: 'hinge';
        readonly point: string;
        readonly component: 'x' | 'y';
        readonly side: 'left' | 'right';
      }
    /** A load, whole, or the stretch of a distributed load that this resultant stands for, where it is not all of it. */
    | {
        readonly kind: 'load';
        readonly id: string;
        readonly case: string;
        readonly from?: number;
        readonly to?: number;
      };
  /** Whether the thing is a force (N) or a couple (N·m), which a sum of forces does not feel. */
  readonly quantity: 'force' | 'couple';
  /**
   * What one unit of the thing adds to the sum: for a force sum the direction cosine; for a moment
   * sum the signed arm in metres, counterclockwise positive (±1 for a couple or a moment
   * component). For loads, what one unit of `magnitude` adds.
   */
  readonly factor: number;
  /**
   * Size of a load or a resultant along the way it points itself, N or N·m, so not negative
   * before factors of a combination multiply it; absent for unknowns.
   */
  readonly magnitude?: number;
  /** How a distributed load's share came about; absent for everything else. Its figures are unfactored. */
  readonly resultant?: Resultant;
  /** What the load's case is multiplied by (already in `magnitude`); absent for unknowns. */
  readonly caseFactor?: number;
  /** Station of a force or of a resultant's line of action, in metres. */
  readonly x: number;
}

/** Which sum is meant. Sums of forces run along +x or +y, moments counterclockwise about a station on the axis. */
export type Sum =
  | { readonly kind: 'forces'; readonly along: 'x' | 'y' }
  | { readonly kind: 'moments'; readonly about: number };

/**
 * The terms of a sum over a part, under one case (its mark) or a sum of factored cases.
 *
 * @throws RangeError where the part does not run between ends and hinges, or a case is not the structure's.
 */
export function termsOfSum(
  structure: BeamStructure,
  loading: string | readonly CaseFactor[],
  part: Part,
  sum: Sum,
): readonly SumTerm[] {
  const tidy = tidyStructure(structure);
  return actionsOn(tidy, loading, exactPart(tidy, part)).map((action) =>
    termOf(action, sum),
  );
}

/** One action of a part as a term of a sum. */
export function termOf(action: Action, sum: Sum): SumTerm {
  const { source, effect, x } = action;
  return {
    source,
    quantity: effect.kind,
    factor: factorOf(action, sum),
    ...(action.magnitude === undefined ? {} : { magnitude: action.magnitude }),
    ...(action.resultant === undefined ? {} : { resultant: action.resultant }),
    ...(action.caseFactor === undefined ? {} : { caseFactor: action.caseFactor }),
    x,
  };
}

/** What one unit of an action adds to a sum: a direction cosine, an arm in metres, or ±1. */
export function factorOf(
  { effect, x }: Pick<Action, 'effect' | 'x'>,
  sum: Sum,
): number {
  // Adding 0 turns a minus zero into a zero.
  switch (effect.kind) {
    case 'couple':
      return sum.kind === 'moments' ? effect.turn : 0;
    case 'force': {
      const [dx, dy] = effect.direction;
      if (sum.kind === 'moments') return (x - sum.about) * dy + 0;
      return (sum.along === 'x' ? dx : dy) + 0;
    }
  }
}
