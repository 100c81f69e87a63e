import type { FindingKind } from '../../../src/review/index.ts';
import type { LineTerm } from './line-terms.ts';

export const plantedKinds = [
  'sign',
  'lever-arm',
  'missing-term',
  'extra-term',
  'magnitude',
  'resultant',
  'unit',
] as const;

export type PlantedKind = (typeof plantedKinds)[number];

/** A line with a slip in it, and the kind that it is by the table of findings. */
export interface Planted {
  readonly terms: readonly LineTerm[];
  readonly kind: FindingKind;
}

/** Terms with one slip; undefined where the line has no place for it, or it would not show. */
export function plantSlip(
  terms: readonly LineTerm[],
  kind: PlantedKind,
  pick: number,
): Planted | undefined {
  const greatest = Math.max(...terms.map(({ worth }) => worth));
  const open = terms.filter(({ worth }) => worth > 0.08 * greatest);
  const choose = (fits: (term: LineTerm) => boolean): LineTerm | undefined => {
    const some = open.filter(fits);
    return some.length === 0 ? undefined : some[pick % some.length];
  };
  if (terms.length < 3) return undefined;
  const change = (
    chosen: LineTerm | undefined,
    by: Partial<LineTerm>,
    is: FindingKind = kind,
  ): Planted | undefined =>
    chosen === undefined
      ? undefined
      : {
          kind: is,
          terms: terms.map((term) => (term === chosen ? { ...term, ...by } : term)),
        };
  const isSpread = ({ what }: LineTerm): boolean => what === 'spread';
  switch (kind) {
    case 'sign': {
      const chosen = choose(() => true);
      return change(chosen, { sign: chosen?.sign === 1 ? -1 : 1 });
    }
    case 'lever-arm':
      return change(
        choose((term) => term.arm !== undefined && !isSpread(term)),
        { slip: { arm: 1.37 } },
      );
    case 'missing-term': {
      const chosen = choose(() => true);
      return chosen === undefined
        ? undefined
        : { kind, terms: terms.filter((term) => term !== chosen) };
    }
    case 'extra-term': {
      const like = choose(({ what }) => what !== 'unknown');
      const own =
        like === undefined ? undefined : { ...like, slip: { size: 0.431, arm: 0.713 } };
      return own === undefined ? undefined : { kind, terms: [...terms, own] };
    }
    case 'magnitude':
      return change(
        choose(({ what }) => what !== 'unknown'),
        { slip: { size: 1.23 } },
      );
    case 'resultant':
      return change(
        choose(isSpread),
        pick % 2 === 0 || terms.every(({ arm }) => arm === undefined)
          ? { slip: { size: 2 } }
          : { slip: { arm: 1.37 } },
      );
    case 'unit':
      return change(
        choose(({ what }) => what !== 'unknown'),
        { slip: { size: pick % 2 === 0 ? 12 : 1000 } },
      );
  }
}
