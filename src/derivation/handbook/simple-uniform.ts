import {
  deflectionAt,
  greatestMoment,
  greatestShear,
  leastDeflection,
  reaction,
  type HandbookCase,
} from './handbook-case.ts';
import { add, div, L, R, a, b, c, mul, overEI, pow, sub, w, neg } from './letters.ts';
import {
  covers,
  intensity,
  isUniform,
  length,
  onlyStretches,
  onlyUniform,
  same,
} from './read-view.ts';
import { sources } from './sources.ts';

const scheme = 'simple simple';

/** Simple beams under uniform loads. */
export const simpleUniformCases: readonly HandbookCase[] = [
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
];
