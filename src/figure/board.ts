import type { Drawing, Mark } from '../drawing/index.ts';
import type { Box } from './geometry/box.ts';
import { overlaps } from './geometry/box.ts';
import type { Part } from './ink/part.ts';
import type { Strip } from './strip.ts';

/**
 * A band of a figure while it is being drawn: it remembers what is where, so that the next thing
 * can keep clear of it. Parts first, then labels; `strip` closes it.
 */
export interface Board {
  /** Draws a part. `touchable` parts (the member itself) may be touched by arrows, never by labels. */
  readonly draw: (part: Part, touchable?: 'touchable') => void;
  /** Sets a label into its box. */
  readonly write: (label: Drawing, box: Box) => void;
  /** True where a part would keep `gap` from every part drawn so far that may not be touched. */
  readonly hasRoomFor: (part: Part, gap?: number) => boolean;
  /** True where a label would keep its distance from everything drawn and written. */
  readonly isFree: (box: Box) => boolean;
  /** All that is drawn or written so far. */
  readonly taken: () => readonly Box[];
  /** The labels written so far. */
  readonly written: () => readonly Box[];
  readonly strip: () => Strip;
}

/** Labels keep this far from lines, points. */
const labelClearance = 1.3;

/** A board that is empty but for what another has drawn `before`, which is kept clear of and not drawn again. */
export function openBoard(before: readonly Box[] = []): Board {
  const marks: Mark[] = [];
  const solid: Box[] = [];
  const touchable: Box[] = [];
  const labels: Box[] = [];
  const taken = (): readonly Box[] => [...before, ...touchable, ...solid, ...labels];
  return {
    draw: (part, kind) => {
      marks.push(...part.marks);
      (kind === 'touchable' ? touchable : solid).push(...part.boxes);
    },
    write: (label, box) => {
      marks.push({ kind: 'group', x: box.left, y: box.top, marks: label.marks });
      labels.push(box);
    },
    hasRoomFor: (part, gap = 0.8) =>
      !part.boxes.some((box) =>
        [...before, ...solid, ...labels].some((other) => overlaps(box, other, gap)),
      ),
    isFree: (box) => !taken().some((other) => overlaps(box, other, labelClearance)),
    taken,
    written: () => labels,
    strip: () => ({ marks, labels, obstacles: [...touchable, ...solid] }),
  };
}
