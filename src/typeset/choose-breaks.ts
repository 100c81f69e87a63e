import type { SegmentStart } from './break-points.ts';

/** What the choice of breaks asks of a segment. Lengths in one unit throughout. */
export interface SegmentMeasure {
  /** Width of the space before it, which falls away at the head of a line. */
  readonly gap: number;
  readonly width: number;
  readonly startsWith: SegmentStart;
  readonly level: number;
}

/** Where lines begin and how wide they may be. */
export interface LineRoom {
  /** The right edge that no line may pass. */
  readonly width: number;
  /** Where the first line begins. */
  readonly first: number;
  /** Where a further line begins that a relation begins, or anything else. */
  readonly atRelation: number;
  readonly atOther: number;
}

/** One line: the segments from `from` up to, not including, `to`, and where it begins. */
export interface ChosenLine {
  readonly from: number;
  readonly to: number;
  readonly x: number;
}

/*
 * The costs, in order of weight. A line that passes the edge is worst, by how much it does;
 * a break within brackets is worse than any number of lines; a break between factors is worse
 * than one line more; a line is worse than any raggedness; a break between terms is a little
 * worse than one at a relation (TeX: \binoppenalty 700, \relpenalty 500).
 */
const overfull = 1e9;
const perLevel = 1e5;
const perLine = 100;
const perRaggedness = 20;
const perStart: Readonly<Record<SegmentStart, number>> = {
  relation: 0,
  term: 4,
  factor: 150,
  other: 4,
};

/**
 * Chooses where to break, for the least cost over all lines together rather than line by line
 * (after Knuth and Plass, Software: Practice and Experience 11 (1981), 1119). The last line may
 * be as short as it likes.
 */
export function chooseBreaks(
  segments: readonly SegmentMeasure[],
  room: LineRoom,
): readonly ChosenLine[] {
  const edges = edgesOf(segments);
  const best: Choice[] = [{ cost: 0, from: 0 }];
  for (let to = 1; to <= segments.length; to += 1) {
    let choice: Choice = { cost: Infinity, from: 0 };
    for (let from = to - 1; from >= 0; from -= 1) {
      const width = widthOf(segments, edges, { from, to });
      const isLast = to === segments.length;
      const own = costOfLine(segments[from], room, {
        width,
        isFirst: from === 0,
        isLast,
      });
      const cost = (best[from]?.cost ?? Infinity) + own;
      if (cost < choice.cost) choice = { cost, from };
    }
    best[to] = choice;
  }
  const lines: ChosenLine[] = [];
  for (let to = segments.length; to > 0;) {
    const from = best[to]?.from ?? 0;
    lines.unshift({ from, to, x: startOf(segments[from], room, from === 0) });
    to = from;
  }
  return lines;
}

interface Choice {
  readonly cost: number;
  /** Where the last line begins. */
  readonly from: number;
}

/** A line may pass the edge by this share of the room, which is rounding. */
const tolerance = 1e-9;

interface CandidateLine {
  readonly width: number;
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

function costOfLine(
  head: SegmentMeasure | undefined,
  room: LineRoom,
  { width, isFirst, isLast }: CandidateLine,
): number {
  const free = (room.width - startOf(head, room, isFirst) - width) / room.width;
  const excess = free < -tolerance ? 1 - free : 0;
  const unused = isLast ? 0 : Math.max(0, free);
  const raggedness = unused ** 2 * perRaggedness;
  const breaking = isFirst || head === undefined ? 0 : costOfBreak(head);
  return excess * overfull + breaking + perLine + raggedness;
}

function costOfBreak({ level, startsWith }: SegmentMeasure): number {
  return level * perLevel + perStart[startsWith];
}

function startOf(
  head: SegmentMeasure | undefined,
  room: LineRoom,
  isFirst: boolean,
): number {
  if (isFirst) return room.first;
  return head?.startsWith === 'relation' ? room.atRelation : room.atOther;
}

/** Where each segment ends if nothing is broken; the first number is the beginning, 0. */
function edgesOf(segments: readonly SegmentMeasure[]): readonly number[] {
  const edges = [0];
  let at = 0;
  for (const { gap, width } of segments) {
    at += gap + width;
    edges.push(at);
  }
  return edges;
}

/** Width of a line; the space before its first segment falls away, save on the first line. */
function widthOf(
  segments: readonly SegmentMeasure[],
  edges: readonly number[],
  { from, to }: { readonly from: number; readonly to: number },
): number {
  const gap = from === 0 ? 0 : (segments[from]?.gap ?? 0);
  return (edges[to] ?? 0) - (edges[from] ?? 0) - gap;
}
