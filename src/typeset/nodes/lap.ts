import type { NodeSetter } from '../node-setter.ts';

const shareBefore = { left: 1, centre: 0.5, right: 0 } as const;

/** Content that takes no room: it lies left of, across or right of its place. */
export const setLap: NodeSetter<'lap'> = (node, own, { set }) => {
  const box = set(node.child, own);
  return {
    width: 0,
    fills: false,
    place: (pen, x, y) => {
      box.place(pen, x - box.width * shareBefore[node.side], y, box.width);
    },
  };
};
