import type { Dimension } from '../../units/index.ts';
import {
  linearForm,
  type Meanings,
  type WorkingFault,
} from '../reading/linear-form.ts';
import { isSame } from './closeness.ts';
import type { Extent, Written, WrittenLine } from '../reading/written.ts';

/** A term of a worker's line, brought to the left of the equals sign. */
export interface WorkerTerm extends Extent {
  /** As it was written. */
  readonly text: string;
  /** What it adds as a number, its sign in it; 0 for a term with an unknown. */
  readonly constant: number;
  /** So much of an unknown, its sign in it. */
  readonly unknown?: { readonly key: string; readonly share: number };
  readonly dimension: Dimension | undefined;
  /** On which side of the equals sign it stands. */
  readonly side: 'left' | 'right';
  /** How far rounding of its written figures can have moved it, as a share of it. */
  readonly spread: number;
  /** The sizes of what it is multiplied from, by what they measure: where arms and forces are looked for. */
  readonly parts: readonly TermPart[];
}

/** A factor of a term. */
export interface TermPart {
  readonly size: number;
  readonly dimension: Dimension | undefined;
  /** −1 where it stands under a slash. */
  readonly power: number;
  /** One of the unit that a number was written in, SI; absent for a symbol or what is worked out. */
  readonly unit?: number;
}

/** A line in terms, or why it cannot be worked. */
export type LineTerms =
  | { readonly terms: readonly WorkerTerm[]; readonly fault?: undefined }
  | { readonly fault: WorkingFault; readonly terms?: undefined };

/**
 * The terms of the first equation of a line: its first side less its second, or its only side.
 * Products with a sum are multiplied out where it is a sum of forces or moments.
 */
export function termsOfLine(line: WrittenLine, meanings: Meanings): LineTerms {
  const [left, right] = line.links;
  const terms: WorkerTerm[] = [];
  for (const [of, sign, side] of [
    [left, 1, 'left'],
    [right, -1, 'right'],
  ] as const) {
    if (of === undefined) continue;
    const fault = collect(of, { sign, side, text: line.text, meanings }, terms);
    if (fault !== undefined) return { fault };
  }
  return { terms: terms.filter(({ constant, unknown }) => constant !== 0 || unknown) };
}

interface Collecting {
  readonly sign: 1 | -1;
  readonly side: WorkerTerm['side'];
  readonly text: string;
  readonly meanings: Meanings;
}

function collect(
  of: Written,
  setting: Collecting,
  into: WorkerTerm[],
): WorkingFault | undefined {
  if (of.kind === 'sum') {
    for (const { sign, of: term } of of.terms) {
      const turned = setting.sign === sign ? 1 : -1;
      const fault = collect(term, { ...setting, sign: turned }, into);
      if (fault !== undefined) return fault;
    }
    return undefined;
  }
  const opened = multipliedOut(of, setting.meanings);
  if (opened !== undefined) return collect(opened, setting, into);
  const worked = linearForm(of, setting.meanings);
  if (worked.fault !== undefined) return worked.fault;
  const { constant, unknowns, dimension } = worked.form;
  const base = {
    start: of.start,
    end: of.end,
    text: setting.text.slice(of.start, of.end).trim(),
    dimension,
    side: setting.side,
    spread: spreadOf(of),
    parts: partsOf(of, setting.meanings, 1),
  };
  const { sign } = setting;
  if (constant !== 0 || unknowns.size === 0)
    into.push({ ...base, constant: sign * constant + 0 });
  for (const [key, share] of unknowns)
    into.push({ ...base, constant: 0, unknown: { key, share: sign * share } });
  return undefined;
}

/** A product with a sum of forces or moments, or such a sum over something, as a sum; undefined for any other: 21 ft − 6 ft is one arm. */
function multipliedOut(of: Written, meanings: Meanings): Written | undefined {
  const holdsForces = (one: Written): boolean => {
    if (one.kind !== 'sum') return false;
    const { form } = linearForm(one, meanings);
    return (
      form !== undefined &&
      (form.unknowns.size > 0 || (form.dimension?.force ?? 0) !== 0)
    );
  };
  if (of.kind === 'quotient' && of.over.kind === 'sum' && holdsForces(of.over)) {
    const { under } = of;
    return {
      ...of.over,
      terms: of.over.terms.map(({ sign, of: over }) => ({
        sign,
        of: { kind: 'quotient', over, under, start: over.start, end: over.end },
      })),
    };
  }
  if (of.kind !== 'product') return undefined;
  const at = of.factors.findIndex(holdsForces);
  const sum = of.factors[at];
  if (sum?.kind !== 'sum') return undefined;
  const others = of.factors.filter((_, index) => index !== at);
  return {
    ...sum,
    terms: sum.terms.map(({ sign, of: term }) => ({
      sign,
      of: {
        kind: 'product',
        factors: [term, ...others],
        start: term.start,
        end: term.end,
      },
    })),
  };
}

/**
 * One unit of the last written place of each number, as a share of it. A number of less than three
 * figures was given so (8.4 kip), and is taken as exact.
 */
function spreadOf(of: Written): number {
  switch (of.kind) {
    case 'number':
      return placeShare(of);
    case 'product':
      return of.factors.reduce((all, factor) => all + spreadOf(factor), 0);
    case 'quotient':
      return spreadOf(of.over) + spreadOf(of.under);
    case 'name':
    case 'sum':
    case 'power':
    case 'call':
      return 0;
  }
}

/** One unit of the last place as a share; zeros at the end of a whole number (1560 lb) may only hold its places. */
function placeShare({
  quantity: { si, unit },
  lastPlace,
}: Extract<Written, { kind: 'number' }>): number {
  const size = Math.abs(si || 1);
  const most = 0.01 * (1 + 1e-9) * size;
  let place = lastPlace;
  if (isSame(lastPlace, unit.inSi))
    while (
      place * 10 <= most &&
      isSame(size / (place * 10), Math.round(size / (place * 10)))
    )
      place *= 10;
  return place <= most ? place / size : 0;
}

/** The factors of a term that are known numbers. */
function partsOf(of: Written, meanings: Meanings, power: number): readonly TermPart[] {
  if (of.kind === 'product')
    return of.factors.flatMap((factor) => partsOf(factor, meanings, power));
  if (of.kind === 'quotient')
    return [
      ...partsOf(of.over, meanings, power),
      ...partsOf(of.under, meanings, -power),
    ];
  if (of.kind === 'power' && Number.isInteger(of.exponent) && of.exponent > 0)
    return Array.from({ length: Math.min(of.exponent, 4) }, () =>
      partsOf(of.base, meanings, power),
    ).flat();
  const { form } = linearForm(of, meanings);
  if (form === undefined || form.unknowns.size > 0) return [];
  const unit =
    of.kind === 'number' && !of.isBare ? { unit: of.quantity.unit.inSi } : {};
  return [{ size: Math.abs(form.constant), dimension: form.dimension, power, ...unit }];
}
