import type { Mark } from '../drawing/index.ts';
import type { Box } from './geometry/box.ts';
import { moveBox, unionOf } from './geometry/box.ts';

/** A finished band of a figure: its marks and boxes, y from the axis of its member. */
export interface Strip {
  readonly marks: readonly Mark[];
  readonly labels: readonly Box[];
  /** Everything else drawn that a label could hide. */
  readonly obstacles: readonly Box[];
}

/** A strip with nothing on it. */
export const emptyStrip: Strip = { marks: [], labels: [], obstacles: [] };

/** The box round everything of a strip; undefined for an empty one. */
export function boundsOf({ labels, obstacles }: Strip): Box | undefined {
  return unionOf([...labels, ...obstacles]);
}

/** A strip moved down, and to the right where asked. */
export function moveStrip(
  { marks, labels, obstacles }: Strip,
  down: number,
  right: number = 0,
): Strip {
  return {
    marks: [{ kind: 'group', x: right, y: down, marks }],
    labels: labels.map((box) => moveBox(box, right, down)),
    obstacles: obstacles.map((box) => moveBox(box, right, down)),
  };
}

/** Two strips drawn in one. */
export function beside(a: Strip, b: Strip): Strip {
  return {
    marks: [...a.marks, ...b.marks],
    labels: [...a.labels, ...b.labels],
    obstacles: [...a.obstacles, ...b.obstacles],
  };
}
