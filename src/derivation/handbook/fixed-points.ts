import {
  deflectionAt,
  greatestMoment,
  leastDeflection,
  reaction,
  supportMoment,
  type HandbookCase,
} from './handbook-case.ts';
import {
  C,
  E,
  I,
  L,
  P,
  a,
  add,
  b,
  div,
  mul,
  neg,
  overEI,
  pow,
  sub,
  δ,
} from './letters.ts';
import {
  areEqual,
  couple,
  equalPoints,
  force,
  length,
  onlyCouples,
  onlyPoints,
  onlySettlement,
  same,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'fixed fixed';

/** Beams fixed at both ends under point loads, couples and settlements. */
export const fixedPointCases: readonly HandbookCase[] = [
  {
    title: 'beam fixed at both ends, point load at midspan',
    scheme,
    fits: (view) => {
      const load = equalPoints(view, view.length / 2);
      return load && { P: load, L: length(view.length) };
    },
    formulas: [
      reaction([0, 1], div(P, 2)),
      supportMoment([0, 1], neg(div(mul(P, L), 8))),
      greatestMoment(div(mul(P, L), 8)),
      leastDeflection(neg(overEI(mul(P, pow(L, 3)), 192))),
    ],
    source: sources.aisc,
  },
  {
    title: 'beam fixed at both ends, point load at any place',
    scheme,
    fits: (view) => {
      const [point] = onlyPoints(view, 1) ?? [];
      return point !== undefined && point.at > view.length / 2 && point.at < view.length
        ? {
            P: force(point),
            L: length(view.length),
            a: length(point.at),
            b: length(view.length - point.at),
          }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(P, pow(b, 2), add(mul(3, a), b)), pow(L, 3))),
      reaction(1, div(mul(P, pow(a, 2), add(a, mul(3, b))), pow(L, 3))),
      supportMoment(0, neg(div(mul(P, a, pow(b, 2)), pow(L, 2)))),
      supportMoment(1, neg(div(mul(P, pow(a, 2), b), pow(L, 2)))),
      greatestMoment(div(mul(2, P, pow(a, 2), pow(b, 2)), pow(L, 3))),
      deflectionAt(a, neg(overEI(mul(P, pow(a, 3), pow(b, 3)), 3, pow(L, 3)))),
      leastDeflection(
        neg(overEI(mul(2, P, pow(a, 3), pow(b, 2)), 3, pow(add(mul(3, a), b), 2))),
      ),
    ],
    source: sources.hicks(6, 25),
  },
  {
    title: 'beam fixed at both ends, two equal point loads placed alike from both ends',
    scheme,
    fits: (view) => {
      const [first, second] = onlyPoints(view, 2) ?? [];
      return first !== undefined &&
        second !== undefined &&
        first.at > 0 &&
        areEqual(first, second) &&
        same(first.at, view.length - second.at, view.length)
        ? {
            P: force(first, second),
            L: length(view.length),
            a: length(first.at),
          }
        : undefined;
    },
    formulas: [
      reaction([0, 1], P),
      supportMoment([0, 1], neg(div(mul(P, a, sub(L, a)), L))),
      greatestMoment(div(mul(P, pow(a, 2)), L)),
      leastDeflection(neg(overEI(mul(P, pow(a, 2), sub(mul(3, L), mul(4, a))), 24))),
    ],
    source: sources.fixedEnds,
  },
  {
    title: 'beam fixed at both ends, couple at any place',
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
      reaction(0, div(mul(6, C, a, b), pow(L, 3))),
      reaction(1, neg(div(mul(6, C, a, b), pow(L, 3)))),
      supportMoment(0, neg(div(mul(C, b, sub(mul(2, a), b)), pow(L, 2)))),
      supportMoment(1, div(mul(C, a, sub(mul(2, b), a)), pow(L, 2))),
    ],
    source: sources.roark,
  },
  {
    title: 'beam fixed at both ends, settlement of one end without rotation',
    scheme,
    fits: (view) => {
      const down = onlySettlement(view, 1);
      return down && { δ: down, L: length(view.length) };
    },
    formulas: [
      reaction(0, div(mul(12, E, I, δ), pow(L, 3))),
      reaction(1, neg(div(mul(12, E, I, δ), pow(L, 3)))),
      supportMoment(0, neg(div(mul(6, E, I, δ), pow(L, 2)))),
      supportMoment(1, div(mul(6, E, I, δ), pow(L, 2))),
    ],
    source: sources.fixedEnds,
  },
];
