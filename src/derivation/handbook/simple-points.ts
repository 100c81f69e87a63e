import {
  deflectionAt,
  greatestMoment,
  greatestShear,
  leastDeflection,
  momentAt,
  reaction,
  type HandbookCase,
} from './handbook-case.ts';
import {
  L,
  P,
  P1,
  P2,
  a,
  add,
  b,
  div,
  mul,
  overEI,
  pow,
  root,
  sub,
  neg,
} from './letters.ts';
import { areEqual, equalPoints, force, length, onlyPoints, same } from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'simple simple';

/** Simple beams under point loads. */
export const simplePointCases: readonly HandbookCase[] = [
  {
    title: 'simple beam, point load at midspan',
    scheme,
    fits: (view) => {
      const load = equalPoints(view, view.length / 2);
      return load && { P: load, L: length(view.length) };
    },
    formulas: [
      reaction([0, 1], div(P, 2)),
      greatestMoment(div(mul(P, L), 4)),
      greatestShear(div(P, 2)),
      leastDeflection(neg(overEI(mul(P, pow(L, 3)), 48))),
    ],
    source: sources.openTables,
  },
  {
    title: 'simple beam, point load at any place',
    scheme,
    fits: (view) => {
      const [point] = onlyPoints(view, 1) ?? [];
      // The formula for the greatest sag is tabulated for the load beyond midspan: the other way it is seen mirrored.
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
      reaction(0, div(mul(P, b), L)),
      reaction(1, div(mul(P, a), L)),
      greatestMoment(div(mul(P, a, b), L)),
      deflectionAt(a, neg(overEI(mul(P, pow(a, 2), pow(b, 2)), 3, L))),
      leastDeflection(
        neg(
          overEI(
            mul(P, a, b, add(a, mul(2, b)), root(mul(3, a, add(a, mul(2, b))))),
            27,
            L,
          ),
        ),
      ),
    ],
    source: sources.hicks(2, 21),
  },
  {
    title: 'simple beam, two equal point loads at the third points',
    scheme,
    fits: (view) => {
      const load = equalPoints(view, view.length / 3, (2 * view.length) / 3);
      return load && { P: load, L: length(view.length) };
    },
    formulas: [
      reaction([0, 1], P),
      greatestMoment(div(mul(P, L), 3)),
      greatestShear(P),
      leastDeflection(neg(overEI(mul(23, P, pow(L, 3)), 648))),
    ],
    source: sources.aisc,
  },
  {
    title: 'simple beam, two equal point loads placed alike from both supports',
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
      greatestMoment(mul(P, a)),
      greatestShear(P),
      leastDeflection(
        neg(overEI(mul(P, a, sub(mul(3, pow(L, 2)), mul(4, pow(a, 2)))), 24)),
      ),
    ],
    source: sources.aisc,
  },
  {
    title: 'simple beam, three equal point loads at the quarter points',
    scheme,
    fits: (view) => {
      const quarter = view.length / 4;
      const load = equalPoints(view, quarter, 2 * quarter, 3 * quarter);
      return load && { P: load, L: length(view.length) };
    },
    formulas: [
      reaction([0, 1], div(mul(3, P), 2)),
      greatestMoment(div(mul(P, L), 2)),
      leastDeflection(neg(overEI(mul(19, P, pow(L, 3)), 384))),
    ],
    source: sources.aisc,
  },
  {
    title: 'simple beam, two equal point loads at any places',
    scheme,
    fits: (view) => {
      const [first, second] = onlyPoints(view, 2) ?? [];
      if (first === undefined || second === undefined) return undefined;
      const [near, far] = [first.at, view.length - second.at];
      return areEqual(first, second) && near > far && far > 0
        ? {
            P: force(first, second),
            L: length(view.length),
            a: length(near),
            b: length(far),
          }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(P, add(sub(L, a), b)), L)),
      reaction(1, div(mul(P, add(sub(L, b), a)), L)),
      greatestMoment(div(mul(P, a, add(sub(L, a), b)), L)),
    ],
    source: sources.aisc,
  },
  {
    title: 'simple beam, two point loads',
    scheme,
    fits: (view) => {
      const [first, second] = onlyPoints(view, 2) ?? [];
      return first !== undefined &&
        second !== undefined &&
        first.at > 0 &&
        second.at < view.length &&
        !areEqual(first, second)
        ? {
            P1: force(first),
            P2: force(second),
            L: length(view.length),
            a: length(first.at),
            b: length(view.length - second.at),
          }
        : undefined;
    },
    formulas: [
      reaction(0, div(add(mul(P1, sub(L, a)), mul(P2, b)), L)),
      reaction(1, div(add(mul(P1, a), mul(P2, sub(L, b))), L)),
      momentAt(a, div(mul(a, add(mul(P1, sub(L, a)), mul(P2, b))), L)),
      momentAt(sub(L, b), div(mul(b, add(mul(P1, a), mul(P2, sub(L, b)))), L)),
    ],
    source: sources.hicks(3, 22),
  },
];
