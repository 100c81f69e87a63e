import {
  greatestMoment,
  leastDeflection,
  reaction,
  supportMoment,
  type HandbookCase,
} from './handbook-case.ts';
import { L, R, a, add, div, mul, neg, overEI, pow, root, sub, w } from './letters.ts';
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

const scheme = 'fixed simple';

/** Beams fixed at one end and resting on a prop at the other, under distributed loads: the fixed end first. */
export const proppedSpreadCases: readonly HandbookCase[] = [
  {
    title: 'propped cantilever, uniform load over the whole span',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      return load && { w: load, L: length(view.length) };
    },
    formulas: [
      reaction(0, div(mul(5, w, L), 8)),
      reaction(1, div(mul(3, w, L), 8)),
      supportMoment(0, neg(div(mul(w, pow(L, 2)), 8))),
      greatestMoment(div(mul(9, w, pow(L, 2)), 128)),
      // The exact form of what tables print as w L⁴ / 185 E I, at (15 − √33) L / 16 from the fixed end.
      leastDeflection(
        neg(overEI(mul(add(39, mul(55, root(33))), w, pow(L, 4)), 65536)),
      ),
    ],
    source: sources.hicks(10, 29),
  },
  {
    title: 'propped cantilever, uniform load beginning at the fixed end',
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
      reaction(1, div(mul(w, pow(a, 3), sub(mul(4, L), a)), mul(8, pow(L, 3)))),
      reaction(0, sub(mul(w, a), R(1))),
      supportMoment(
        0,
        neg(div(mul(w, pow(a, 2), pow(sub(mul(2, L), a), 2)), mul(8, pow(L, 2)))),
      ),
    ],
    source: sources.roark,
  },
  {
    title:
      'propped cantilever, load falling from its greatest at the fixed end to nothing at the prop',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && isTriangle(view, stretch, view.length, 0)
        ? { w: intensity(view, stretch.start), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(2, w, L), 5)),
      reaction(1, div(mul(w, L), 10)),
      supportMoment(0, neg(div(mul(w, pow(L, 2)), 15))),
      greatestMoment(div(mul(w, pow(L, 2)), mul(15, root(5)))),
      leastDeflection(neg(overEI(mul(2, w, pow(L, 4)), 375, root(5)))),
    ],
    source: sources.roark,
  },
  {
    title:
      'propped cantilever, load rising from nothing at the fixed end to its greatest at the prop',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && isTriangle(view, stretch, 0, view.length)
        ? { w: intensity(view, stretch.end), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(9, w, L), 40)),
      reaction(1, div(mul(11, w, L), 40)),
      supportMoment(0, neg(div(mul(7, w, pow(L, 2)), 120))),
      greatestMoment(div(mul(sub(mul(27, root(5)), 35), w, pow(L, 2)), 600)),
    ],
    source: sources.roark,
  },
  {
    title: 'propped cantilever, load rising from nothing at both ends to midspan',
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
      reaction(0, div(mul(21, w, L), 64)),
      reaction(1, div(mul(11, w, L), 64)),
      supportMoment(0, neg(div(mul(5, w, pow(L, 2)), 64))),
    ],
    source: sources.fixedEnds,
  },
];
