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
  R,
  a,
  b,
  c,
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
  onlyUniform,
  same,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'simple simple';

/** Simple beams under distributed loads. */
export const simpleSpreadCases: readonly HandbookCase[] = [
  {
    title: 'simple beam, uniform load over the whole span',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      return load && { w: load, L: length(view.length) };
    },
    formulas: [
      reaction([0, 1], div(mul(w, L), 2)),
      greatestMoment(div(mul(w, pow(L, 2)), 8)),
      greatestShear(div(mul(w, L), 2)),
      leastDeflection(neg(overEI(mul(5, w, pow(L, 4)), 384))),
    ],
    source: sources.openTables,
  },
  {
    title: 'simple beam, uniform load over one half of the span',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length / 2);
      return load && { w: load, L: length(view.length) };
    },
    formulas: [
      reaction(0, div(mul(3, w, L), 8)),
      reaction(1, div(mul(w, L), 8)),
      greatestMoment(div(mul(9, w, pow(L, 2)), 128)),
      greatestShear(div(mul(3, w, L), 8)),
      deflectionAt(div(L, 2), neg(overEI(mul(5, w, pow(L, 4)), 768))),
    ],
    source: sources.openTables,
  },
  {
    title: 'simple beam, uniform load beginning at one support',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      if (stretch === undefined || !isUniform(stretch)) return undefined;
      if (!covers(view, stretch, 0, stretch.to)) return undefined;
      return {
        w: intensity(view, stretch.start),
        L: length(view.length),
        a: length(stretch.to),
      };
    },
    formulas: [
      reaction(0, div(mul(w, a, sub(mul(2, L), a)), mul(2, L))),
      reaction(1, div(mul(w, pow(a, 2)), mul(2, L))),
      greatestMoment(div(pow(R(0), 2), mul(2, w))),
    ],
    source: sources.aisc,
  },
  {
    title: 'simple beam, uniform load over the middle of the span',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      if (stretch === undefined || !isUniform(stretch)) return undefined;
      if (!same(stretch.from, view.length - stretch.to, view.length)) return undefined;
      return {
        w: intensity(view, stretch.start),
        L: length(view.length),
        b: length(stretch.to - stretch.from),
      };
    },
    formulas: [
      reaction([0, 1], div(mul(w, b), 2)),
      greatestMoment(div(mul(w, b, sub(mul(2, L), b)), 8)),
      leastDeflection(
        neg(
          overEI(
            mul(w, b, add(sub(mul(8, pow(L, 3)), mul(4, L, pow(b, 2))), pow(b, 3))),
            384,
          ),
        ),
      ),
    ],
    source: sources.roark,
  },
  {
    title: 'simple beam, uniform load over part of the span',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      if (stretch === undefined || !isUniform(stretch)) return undefined;
      return {
        w: intensity(view, stretch.start),
        L: length(view.length),
        a: length(stretch.from),
        b: length(stretch.to - stretch.from),
        c: length(view.length - stretch.to),
      };
    },
    formulas: [
      reaction(0, div(mul(w, b, add(mul(2, c), b)), mul(2, L))),
      reaction(1, div(mul(w, b, add(mul(2, a), b)), mul(2, L))),
      greatestMoment(mul(R(0), add(a, div(R(0), mul(2, w))))),
    ],
    source: sources.aisc,
  },
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
