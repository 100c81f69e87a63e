import type { PlainBeam, PlainLoad } from './by-singularities.ts';

/** Random sizes for a beam: a span that thirds, quarters and eighths divide, loads, and shares of it. */
export interface Draw {
  /** A round length; halves, thirds and quarters of it have few decimals. */
  readonly span: number;
  readonly other: number;
  readonly load: number;
  readonly load2: number;
  /** From 0.1 to 0.45. */
  readonly share: number;
  /** From 0.1 to 0.45. */
  readonly share2: number;
  readonly EI: number;
}

const point = (at: number, size: number): PlainLoad => ({ kind: 'point', at, size });
const couple = (at: number, size: number): PlainLoad => ({ kind: 'couple', at, size });
const spread = (
  from: number,
  to: number,
  start: number,
  end: number = start,
): PlainLoad => ({
  kind: 'spread',
  from,
  to,
  start,
  end,
});

type Held = PlainBeam['supports'];
const simple = (...at: number[]): Held =>
  at.map((one) => ({ at: one, holds: 'simple' }));
const fixed = (at: number) => ({ at, holds: 'fixed' }) as const;

type Make = (draw: Draw) => Omit<PlainBeam, 'EI'>;
type Loading = (L: number, draw: Draw) => readonly PlainLoad[];

const on =
  (supports: (L: number) => Held, loads: Loading): Make =>
  (draw) => ({
    length: draw.span,
    supports: supports(draw.span),
    loads: loads(draw.span, draw),
  });
const onSimple = (loads: Loading) => on((L) => simple(0, L), loads);
const onCantilever = (loads: Loading) => on(() => [fixed(0)], loads);
const onPropped = (loads: Loading) => on((L) => [fixed(0), ...simple(L)], loads);
const onFixed = (loads: Loading) => on((L) => [fixed(0), fixed(L)], loads);
const onSpans =
  (count: number, loads: Loading): Make =>
  (draw) => ({
    length: count * draw.span,
    supports: simple(...Array.from({ length: count + 1 }, (_, i) => i * draw.span)),
    loads: loads(draw.span, draw),
  });
const over =
  (loads: (L: number, a: number, draw: Draw) => readonly PlainLoad[]): Make =>
  (draw) => {
    const a = draw.share * draw.span;
    return {
      length: draw.span + a,
      supports: simple(0, draw.span),
      loads: loads(draw.span, a, draw),
    };
  };
const overBoth =
  (
    alike: boolean,
    loads: (L: number, a: number, b: number, draw: Draw) => readonly PlainLoad[],
  ): Make =>
  (draw) => {
    const a = draw.share * draw.span;
    const b = alike ? a : (draw.share + draw.share2 / 2) * draw.span;
    return {
      length: a + draw.span + b,
      supports: simple(a, a + draw.span),
      loads: loads(draw.span, a, b, draw),
    };
  };
const unequal =
  (
    loads: (L1: number, L2: number, draw: Draw) => readonly PlainLoad[],
    isLonger: boolean,
  ): Make =>
  (draw) => {
    const other = isLonger ? draw.span * (1 - draw.share) : draw.other;
    return {
      length: draw.span + other,
      supports: simple(0, draw.span, draw.span + other),
      loads: loads(draw.span, other, draw),
    };
  };
const settled =
  (supports: (L: number) => Held, index: number): Make =>
  (draw) => ({
    length: Math.max(...supports(draw.span).map(({ at }) => at)),
    supports: supports(draw.span).map((one, i) =>
      i === index ? { ...one, settlement: 0.001 * draw.load } : one,
    ),
    loads: [],
  });

const peak: Loading = (L, { load }) => [
  spread(0, L / 2, 0, load),
  spread(L / 2, L, load, 0),
];
const points =
  (...shares: number[]): Loading =>
  (L, { load }) =>
    shares.map((share) => point(share * L, load));

/**
 * A beam of every handbook case, drawn as the tables draw it and from nothing but the words of its title:
 * the first end of a table's figure on the left, loads down, couples counterclockwise.
 */
