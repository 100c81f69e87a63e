import {
  greatestMoment,
  leastDeflection,
  reaction,
  supportMoment,
  type HandbookCase,
} from './handbook-case.ts';
import {
  E,
  I,
  L,
  L1,
  L2,
  M,
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
  w,
  δ,
} from './letters.ts';
import {
  equalPoints,
  equalSpan,
  force,
  length,
  onlyPoints,
  onlySettlement,
  onlyUniform,
  spansOf,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'simple simple simple';

/** Continuous beams of two spans on simple supports. */
export const twoSpanCases: readonly HandbookCase[] = [
  {
    title: 'two equal spans, uniform load on both',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      const span = equalSpan(view);
      return load && span !== undefined ? { w: load, L: length(span) } : undefined;
    },
    formulas: [
      reaction([0, 2], div(mul(3, w, L), 8)),
      reaction(1, div(mul(5, w, L), 4)),
      supportMoment(1, neg(div(mul(w, pow(L, 2)), 8))),
      greatestMoment(div(mul(9, w, pow(L, 2)), 128)),
      // The exact form of what tables print as w L⁴ / 185 E I.
      leastDeflection(
        neg(overEI(mul(add(39, mul(55, root(33))), w, pow(L, 4)), 65536)),
      ),
    ],
    source: sources.hicksContinuous,
  },
  {
    title: 'two equal spans, uniform load on one',
    scheme,
    fits: (view) => {
      const span = equalSpan(view);
      const load = span === undefined ? undefined : onlyUniform(view, 0, span);
      return load && span !== undefined ? { w: load, L: length(span) } : undefined;
    },
    formulas: [
      reaction(0, div(mul(7, w, L), 16)),
      reaction(1, div(mul(5, w, L), 8)),
      reaction(2, neg(div(mul(w, L), 16))),
      supportMoment(1, neg(div(mul(w, pow(L, 2)), 16))),
      greatestMoment(div(mul(49, w, pow(L, 2)), 512)),
    ],
    source: sources.aisc,
  },
  {
    title: 'two equal spans, equal point loads at both midspans',
    scheme,
    fits: (view) => {
      const span = equalSpan(view) ?? NaN;
      const load = equalPoints(view, span / 2, 1.5 * span);
      return load && { P: load, L: length(span) };
    },
    formulas: [
      reaction([0, 2], div(mul(5, P), 16)),
      reaction(1, div(mul(11, P), 8)),
      supportMoment(1, neg(div(mul(3, P, L), 16))),
      greatestMoment(div(mul(5, P, L), 32)),
      leastDeflection(neg(overEI(mul(P, pow(L, 3)), 48, root(5)))),
    ],
    source: sources.continuous,
  },
  {
    title: 'two equal spans, point load at the midspan of one',
    scheme,
    fits: (view) => {
      const span = equalSpan(view) ?? NaN;
      const load = equalPoints(view, span / 2);
      return load && { P: load, L: length(span) };
    },
    formulas: [
      reaction(0, div(mul(13, P), 32)),
      reaction(1, div(mul(11, P), 16)),
      reaction(2, neg(div(mul(3, P), 32))),
      supportMoment(1, neg(div(mul(3, P, L), 32))),
      greatestMoment(div(mul(13, P, L), 64)),
    ],
    source: sources.aisc,
  },
  {
    title: 'two equal spans, point load at any place of one',
    scheme,
    fits: (view) => {
      const span = equalSpan(view);
      const [point] = onlyPoints(view, 1) ?? [];
      return span !== undefined &&
        point !== undefined &&
        point.at > 0 &&
        point.at < span
        ? {
            P: force(point),
            L: length(span),
            a: length(point.at),
            b: length(span - point.at),
          }
        : undefined;
    },
    formulas: [
      reaction(
        0,
        div(mul(P, b, sub(mul(4, pow(L, 2)), mul(a, add(L, a)))), mul(4, pow(L, 3))),
      ),
      reaction(
        1,
        div(mul(P, a, add(mul(2, pow(L, 2)), mul(b, add(L, a)))), mul(2, pow(L, 3))),
      ),
      reaction(2, neg(div(mul(P, a, b, add(L, a)), mul(4, pow(L, 3))))),
      supportMoment(1, neg(div(mul(P, a, b, add(L, a)), mul(4, pow(L, 2))))),
      greatestMoment(mul(R(0), a)),
    ],
    source: sources.aisc,
  },
  {
    title: 'two equal spans, equal point loads at all third points',
    scheme,
    fits: (view) => {
      const span = equalSpan(view) ?? NaN;
      const thirds = [1, 2, 4, 5].map((n) => (n * span) / 3);
      const load = equalPoints(view, ...thirds);
      return load && { P: load, L: length(span) };
    },
    formulas: [
      reaction([0, 2], div(mul(2, P), 3)),
      reaction(1, div(mul(8, P), 3)),
      supportMoment(1, neg(div(mul(P, L), 3))),
      greatestMoment(div(mul(2, P, L), 9)),
    ],
    source: sources.continuous,
  },
  {
    title: 'two unequal spans, uniform load on both',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      const [first = 0, second = 0] = spansOf(view);
      return load !== undefined && first > second
        ? { w: load, L1: length(first), L2: length(second) }
        : undefined;
    },
    formulas: [
      supportMoment(
        1,
        neg(div(mul(w, add(pow(L1, 3), pow(L2, 3))), mul(8, add(L1, L2)))),
      ),
      reaction(0, add(div(mul(w, L1), 2), div(M(1), L1))),
      reaction(2, add(div(mul(w, L2), 2), div(M(1), L2))),
      reaction(1, sub(mul(w, add(L1, L2)), R(0), R(2))),
      greatestMoment(div(pow(R(0), 2), mul(2, w))),
    ],
    source: sources.aisc,
  },
  {
    title: 'two unequal spans, uniform load on one',
    scheme,
    fits: (view) => {
      const [first = 0, second = 0] = spansOf(view);
      const load = onlyUniform(view, 0, first);
      return load && { w: load, L1: length(first), L2: length(second) };
    },
    formulas: [
      supportMoment(1, neg(div(mul(w, pow(L1, 3)), mul(8, add(L1, L2))))),
      reaction(0, add(div(mul(w, L1), 2), div(M(1), L1))),
      reaction(2, div(M(1), L2)),
      reaction(1, sub(mul(w, L1), R(0), R(2))),
      greatestMoment(div(pow(R(0), 2), mul(2, w))),
    ],
    source: sources.continuous,
  },
  {
    title: 'two equal spans, settlement of the middle support',
    scheme,
    fits: (view) => {
      const down = onlySettlement(view, 1);
      const span = equalSpan(view);
      return down && span !== undefined ? { δ: down, L: length(span) } : undefined;
    },
    formulas: [
      reaction([0, 2], div(mul(3, E, I, δ), pow(L, 3))),
      reaction(1, neg(div(mul(6, E, I, δ), pow(L, 3)))),
      greatestMoment(div(mul(3, E, I, δ), pow(L, 2))),
    ],
    source: sources.continuous,
  },
];
