import type { Diagram } from '../figure-spec.ts';
import { skyline } from '../geometry/skyline.ts';
import { brokenUpright } from '../ink/broken-line.ts';
import { together } from '../ink/part.ts';
import type { Part } from '../ink/part.ts';
import type { Strip } from '../strip.ts';
import type { PictureSetting } from '../pictures/lay-picture.ts';

/** A diagram as it stands under the member. */
export interface PlacedDiagram {
  readonly diagram: Diagram;
  /** Its strip, already moved down. */
  readonly strip: Strip;
  /** Its base line, y. */
  readonly base: number;
}

/** Between what is drawn under the member and the lines, points. */
const startGap = 2.5;

/**
 * Thin dotted lines from the member down to the last diagram that has a key value at a station,
 * so that the eye keeps the stations; they make way for labels.
 */
export function dropLines(
  member: Strip,
  placed: readonly PlacedDiagram[],
  { stations, theme }: PictureSetting,
): Part {
  const drawn = [...member.labels, ...member.obstacles];
  const gaps = placed.flatMap(({ strip }) => strip.labels);
  const all = placed.flatMap(({ diagram, base }) =>
    diagram.keyValues.map(({ x }) => ({ x: stations.xOf(x), base })),
  );
  const xs = [...new Set(all.map(({ x }) => x))].sort((a, b) => a - b);
  const lines = xs.map((x) => {
    const span = { left: x - 1, right: x + 1 };
    const top = skyline(drawn, span, { outward: 'down', none: 0 }) + startGap;
    const bottom = Math.max(
      ...all.filter((each) => each.x === x).map(({ base }) => base),
    );
    return brokenUpright(
      x,
      { top, bottom },
      {
        gaps,
        stroke: { width: 0.35, colour: theme.colour.muted, dash: [1.2, 1.8] },
      },
    );
  });
  return together(...lines);
}
