import type { CaseView } from './case-view.ts';
import {
  deflectionAt,
  greatestMoment,
  leastDeflection,
  momentAt,
  reaction,
  supportMoment,
  type Given,
  type HandbookCase,
} from './handbook-case.ts';
import { L, P, div, mul, neg, overEI, pow, w } from './letters.ts';
import {
  areEqual,
  covers,
  equalPoints,
  equalSpan,
  intensity,
  isUniform,
  length,
  onlyStretches,
  onlyUniform,
} from './read-view.ts';
import { sources } from './sources.ts';

const three = 'simple simple simple simple';
const four = 'simple simple simple simple simple';

/** One uniform load from the n-th support to another, spans equal. */
function uniformBetween(view: CaseView, from: number, to: number): Given | undefined {
  const span = equalSpan(view);
  if (span === undefined) return undefined;
  const load = onlyUniform(view, from * span, to * span);
  return load && { w: load, L: length(span) };
}

/** Equal forces at so many spans from the first support, spans equal. */
function pointsAt(view: CaseView, ...places: readonly number[]): Given | undefined {
  const span = equalSpan(view) ?? NaN;
  const load = equalPoints(view, ...places.map((place) => place * span));
  return load && { P: load, L: length(span) };
}

/** Equal uniform loads on both end spans of three. */
function uniformOnEnds(view: CaseView): Given | undefined {
  const span = equalSpan(view);
  const [first, last] = onlyStretches(view, 2) ?? [];
  return span !== undefined &&
    first !== undefined &&
    last !== undefined &&
    isUniform(first) &&
    isUniform(last) &&
    covers(view, first, 0, span) &&
    covers(view, last, 2 * span, 3 * span) &&
    areEqual({ at: 0, amount: first.start }, { at: 0, amount: last.start })
    ? { w: intensity(view, first.start), L: length(span) }
    : undefined;
}

const wL = mul(w, L);
const wLL = mul(w, pow(L, 2));

/** Continuous beams of three and four equal spans on simple supports. */
export const moreSpanCases: readonly HandbookCase[] = [
  {
    title: 'three equal spans, uniform load on all',
    scheme: three,
    fits: (view) => uniformBetween(view, 0, 3),
    formulas: [
      reaction([0, 3], div(mul(2, wL), 5)),
      reaction([1, 2], div(mul(11, wL), 10)),
      supportMoment([1, 2], neg(div(wLL, 10))),
      greatestMoment(div(mul(2, wLL), 25)),
      momentAt(div(mul(3, L), 2), div(wLL, 40)),
      deflectionAt(div(L, 2), neg(overEI(mul(13, w, pow(L, 4)), 1920))),
    ],
    source: sources.hicksContinuous,
  },
  {
    title: 'three equal spans, uniform load on the middle one',
    scheme: three,
    fits: (view) => uniformBetween(view, 1, 2),
    formulas: [
      reaction([0, 3], neg(div(wL, 20))),
      reaction([1, 2], div(mul(11, wL), 20)),
      supportMoment([1, 2], neg(div(wLL, 20))),
      greatestMoment(div(mul(3, wLL), 40)),
      leastDeflection(neg(overEI(mul(13, w, pow(L, 4)), 1920))),
    ],
    source: sources.continuous,
  },
  {
    title: 'three equal spans, uniform load on both end spans',
    scheme: three,
    fits: uniformOnEnds,
    formulas: [
      reaction([0, 3], div(mul(9, wL), 20)),
      reaction([1, 2], div(mul(11, wL), 20)),
      supportMoment([1, 2], neg(div(wLL, 20))),
      greatestMoment(div(mul(81, wLL), 800)),
      deflectionAt(div(L, 2), neg(overEI(mul(19, w, pow(L, 4)), 1920))),
    ],
    source: sources.continuous,
  },
  {
    title: 'three equal spans, uniform load on the first two',
    scheme: three,
    fits: (view) => uniformBetween(view, 0, 2),
    formulas: [
      reaction(0, div(mul(23, wL), 60)),
      reaction(1, div(mul(6, wL), 5)),
      reaction(2, div(mul(9, wL), 20)),
      reaction(3, neg(div(wL, 30))),
      supportMoment(1, neg(div(mul(7, wLL), 60))),
      supportMoment(2, neg(div(wLL, 30))),
      greatestMoment(div(mul(529, wLL), 7200)),
    ],
    source: sources.continuous,
  },
  {
    title: 'three equal spans, uniform load on one end span',
    scheme: three,
    fits: (view) => uniformBetween(view, 0, 1),
    formulas: [
      reaction(0, div(mul(13, wL), 30)),
      reaction(1, div(mul(13, wL), 20)),
      reaction(2, neg(div(wL, 10))),
      reaction(3, div(wL, 60)),
      supportMoment(1, neg(div(wLL, 15))),
      supportMoment(2, div(wLL, 60)),
      greatestMoment(div(mul(169, wLL), 1800)),
    ],
    source: sources.continuous,
  },
  {
    title: 'three equal spans, equal point loads at all midspans',
    scheme: three,
    fits: (view) => pointsAt(view, 0.5, 1.5, 2.5),
    formulas: [
      reaction([0, 3], div(mul(7, P), 20)),
      reaction([1, 2], div(mul(23, P), 20)),
      supportMoment([1, 2], neg(div(mul(3, P, L), 20))),
      greatestMoment(div(mul(7, P, L), 40)),
      momentAt(div(mul(3, L), 2), div(mul(P, L), 10)),
    ],
    source: sources.continuous,
  },
  {
    title: 'three equal spans, equal point loads at the midspans of the end spans',
    scheme: three,
    fits: (view) => pointsAt(view, 0.5, 2.5),
    formulas: [
      reaction([0, 3], div(mul(17, P), 40)),
      reaction([1, 2], div(mul(23, P), 40)),
      supportMoment([1, 2], neg(div(mul(3, P, L), 40))),
      greatestMoment(div(mul(17, P, L), 80)),
    ],
    source: sources.continuous,
  },
  {
    title: 'three equal spans, point load at the midspan of the middle one',
    scheme: three,
    fits: (view) => pointsAt(view, 1.5),
    formulas: [
      reaction([0, 3], neg(div(mul(3, P), 40))),
      reaction([1, 2], div(mul(23, P), 40)),
      supportMoment([1, 2], neg(div(mul(3, P, L), 40))),
      greatestMoment(div(mul(7, P, L), 40)),
    ],
    source: sources.continuous,
  },
  {
    title: 'three equal spans, equal point loads at all third points',
    scheme: three,
    fits: (view) => pointsAt(view, ...[1, 2, 4, 5, 7, 8].map((n) => n / 3)),
    formulas: [
      reaction([0, 3], div(mul(11, P), 15)),
      reaction([1, 2], div(mul(34, P), 15)),
      supportMoment([1, 2], neg(div(mul(4, P, L), 15))),
      greatestMoment(div(mul(11, P, L), 45)),
    ],
    source: sources.continuous,
  },
  {
    title: 'four equal spans, uniform load on all',
    scheme: four,
    fits: (view) => uniformBetween(view, 0, 4),
    formulas: [
      reaction([0, 4], div(mul(11, wL), 28)),
      reaction([1, 3], div(mul(8, wL), 7)),
      reaction(2, div(mul(13, wL), 14)),
      supportMoment([1, 3], neg(div(mul(3, wLL), 28))),
      supportMoment(2, neg(div(wLL, 14))),
      greatestMoment(div(mul(121, wLL), 1568)),
    ],
    source: sources.hicksContinuous,
  },
];
