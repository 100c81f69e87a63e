import type { Expression } from '../../equation/index.ts';
import type { CaseView } from './case-view.ts';
import type { LoadAmount } from './total-loads.ts';
import type { Letter } from './letters.ts';

/** A figure of the beam that a formula gives: up and sagging positive, stations from the end where the view begins. */
export type Quantity =
  /** The upward reaction at supports that share alike, numbered from 0. */
  | { readonly kind: 'reaction'; readonly supports: readonly number[] }
  /** The bending moment at supports that share alike. */
  | { readonly kind: 'support-moment'; readonly supports: readonly number[] }
  /** The bending moment at a station where it does not jump. */
  | { readonly kind: 'moment'; readonly at: Expression }
  /** The greatest or least along the beam. */
  | {
      readonly kind: 'extreme';
      readonly of: 'moment' | 'deflection';
      readonly end: 'greatest' | 'least';
    }
  /** The greatest size of the shear, whatever its sign. */
  | { readonly kind: 'greatest-shear' }
  | { readonly kind: 'deflection'; readonly at: Expression };

/** One formula of a handbook case. */
export interface Formula {
  readonly gives: Quantity;
  /** In the letters of `letters.ts`, and in reactions and moments that earlier formulas of the case give. */
  readonly value: Expression;
}

/** What a letter stands for in one beam, SI. */
export type Amount =
  | { readonly what: 'length' | 'settlement'; readonly si: number }
  /** A load, or loads that are equal; `shared` where the letter stands for more than one load of the file. */
  | {
      readonly what: 'force' | 'force-per-length' | 'moment';
      readonly of: LoadAmount;
      readonly shared: boolean;
    };

/** The letters of a case with what they stand for in one beam. */
export type Given = Readonly<Partial<Record<Letter, Amount>>>;

/** A beam with a load that handbooks tabulate: how to know it, and what they say of it. */
export interface HandbookCase {
  /** Its name in the trade, unlike every other. */
  readonly title: string;
  /** What holds it, from end to end: see `CaseView`. */
  readonly scheme: string;
  /** The letters with their values where the view shows this case, with a positive load. */
  readonly fits: (view: CaseView) => Given | undefined;
  /** In the order of a sheet: reactions, moments, shear, deflections. */
  readonly formulas: readonly Formula[];
  /** Author, title, table or page; `from memory` where that was not seen. */
  readonly source: string;
}

/** Formula for the reaction at one support, or at several that share alike. */
export function reaction(
  supports: number | readonly number[],
  value: Expression,
): Formula {
  return { gives: { kind: 'reaction', supports: [supports].flat() }, value };
}

/** Formula for the bending moment at one support, or at several that share alike. */
export function supportMoment(
  supports: number | readonly number[],
  value: Expression,
): Formula {
  return { gives: { kind: 'support-moment', supports: [supports].flat() }, value };
}

/** Formula for the bending moment at a station. */
export function momentAt(at: Expression, value: Expression): Formula {
  return { gives: { kind: 'moment', at }, value };
}

/** Formula for the greatest moment along the beam. */
export function greatestMoment(value: Expression): Formula {
  return { gives: { kind: 'extreme', of: 'moment', end: 'greatest' }, value };
}

/** Formula for the least moment along the beam. */
export function leastMoment(value: Expression): Formula {
  return { gives: { kind: 'extreme', of: 'moment', end: 'least' }, value };
}

/** Formula for the greatest size of the shear. */
export function greatestShear(value: Expression): Formula {
  return { gives: { kind: 'greatest-shear' }, value };
}

/** Formula for the deflection at a station, up positive. */
export function deflectionAt(at: Expression, value: Expression): Formula {
  return { gives: { kind: 'deflection', at }, value };
}

/** Formula for the greatest rise, up positive. */
export function greatestDeflection(value: Expression): Formula {
  return { gives: { kind: 'extreme', of: 'deflection', end: 'greatest' }, value };
}

/** Formula for the greatest sag, as the negative number that it is. */
export function leastDeflection(value: Expression): Formula {
  return { gives: { kind: 'extreme', of: 'deflection', end: 'least' }, value };
}
