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
  add,
  div,
  L,
  a,
  mul,
  overEI,
  pow,
  root,
  sub,
  w,
  w1,
  w2,
  neg,
} from './letters.ts';
import {
  covers,
  intensity,
  isTriangle,
  isUniform,
  length,
  onlyStretches,
  same,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'simple simple';

/** Simple beams under loads that vary along them. */
export const simpleVaryingCases: readonly HandbookCase[] = [
  {
    title:
      'simple beam, load rising from nothing at one support to its greatest at the other',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && isTriangle(view, stretch, 0, view.length)
        ? { w: intensity(view, stretch.end), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(w, L), 6)),
      reaction(1, div(mul(w, L), 3)),
      greatestMoment(div(mul(w, pow(L, 2)), mul(9, root(3)))),
      greatestShear(div(mul(w, L), 3)),
      // The elastic curve of the table, − w x (3 x⁴ − 10 L² x² + 7 L⁴) / 360 E I L, at midspan.
      deflectionAt(div(L, 2), neg(overEI(mul(5, w, pow(L, 4)), 768))),
    ],
    source: sources.openTables,
  },
  {
    title: 'simple beam, load rising from nothing at both supports to midspan',
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
      greatestMoment(div(mul(w, pow(L, 2)), 12)),
      leastDeflection(neg(overEI(mul(w, pow(L, 4)), 120))),
    ],
    source: sources.aisc,
  },
  {
    title: 'simple beam, load falling from both supports to nothing at midspan',
    scheme,
    fits: (view) => {
      const [falling, rising] = onlyStretches(view, 2) ?? [];
      const middle = view.length / 2;
      return rising !== undefined &&
        falling !== undefined &&
        isTriangle(view, falling, middle, 0) &&
        isTriangle(view, rising, middle, view.length) &&
        same(rising.end.si, falling.start.si, rising.end.si)
        ? { w: intensity(view, rising.end), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction([0, 1], div(mul(w, L), 4)),
      greatestMoment(div(mul(w, pow(L, 2)), 24)),
      leastDeflection(neg(overEI(mul(3, w, pow(L, 4)), 640))),
    ],
    source: sources.roark,
  },
  {
    title: 'simple beam, load rising alike from both supports to a uniform one between',
    scheme,
    fits: (view) => {
      const [rising, level, falling] = onlyStretches(view, 3) ?? [];
      return rising !== undefined &&
        level !== undefined &&
        falling !== undefined &&
        isUniform(level) &&
        isTriangle(view, rising, 0, level.from) &&
        isTriangle(view, falling, view.length, level.to) &&
        same(level.from, view.length - level.to, view.length) &&
        same(rising.end.si, level.start.si, level.start.si) &&
        same(falling.start.si, level.start.si, level.start.si)
        ? {
            w: intensity(view, level.start),
            L: length(view.length),
            a: length(level.from),
          }
        : undefined;
    },
    formulas: [
      reaction([0, 1], div(mul(w, sub(L, a)), 2)),
      greatestMoment(div(mul(w, sub(mul(3, pow(L, 2)), mul(4, pow(a, 2)))), 24)),
      leastDeflection(
        neg(overEI(mul(w, pow(sub(mul(5, pow(L, 2)), mul(4, pow(a, 2))), 2)), 1920)),
      ),
    ],
    source: sources.roark,
  },
  {
    title: 'simple beam, trapezoidal load over the whole span',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && covers(view, stretch, 0, view.length)
        ? {
            w1: intensity(view, stretch.start),
            w2: intensity(view, stretch.end),
            L: length(view.length),
          }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(add(mul(2, w1), w2), L), 6)),
      reaction(1, div(mul(add(w1, mul(2, w2)), L), 6)),
      momentAt(div(L, 2), div(mul(add(w1, w2), pow(L, 2)), 16)),
      deflectionAt(div(L, 2), neg(overEI(mul(5, add(w1, w2), pow(L, 4)), 768))),
    ],
    source: sources.roark,
  },
];
