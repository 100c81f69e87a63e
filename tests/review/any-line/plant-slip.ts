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

/** What a slip of each kind does to a term that it can happen to. */
interface Change {
  readonly fits: (term: LineTerm) => boolean;
  readonly by: (term: LineTerm, pick: number) => Partial<LineTerm>;
}

const isNumber = ({ what }: LineTerm): boolean => what !== 'unknown';

const changes: Readonly<
  Record<Exclude<PlantedKind, 'missing-term' | 'extra-term'>, Change>
> = {
  sign: { fits: () => true, by: ({ sign }) => ({ sign: sign === 1 ? -1 : 1 }) },
  'lever-arm': {
    fits: ({ arm, what }) => arm !== undefined && what !== 'spread',
    by: () => ({ slip: { arm: 1.37 } }),
  },
  magnitude: { fits: isNumber, by: () => ({ slip: { size: 1.23 } }) },
  // Twice its area, or at the wrong place.
  resultant: {
    fits: ({ what }) => what === 'spread',
    by: ({ arm }, pick) =>
      pick % 2 === 0 || arm === undefined
        ? { slip: { size: 2 } }
        : { slip: { arm: 1.37 } },
  },
  unit: {
    fits: isNumber,
    by: (_, pick) => ({ slip: { size: pick % 2 === 0 ? 12 : 1000 } }),
  },
};

/** Terms with one slip; undefined where the line has no place for it, or it would not show. */
export function plantSlip(
  terms: readonly LineTerm[],
  kind: PlantedKind,
  pick: number,
): Planted | undefined {
  const greatest = Math.max(...terms.map(({ worth }) => worth));
  const open = terms.filter(({ worth }) => worth > 0.08 * greatest);
  const chosen = (fits: (term: LineTerm) => boolean): LineTerm | undefined => {
    const some = open.filter(fits);
    return terms.length < 3 ? undefined : some[pick % Math.max(some.length, 1)];
  };
  if (kind === 'missing-term') {
    const out = chosen(() => true);
    return out && { kind, terms: terms.filter((term) => term !== out) };
  }
  if (kind === 'extra-term') {
    const like = chosen(isNumber);
    return (
      like && {
        kind,
        terms: [...terms, { ...like, slip: { size: 0.431, arm: 0.713 } }],
      }
    );
  }
  const { fits, by } = changes[kind];
  const one = chosen(fits);
  return (
    one && {
      kind,
      terms: terms.map((term) =>
        term === one ? { ...term, ...by(term, pick) } : term,
      ),
    }
  );
}
