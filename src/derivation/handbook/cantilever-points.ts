import {
  deflectionAt,
  greatestDeflection,
  greatestMoment,
  leastDeflection,
  reaction,
  supportMoment,
  type HandbookCase,
} from './handbook-case.ts';
import { C, L, P, a, mul, neg, overEI, pow, sub } from './letters.ts';
import {
  couple,
  equalPoints,
  force,
  length,
  onlyCouples,
  onlyPoints,
  same,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'fixed free';

/** Cantilevers under point loads and couples: the fixed end first, then the tip. */
export const cantileverPointCases: readonly HandbookCase[] = [
  {
    title: 'cantilever, point load at the tip',
    scheme,
    fits: (view) => {
      const load = equalPoints(view, view.length);
      return load && { P: load, L: length(view.length) };
    },
    formulas: [
      reaction(0, P),
      supportMoment(0, neg(mul(P, L))),
      leastDeflection(neg(overEI(mul(P, pow(L, 3)), 3))),
    ],
    source: sources.openTables,
  },
  {
    title: 'cantilever, point load at any place',
    scheme,
    fits: (view) => {
      const [point] = onlyPoints(view, 1) ?? [];
      return point !== undefined && point.at > 0
        ? {
            P: force(point),
            L: length(view.length),
            a: length(point.at),
          }
        : undefined;
    },
    formulas: [
      reaction(0, P),
      supportMoment(0, neg(mul(P, a))),
      deflectionAt(a, neg(overEI(mul(P, pow(a, 3)), 3))),
      leastDeflection(neg(overEI(mul(P, pow(a, 2), sub(mul(3, L), a)), 6))),
    ],
    source: sources.aisc,
  },
  {
    title: 'cantilever, couple at the tip',
    scheme,
    fits: (view) => {
      const [one] = onlyCouples(view, 1) ?? [];
      return one !== undefined &&
        one.amount.si > 0 &&
        same(one.at, view.length, view.length)
        ? { C: couple(one), L: length(view.length) }
        : undefined;
    },
    formulas: [greatestMoment(C), greatestDeflection(overEI(mul(C, pow(L, 2)), 2))],
    source: sources.openTables,
  },
  {
    title: 'cantilever, couple at any place',
    scheme,
    fits: (view) => {
      const [one] = onlyCouples(view, 1) ?? [];
      return one !== undefined && one.amount.si > 0 && one.at > 0
        ? {
            C: couple(one),
            L: length(view.length),
            a: length(one.at),
          }
        : undefined;
    },
    formulas: [
      greatestMoment(C),
      greatestDeflection(overEI(mul(C, a, sub(mul(2, L), a)), 2)),
    ],
    source: sources.roark,
  },
];
