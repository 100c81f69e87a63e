import {
  deflectionAt,
  greatestMoment,
  leastDeflection,
  reaction,
  supportMoment,
  type HandbookCase,
} from './handbook-case.ts';
import {
  L,
  M,
  R,
  a,
  add,
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
  covers,
  intensity,
  isTriangle,
  isUniform,
  length,
  onlyStretches,
  onlyUniform,
  same,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'fixed fixed';

/** Beams fixed at both ends under distributed loads. */
export const fixedSpreadCases: readonly HandbookCase[] = [
  {
    title: 'beam fixed at both ends, uniform load over the whole span',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      return load && { w: load, L: length(view.length) };
    },
    formulas: [
      reaction([0, 1], div(mul(w, L), 2)),
      supportMoment([0, 1], neg(div(mul(w, pow(L, 2)), 12))),
      greatestMoment(div(mul(w, pow(L, 2)), 24)),
      leastDeflection(neg(overEI(mul(w, pow(L, 4)), 384))),
    ],
    source: sources.hicks(5, 24),
  },
  {
    title: 'beam fixed at both ends, uniform load over one half of the span',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length / 2);
      return load && { w: load, L: length(view.length) };
    },
    formulas: [
      reaction(0, div(mul(13, w, L), 32)),
      reaction(1, div(mul(3, w, L), 32)),
      supportMoment(0, neg(div(mul(11, w, pow(L, 2)), 192))),
      supportMoment(1, neg(div(mul(5, w, pow(L, 2)), 192))),
      greatestMoment(div(mul(155, w, pow(L, 2)), 6144)),
      deflectionAt(div(L, 2), neg(overEI(mul(w, pow(L, 4)), 768))),
    ],
    source: sources.fixedEnds,
  },
  {
    title: 'beam fixed at both ends, uniform load beginning at one end',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined &&
        isUniform(stretch) &&
        covers(view, stretch, 0, stretch.to)
        ? {
            w: intensity(view, stretch.start),
            L: length(view.length),
            a: length(stretch.to),
          }
        : undefined;
    },
    formulas: [
      reaction(
        0,
        div(
          mul(w, a, add(sub(mul(2, pow(L, 3)), mul(2, L, pow(a, 2))), pow(a, 3))),
          mul(2, pow(L, 3)),
        ),
      ),
      reaction(1, div(mul(w, pow(a, 3), sub(mul(2, L), a)), mul(2, pow(L, 3)))),
      supportMoment(
        0,
        neg(
          div(
            mul(
              w,
              pow(a, 2),
              add(sub(mul(6, pow(L, 2)), mul(8, a, L)), mul(3, pow(a, 2))),
            ),
            mul(12, pow(L, 2)),
          ),
        ),
      ),
      supportMoment(
        1,
        neg(div(mul(w, pow(a, 3), sub(mul(4, L), mul(3, a))), mul(12, pow(L, 2)))),
      ),
      greatestMoment(add(M(0), div(pow(R(0), 2), mul(2, w)))),
    ],
    source: sources.fixedEnds,
  },
  {
    title:
      'beam fixed at both ends, load rising from nothing at one end to its greatest at the other',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && isTriangle(view, stretch, 0, view.length)
        ? { w: intensity(view, stretch.end), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(3, w, L), 20)),
      reaction(1, div(mul(7, w, L), 20)),
      supportMoment(0, neg(div(mul(w, pow(L, 2)), 30))),
      supportMoment(1, neg(div(mul(w, pow(L, 2)), 20))),
      greatestMoment(div(mul(sub(mul(3, root(30)), 10), w, pow(L, 2)), 300)),
      deflectionAt(div(L, 2), neg(overEI(mul(w, pow(L, 4)), 768))),
    ],
    source: sources.fixedEnds,
  },
  {
    title: 'beam fixed at both ends, load rising from nothing at both ends to midspan',
    scheme,
    fits: (view) => {
      const [rising, falling] = onlyStretches(view, 2) ?? [];
      const middle = view.length / 2;
      return rising !== undefined &&
        falling !== undefined &&
        isTriangle(view, rising, 0, middle) &&
        isTriangle(view, falling, view.length, middle) &&
        same(rising.end.si, falling.start.si, rising.end.si)
        ? { w: intensity(view, rising.end), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction([0, 1], div(mul(w, L), 4)),
      supportMoment([0, 1], neg(div(mul(5, w, pow(L, 2)), 96))),
      greatestMoment(div(mul(w, pow(L, 2)), 32)),
      leastDeflection(neg(overEI(mul(7, w, pow(L, 4)), 3840))),
    ],
    source: sources.fixedEnds,
  },
];
