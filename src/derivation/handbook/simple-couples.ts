import {
  greatestMoment,
  leastDeflection,
  leastMoment,
  reaction,
  type HandbookCase,
} from './handbook-case.ts';
import { C, L, a, b, div, mul, neg, overEI, pow, root } from './letters.ts';
import { couple, length, onlyCouples, same } from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'simple simple';

/** Simple beams under couples, counterclockwise in the view. */
export const simpleCoupleCases: readonly HandbookCase[] = [
  {
    title: 'simple beam, couple at one end',
    scheme,
    fits: (view) => {
      const [one] = onlyCouples(view, 1) ?? [];
      return one !== undefined &&
        one.amount.si > 0 &&
        same(one.at, view.length, view.length)
        ? { C: couple(one), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction(0, div(C, L)),
      reaction(1, neg(div(C, L))),
      greatestMoment(C),
      leastDeflection(neg(overEI(mul(C, pow(L, 2)), 9, root(3)))),
    ],
    source: sources.openTables,
  },
  {
    title: 'simple beam, couple at any place',
    scheme,
    fits: (view) => {
      const [one] = onlyCouples(view, 1) ?? [];
      return one !== undefined &&
        one.amount.si > 0 &&
        one.at > 0 &&
        one.at < view.length
        ? {
            C: couple(one),
            L: length(view.length),
            a: length(one.at),
            b: length(view.length - one.at),
          }
        : undefined;
    },
    formulas: [
      reaction(0, div(C, L)),
      reaction(1, neg(div(C, L))),
      greatestMoment(div(mul(C, a), L)),
      leastMoment(neg(div(mul(C, b), L))),
    ],
    source: sources.roark,
  },
  {
    title: 'simple beam, equal and opposite couples at both ends',
    scheme,
    fits: (view) => {
      const [left, right] = onlyCouples(view, 2) ?? [];
      return left !== undefined &&
        right !== undefined &&
        right.amount.si > 0 &&
        same(left.at, 0, view.length) &&
        same(right.at, view.length, view.length) &&
        same(left.amount.si, -right.amount.si, right.amount.si)
        ? {
            C: { what: 'moment', of: right.amount, shared: true },
            L: length(view.length),
          }
        : undefined;
    },
    formulas: [greatestMoment(C), leastDeflection(neg(overEI(mul(C, pow(L, 2)), 8)))],
    source: sources.roark,
  },
];
