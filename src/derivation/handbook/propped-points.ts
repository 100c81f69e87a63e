import {
  deflectionAt,
  greatestMoment,
  leastDeflection,
  momentAt,
  reaction,
  supportMoment,
  type Formula,
  type Given,
  type HandbookCase,
} from './handbook-case.ts';
import {
  C,
  E,
  I,
  L,
  P,
  R,
  a,
  add,
  b,
  div,
  mul,
  neg,
  overEI,
  pow,
  root,
  sub,
  δ,
} from './letters.ts';
import type { CaseView } from './case-view.ts';
import {
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

const scheme = 'fixed simple';

/** The force at any place, a from the prop and b from the fixed end, where it stands nearer to the prop than a share of the span or farther. */
function pointAnywhere(view: CaseView, isNear: boolean): Given | undefined {
  const [point] = onlyPoints(view, 1) ?? [];
  if (point === undefined || point.at <= 0 || point.at >= view.length) return undefined;
  const fromProp = view.length - point.at;
  const isNearer = fromProp < (Math.SQRT2 - 1) * view.length;
  return isNearer === isNear
    ? {
        P: force(point),
        L: length(view.length),
        a: length(fromProp),
        b: length(point.at),
      }
    : undefined;
}

const pointAnywhereForces: readonly Formula[] = [
  reaction(0, div(mul(P, a, sub(mul(3, pow(L, 2)), pow(a, 2))), mul(2, pow(L, 3)))),
  reaction(1, div(mul(P, pow(b, 2), add(a, mul(2, L))), mul(2, pow(L, 3)))),
  supportMoment(0, neg(div(mul(P, a, b, add(a, L)), mul(2, pow(L, 2))))),
  greatestMoment(mul(R(1), a)),
];

/** Beams fixed at one end and resting on a prop at the other, under point loads, couples and settlements: the fixed end first. */
export const proppedPointCases: readonly HandbookCase[] = [
  {
    title: 'propped cantilever, point load at midspan',
    scheme,
    fits: (view) => {
      const load = equalPoints(view, view.length / 2);
      return load && { P: load, L: length(view.length) };
    },
    formulas: [
      reaction(0, div(mul(11, P), 16)),
      reaction(1, div(mul(5, P), 16)),
      supportMoment(0, neg(div(mul(3, P, L), 16))),
      greatestMoment(div(mul(5, P, L), 32)),
      deflectionAt(div(L, 2), neg(overEI(mul(7, P, pow(L, 3)), 768))),
      leastDeflection(neg(overEI(mul(P, pow(L, 3)), 48, root(5)))),
    ],
    source: sources.aisc,
  },
  {
    title: 'propped cantilever, two equal point loads at the third points',
    scheme,
    fits: (view) => {
      const load = equalPoints(view, view.length / 3, (2 * view.length) / 3);
      return load && { P: load, L: length(view.length) };
    },
    formulas: [
      reaction(0, div(mul(4, P), 3)),
      reaction(1, div(mul(2, P), 3)),
      supportMoment(0, neg(div(mul(P, L), 3))),
      greatestMoment(div(mul(2, P, L), 9)),
    ],
    source: sources.fixedEnds,
  },
  {
    title: 'propped cantilever, point load nearer to the prop than 0.414 of the span',
    scheme,
    fits: (view) => pointAnywhere(view, true),
    formulas: [
      ...pointAnywhereForces,
      leastDeflection(
        neg(
          div(
            mul(P, a, pow(sub(pow(L, 2), pow(a, 2)), 3)),
            mul(3, E, I, pow(sub(mul(3, pow(L, 2)), pow(a, 2)), 2)),
          ),
        ),
      ),
    ],
    source: sources.aisc,
  },
  {
    title:
      'propped cantilever, point load farther from the prop than 0.414 of the span',
    scheme,
    fits: (view) => pointAnywhere(view, false),
    formulas: [
      ...pointAnywhereForces,
      leastDeflection(
        neg(mul(overEI(mul(P, a, pow(b, 2)), 6), root(div(a, add(mul(2, L), a))))),
      ),
    ],
    source: sources.aisc,
  },
  {
    title: 'propped cantilever, couple at the prop',
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
      reaction(0, div(mul(3, C), mul(2, L))),
      reaction(1, neg(div(mul(3, C), mul(2, L)))),
      supportMoment(0, neg(div(C, 2))),
      greatestMoment(C),
      leastDeflection(neg(overEI(mul(C, pow(L, 2)), 27))),
    ],
    source: sources.roark,
  },
  {
    title: 'propped cantilever, couple at any place',
    scheme,
    fits: (view) => {
      const [one] = onlyCouples(view, 1) ?? [];
      return one !== undefined &&
        one.amount.si > 0 &&
        one.at > 0 &&
        one.at < view.length
        ? { C: couple(one), L: length(view.length), a: length(one.at) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(3, C, a, sub(mul(2, L), a)), mul(2, pow(L, 3)))),
      reaction(1, neg(div(mul(3, C, a, sub(mul(2, L), a)), mul(2, pow(L, 3))))),
      supportMoment(
        0,
        div(
          mul(C, add(sub(mul(2, pow(L, 2)), mul(6, a, L)), mul(3, pow(a, 2)))),
          mul(2, pow(L, 2)),
        ),
      ),
    ],
    source: sources.roark,
  },
  {
    title: 'propped cantilever, settlement of the prop',
    scheme,
    fits: (view) => {
      const down = onlySettlement(view, 1);
      return down && { δ: down, L: length(view.length) };
    },
    formulas: [
      reaction(0, div(mul(3, E, I, δ), pow(L, 3))),
      reaction(1, neg(div(mul(3, E, I, δ), pow(L, 3)))),
      supportMoment(0, neg(div(mul(3, E, I, δ), pow(L, 2)))),
      momentAt(div(L, 2), neg(div(mul(3, E, I, δ), mul(2, pow(L, 2))))),
    ],
    source: sources.fixedEnds,
  },
  {
    title: 'propped cantilever, settlement of the fixed end without rotation',
    scheme,
    fits: (view) => {
      const down = onlySettlement(view, 0);
      return down && { δ: down, L: length(view.length) };
    },
    formulas: [
      reaction(0, neg(div(mul(3, E, I, δ), pow(L, 3)))),
      reaction(1, div(mul(3, E, I, δ), pow(L, 3))),
      supportMoment(0, div(mul(3, E, I, δ), pow(L, 2))),
    ],
    source: sources.fixedEnds,
  },
];
