import {
  leastDeflection,
  reaction,
  supportMoment,
  type HandbookCase,
} from './handbook-case.ts';
import { L, a, add, b, div, mul, neg, overEI, pow, sub, w, w1, w2 } from './letters.ts';
import {
  covers,
  intensity,
  isTriangle,
  isUniform,
  length,
  onlyStretches,
  onlyUniform,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'fixed free';

/** Cantilevers under distributed loads: the fixed end first, then the tip. */
export const cantileverSpreadCases: readonly HandbookCase[] = [
  {
    title: 'cantilever, uniform load over the whole length',
    scheme,
    fits: (view) => {
      const load = onlyUniform(view, 0, view.length);
      return load && { w: load, L: length(view.length) };
    },
    formulas: [
      reaction(0, mul(w, L)),
      supportMoment(0, neg(div(mul(w, pow(L, 2)), 2))),
      leastDeflection(neg(overEI(mul(w, pow(L, 4)), 8))),
    ],
    source: sources.openTables,
  },
  {
    title: 'cantilever, uniform load beginning at the fixed end',
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
      reaction(0, mul(w, a)),
      supportMoment(0, neg(div(mul(w, pow(a, 2)), 2))),
      leastDeflection(neg(overEI(mul(w, pow(a, 3), sub(mul(4, L), a)), 24))),
    ],
    source: sources.roark,
  },
  {
    title: 'cantilever, uniform load ending at the tip',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined &&
        isUniform(stretch) &&
        covers(view, stretch, stretch.from, view.length)
        ? {
            w: intensity(view, stretch.start),
            L: length(view.length),
            a: length(stretch.from),
            b: length(view.length - stretch.from),
          }
        : undefined;
    },
    formulas: [
      reaction(0, mul(w, b)),
      supportMoment(0, neg(div(mul(w, b, add(L, a)), 2))),
      leastDeflection(
        neg(
          overEI(
            mul(w, add(sub(mul(3, pow(L, 4)), mul(4, pow(a, 3), L)), pow(a, 4))),
            24,
          ),
        ),
      ),
    ],
    source: sources.roark,
  },
  {
    title: 'cantilever, uniform load over part of the length',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && isUniform(stretch)
        ? {
            w: intensity(view, stretch.start),
            L: length(view.length),
            a: length(stretch.from),
            b: length(stretch.to),
          }
        : undefined;
    },
    formulas: [
      reaction(0, mul(w, sub(b, a))),
      supportMoment(0, neg(div(mul(w, sub(pow(b, 2), pow(a, 2))), 2))),
      leastDeflection(
        neg(
          overEI(
            mul(
              w,
              sub(mul(pow(b, 3), sub(mul(4, L), b)), mul(pow(a, 3), sub(mul(4, L), a))),
            ),
            24,
          ),
        ),
      ),
    ],
    source: sources.roark,
  },
  {
    title:
      'cantilever, load falling from its greatest at the fixed end to nothing at the tip',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && isTriangle(view, stretch, view.length, 0)
        ? { w: intensity(view, stretch.start), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(w, L), 2)),
      supportMoment(0, neg(div(mul(w, pow(L, 2)), 6))),
      leastDeflection(neg(overEI(mul(w, pow(L, 4)), 30))),
    ],
    source: sources.openTables,
  },
  {
    title:
      'cantilever, load rising from nothing at the fixed end to its greatest at the tip',
    scheme,
    fits: (view) => {
      const [stretch] = onlyStretches(view, 1) ?? [];
      return stretch !== undefined && isTriangle(view, stretch, 0, view.length)
        ? { w: intensity(view, stretch.end), L: length(view.length) }
        : undefined;
    },
    formulas: [
      reaction(0, div(mul(w, L), 2)),
      supportMoment(0, neg(div(mul(w, pow(L, 2)), 3))),
      leastDeflection(neg(overEI(mul(11, w, pow(L, 4)), 120))),
    ],
    source: sources.roark,
  },
  {
    title: 'cantilever, trapezoidal load over the whole length',
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
      reaction(0, div(mul(add(w1, w2), L), 2)),
      supportMoment(0, neg(div(mul(add(w1, mul(2, w2)), pow(L, 2)), 6))),
      leastDeflection(neg(overEI(mul(add(mul(4, w1), mul(11, w2)), pow(L, 4)), 120))),
    ],
    source: sources.roark,
  },
];
