import {
  deflectionAt,
  greatestDeflection,
  greatestMoment,
  leastDeflection,
  leastMoment,
  momentAt,
  reaction,
  supportMoment,
  type HandbookCase,
} from './handbook-case.ts';
import {
  L,
  P,
  a,
  add,
  b,
  c,
  div,
  mul,
  neg,
  overEI,
  pow,
  root,
  sub,
  w,
} from './letters.ts';
import {
  equalPoints,
  force,
  length,
  onlyPoints,
  onlyUniform,
  same,
} from './read-view.ts';
import type { CaseView } from './case-view.ts';
import { sources } from './sources.ts';

const oneSide = 'simple simple free';
const bothSides = 'free simple simple free';

const spanOf = ({ supports }: CaseView): number =>
  (supports[1]?.at ?? 0) - (supports[0]?.at ?? 0);

/** Beams on two supports that overhang one of them, the second, or both alike. */
export const overhangCases: readonly HandbookCase[] = [
  {
    title: 'beam overhanging one support, uniform load all along',
    scheme: oneSide,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      const span = spanOf(view);
      // With an overhang as long as the span the first support does not press and nothing sags.
      return load !== undefined && view.length - span < span
        ? { w: load, L: length(span), a: length(view.length - span) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(w, sub(pow(L, 2), pow(a, 2))), mul(2, L))),
      reaction(1, div(mul(w, pow(add(L, a), 2)), mul(2, L))),
      greatestMoment(
        div(mul(w, pow(add(L, a), 2), pow(sub(L, a), 2)), mul(8, pow(L, 2))),
      ),
      leastMoment(neg(div(mul(w, pow(a, 2)), 2))),
      deflectionAt(
        add(L, a),
        overEI(mul(w, a, sub(pow(L, 3), mul(4, pow(a, 2), L), mul(3, pow(a, 3)))), 24),
      ),
    ],
    source: sources.aisc,
  },
  {
    title: 'beam overhanging one support, uniform load on the overhang',
    scheme: oneSide,
    fits: (view) => {
      const span = spanOf(view);
      const load = onlyUniform(view, span, view.length);
      return load && { w: load, L: length(span), a: length(view.length - span) };
    },
    formulas: [
      reaction(0, neg(div(mul(w, pow(a, 2)), mul(2, L)))),
      reaction(1, div(mul(w, a, add(mul(2, L), a)), mul(2, L))),
      leastMoment(neg(div(mul(w, pow(a, 2)), 2))),
      greatestDeflection(overEI(mul(w, pow(a, 2), pow(L, 2)), 18, root(3))),
      leastDeflection(neg(overEI(mul(w, pow(a, 3), add(mul(4, L), mul(3, a))), 24))),
    ],
    source: sources.aisc,
  },
  {
    title: 'beam overhanging one support, point load at the end of the overhang',
    scheme: oneSide,
    fits: (view) => {
      const load = equalPoints(view, view.length);
      const span = spanOf(view);
      return load && { P: load, L: length(span), a: length(view.length - span) };
    },
    formulas: [
      reaction(0, neg(div(mul(P, a), L))),
      reaction(1, div(mul(P, add(L, a)), L)),
      leastMoment(neg(mul(P, a))),
      greatestDeflection(overEI(mul(P, a, pow(L, 2)), 9, root(3))),
      leastDeflection(neg(overEI(mul(P, pow(a, 2), add(L, a)), 3))),
    ],
    source: sources.aisc,
  },
  {
    title: 'beam overhanging one support, uniform load between the supports',
    scheme: oneSide,
    fits: (view) => {
      const span = spanOf(view);
      const load = onlyUniform(view, 0, span);
      return load && { w: load, L: length(span), a: length(view.length - span) };
    },
    formulas: [
      reaction([0, 1], div(mul(w, L), 2)),
      greatestMoment(div(mul(w, pow(L, 2)), 8)),
      greatestDeflection(overEI(mul(w, pow(L, 3), a), 24)),
      leastDeflection(neg(overEI(mul(5, w, pow(L, 4)), 384))),
    ],
    source: sources.aisc,
  },
  {
    title: 'beam overhanging one support, point load between the supports',
    scheme: oneSide,
    fits: (view) => {
      const [point] = onlyPoints(view, 1) ?? [];
      const span = spanOf(view);
      return point !== undefined && point.at > 0 && point.at < span
        ? {
            P: force(point),
            L: length(span),
            a: length(point.at),
            b: length(span - point.at),
            c: length(view.length - span),
          }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(P, b), L)),
      reaction(1, div(mul(P, a), L)),
      greatestMoment(div(mul(P, a, b), L)),
      deflectionAt(a, neg(overEI(mul(P, pow(a, 2), pow(b, 2)), 3, L))),
      greatestDeflection(overEI(mul(P, a, b, c, add(L, a)), 6, L)),
    ],
    source: sources.aisc,
  },
  {
    title: 'beam overhanging both supports alike, uniform load all along',
    scheme: bothSides,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      const [span, over] = [spanOf(view), view.supports[0]?.at ?? 0];
      return load !== undefined && same(2 * over + span, view.length, view.length)
        ? { w: load, L: length(span), a: length(over) }
        : undefined;
    },
    formulas: [
      reaction([0, 1], div(mul(w, add(L, mul(2, a))), 2)),
      leastMoment(neg(div(mul(w, pow(a, 2)), 2))),
      momentAt(add(a, div(L, 2)), div(mul(w, sub(pow(L, 2), mul(4, pow(a, 2)))), 8)),
    ],
    source: sources.hicks(11, 30),
  },
  {
    title: 'beam overhanging both supports, uniform load all along',
    scheme: bothSides,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      const [span, over] = [spanOf(view), view.supports[0]?.at ?? 0];
      return (
        load && {
          w: load,
          L: length(span),
          a: length(over),
          b: length(view.length - over - span),
        }
      );
    },
    formulas: [
      reaction(0, div(mul(w, sub(pow(add(a, L), 2), pow(b, 2))), mul(2, L))),
      reaction(1, div(mul(w, sub(pow(add(b, L), 2), pow(a, 2))), mul(2, L))),
      supportMoment(0, neg(div(mul(w, pow(a, 2)), 2))),
      supportMoment(1, neg(div(mul(w, pow(b, 2)), 2))),
    ],
    source: sources.aisc,
  },
  {
    title: 'beam overhanging both supports alike, equal point loads at both ends',
    scheme: bothSides,
    fits: (view) => {
      const load = equalPoints(view, 0, view.length);
      const [span, over] = [spanOf(view), view.supports[0]?.at ?? 0];
      return load !== undefined && same(2 * over + span, view.length, view.length)
        ? { P: load, L: length(span), a: length(over) }
        : undefined;
    },
    formulas: [
      reaction([0, 1], P),
      leastMoment(neg(mul(P, a))),
      greatestDeflection(overEI(mul(P, a, pow(L, 2)), 8)),
      leastDeflection(neg(overEI(mul(P, pow(a, 2), add(mul(3, L), mul(2, a))), 6))),
    ],
    source: sources.hicks(12, 31),
  },
];