export const handbookBeams: Readonly<Record<string, Make>> = {
  'simple beam, uniform load over the whole span': onSimple((L, { load }) => [
    spread(0, L, load),
  ]),
  'simple beam, uniform load over one half of the span': onSimple((L, { load }) => [
    spread(0, L / 2, load),
  ]),
  'simple beam, uniform load beginning at one support': onSimple(
    (L, { load, share }) => [spread(0, share * L, load)],
  ),
  'simple beam, uniform load over the middle of the span': onSimple(
    (L, { load, share }) => [spread(share * L, (1 - share) * L, load)],
  ),
  'simple beam, uniform load over part of the span': onSimple(
    (L, { load, share, share2 }) => [
      spread(0.9 * share * L, (0.9 * share + share2) * L, load),
    ],
  ),
  'simple beam, load rising from nothing at one support to its greatest at the other':
    onSimple((L, { load }) => [spread(0, L, 0, load)]),
  'simple beam, load rising from nothing at both supports to midspan': onSimple(peak),
  'simple beam, load falling from both supports to nothing at midspan': onSimple(
    (L, { load }) => [spread(0, L / 2, load, 0), spread(L / 2, L, 0, load)],
  ),
  'simple beam, load rising alike from both supports to a uniform one between':
    onSimple((L, { load, share }) => [
      spread(0, share * L, 0, load),
      spread(share * L, (1 - share) * L, load),
      spread((1 - share) * L, L, load, 0),
    ]),
  'simple beam, trapezoidal load over the whole span': onSimple(
    (L, { load, load2 }) => [spread(0, L, load, load2)],
  ),
  'simple beam, point load at midspan': onSimple(points(1 / 2)),
  'simple beam, point load at any place': onSimple((L, { load, share }) => [
    point((1 - share) * L, load),
  ]),
  'simple beam, two equal point loads at the third points': onSimple(
    points(1 / 3, 2 / 3),
  ),
  'simple beam, two equal point loads placed alike from both supports': onSimple(
    (L, { load, share }) => [point(share * L, load), point((1 - share) * L, load)],
  ),
  'simple beam, three equal point loads at the quarter points': onSimple(
    points(1 / 4, 2 / 4, 3 / 4),
  ),
  'simple beam, two equal point loads at any places': onSimple(
    (L, { load, share, share2 }) => [
      point((share + share2 / 2) * L, load),
      point((1 - share) * L, load),
    ],
  ),
  'simple beam, two point loads': onSimple((L, { load, load2, share, share2 }) => [
    point(share * L, load),
    point((1 - share2) * L, load2),
  ]),
  'simple beam, couple at one end': onSimple((L, { load }) => [couple(L, load)]),
  'simple beam, couple at any place': onSimple((L, { load, share }) => [
    couple(share * L, load),
  ]),
  'simple beam, equal and opposite couples at both ends': onSimple((L, { load }) => [
    couple(0, -load),
    couple(L, load),
  ]),
  'cantilever, uniform load over the whole length': onCantilever((L, { load }) => [
    spread(0, L, load),
  ]),
  'cantilever, uniform load beginning at the fixed end': onCantilever(
    (L, { load, share }) => [spread(0, share * L, load)],
  ),
  'cantilever, uniform load ending at the tip': onCantilever((L, { load, share }) => [
    spread(share * L, L, load),
  ]),
  'cantilever, uniform load over part of the length': onCantilever(
    (L, { load, share, share2 }) => [spread(share * L, (share + share2) * L, load)],
  ),
  'cantilever, point load at the tip': onCantilever(points(1)),
  'cantilever, point load at any place': onCantilever((L, { load, share }) => [
    point(share * L, load),
  ]),
  'cantilever, load falling from its greatest at the fixed end to nothing at the tip':
    onCantilever((L, { load }) => [spread(0, L, load, 0)]),
  'cantilever, load rising from nothing at the fixed end to its greatest at the tip':
    onCantilever((L, { load }) => [spread(0, L, 0, load)]),
  'cantilever, trapezoidal load over the whole length': onCantilever(
    (L, { load, load2 }) => [spread(0, L, load, load2)],
  ),
  'cantilever, couple at the tip': onCantilever((L, { load }) => [couple(L, load)]),
  'cantilever, couple at any place': onCantilever((L, { load, share }) => [
    couple(share * L, load),
  ]),
  'beam overhanging one support, uniform load all along': over((L, a, { load }) => [
    spread(0, L + a, load),
  ]),
  'beam overhanging one support, uniform load on the overhang': over(
    (L, a, { load }) => [spread(L, L + a, load)],
  ),
  'beam overhanging one support, point load at the end of the overhang': over(
    (L, a, { load }) => [point(L + a, load)],
  ),
  'beam overhanging one support, uniform load between the supports': over(
    (L, _, { load }) => [spread(0, L, load)],
  ),
  'beam overhanging one support, point load between the supports': over(
    (L, _, { load, share2 }) => [point(2 * share2 * L, load)],
  ),
  'beam overhanging both supports alike, uniform load all along': overBoth(
    true,
    (L, a, b, { load }) => [spread(0, a + L + b, load)],
  ),
  'beam overhanging both supports, uniform load all along': overBoth(
    false,
    (L, a, b, { load }) => [spread(0, a + L + b, load)],
  ),
  'beam overhanging both supports alike, equal point loads at both ends': overBoth(
    true,
    (L, a, b, { load }) => [point(0, load), point(a + L + b, load)],
  ),
  'propped cantilever, uniform load over the whole span': onPropped((L, { load }) => [
    spread(0, L, load),
  ]),
  'propped cantilever, point load at midspan': onPropped(points(1 / 2)),
  'propped cantilever, two equal point loads at the third points': onPropped(
    points(1 / 3, 2 / 3),
  ),
  'propped cantilever, point load nearer to the prop than 0.414 of the span': onPropped(
    (L, { load, share }) => [point((1 - 0.9 * share) * L, load)],
  ),
  'propped cantilever, point load farther from the prop than 0.414 of the span':
    onPropped((L, { load, share }) => [point(share * L, load)]),
  'propped cantilever, uniform load beginning at the fixed end': onPropped(
    (L, { load, share }) => [spread(0, 2 * share * L, load)],
  ),
  'propped cantilever, load falling from its greatest at the fixed end to nothing at the prop':
    onPropped((L, { load }) => [spread(0, L, load, 0)]),
  'propped cantilever, load rising from nothing at the fixed end to its greatest at the prop':
    onPropped((L, { load }) => [spread(0, L, 0, load)]),
  'propped cantilever, load rising from nothing at both ends to midspan':
    onPropped(peak),
  'propped cantilever, couple at the prop': onPropped((L, { load }) => [
    couple(L, load),
  ]),
  'propped cantilever, couple at any place': onPropped((L, { load, share }) => [
    couple(2 * share * L, load),
  ]),
  'propped cantilever, settlement of the prop': settled(
    (L) => [fixed(0), ...simple(L)],
    1,
  ),
  'propped cantilever, settlement of the fixed end without rotation': settled(
    (L) => [fixed(0), ...simple(L)],
    0,
  ),
  'beam fixed at both ends, uniform load over the whole span': onFixed(
    (L, { load }) => [spread(0, L, load)],
  ),
  'beam fixed at both ends, point load at midspan': onFixed(points(1 / 2)),
  'beam fixed at both ends, point load at any place': onFixed((L, { load, share }) => [
    point((1 - share) * L, load),
  ]),
  'beam fixed at both ends, two equal point loads placed alike from both ends': onFixed(
    (L, { load, share }) => [point(share * L, load), point((1 - share) * L, load)],
  ),
  'beam fixed at both ends, uniform load over one half of the span': onFixed(
    (L, { load }) => [spread(0, L / 2, load)],
  ),
  'beam fixed at both ends, uniform load beginning at one end': onFixed(
    (L, { load, share }) => [spread(0, 2.2 * share * L, load)],
  ),
  'beam fixed at both ends, load rising from nothing at one end to its greatest at the other':
    onFixed((L, { load }) => [spread(0, L, 0, load)]),
  'beam fixed at both ends, load rising from nothing at both ends to midspan':
    onFixed(peak),
  'beam fixed at both ends, couple at any place': onFixed((L, { load, share }) => [
    couple(2 * share * L, load),
  ]),
  'beam fixed at both ends, settlement of one end without rotation': settled(
    (L) => [fixed(0), fixed(L)],
    1,
  ),
  'two equal spans, uniform load on both': onSpans(2, (L, { load }) => [
    spread(0, 2 * L, load),
  ]),
  'two equal spans, uniform load on one': onSpans(2, (L, { load }) => [
    spread(0, L, load),
  ]),
  'two equal spans, equal point loads at both midspans': onSpans(2, points(0.5, 1.5)),
  'two equal spans, point load at the midspan of one': onSpans(2, points(0.5)),
  'two equal spans, point load at any place of one': onSpans(
    2,
    (L, { load, share }) => [point(2 * share * L, load)],
  ),
  'two equal spans, equal point loads at all third points': onSpans(
    2,
    points(1 / 3, 2 / 3, 4 / 3, 5 / 3),
  ),
  'two unequal spans, uniform load on both': unequal(
    (L1, L2, { load }) => [spread(0, L1 + L2, load)],
    true,
  ),
  'two unequal spans, uniform load on one': unequal(
    (L1, _, { load }) => [spread(0, L1, load)],
    false,
  ),
  'two equal spans, settlement of the middle support': settled(
    (L) => simple(0, L, 2 * L),
    1,
  ),
  'three equal spans, uniform load on all': onSpans(3, (L, { load }) => [
    spread(0, 3 * L, load),
  ]),
  'three equal spans, uniform load on the middle one': onSpans(3, (L, { load }) => [
    spread(L, 2 * L, load),
  ]),
  'three equal spans, uniform load on both end spans': onSpans(3, (L, { load }) => [
    spread(0, L, load),
    spread(2 * L, 3 * L, load),
  ]),
  'three equal spans, uniform load on the first two': onSpans(3, (L, { load }) => [
    spread(0, L, load),
    spread(L, 2 * L, load),
  ]),
  'three equal spans, uniform load on one end span': onSpans(3, (L, { load }) => [
    spread(0, L, load),
  ]),
  'three equal spans, equal point loads at all midspans': onSpans(
    3,
    points(0.5, 1.5, 2.5),
  ),
  'three equal spans, equal point loads at the midspans of the end spans': onSpans(
    3,
    points(0.5, 2.5),
  ),
  'three equal spans, point load at the midspan of the middle one': onSpans(
    3,
    points(1.5),
  ),
  'three equal spans, equal point loads at all third points': onSpans(
    3,
    points(...[1, 2, 4, 5, 7, 8].map((n) => n / 3)),
  ),
  'four equal spans, uniform load on all': onSpans(4, (L, { load }) => [
    spread(0, 4 * L, load),
  ]),
};

/** The same beam seen from its other end. */
export function mirroredBeam({ length, EI, supports, loads }: PlainBeam): PlainBeam {
  const turn = (at: number): number => length - at;
  return {
    length,
    EI,
    supports: supports.map((one) => ({ ...one, at: turn(one.at) })).reverse(),
    loads: loads.map((load) =>
      load.kind === 'spread'
        ? {
            ...load,
            from: turn(load.to),
            to: turn(load.from),
            start: load.end,
            end: load.start,
          }
        : {
            ...load,
            at: turn(load.at),
            size: load.kind === 'couple' ? -load.size : load.size,
          },
    ),
  };
}

/** The same beam with every load and settlement turned round. */
export function turnedBeam({ supports, loads, ...rest }: PlainBeam): PlainBeam {
  return {
    ...rest,
    supports: supports.map((one) =>
      one.settlement === undefined ? one : { ...one, settlement: -one.settlement },
    ),
    loads: loads.map((load) =>
      load.kind === 'spread'
        ? { ...load, start: -load.start, end: -load.end }
        : { ...load, size: -load.size },
    ),
  };
}
