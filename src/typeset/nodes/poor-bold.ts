import type { NodeSetter } from '../node-setter.ts';

/** How far right and down the second impression lies, ems of the node (KaTeX's pmb.ts). */
const right = 0.02;
const down = 0.01;

/** Content drawn twice, a hair apart. */
export const setPoorBold: NodeSetter<'poor-bold'> = (node, own, { set }) => {
  const box = set(node.child, own);
  return {
    width: box.width,
    fills: false,
    place: (pen, x, y) => {
      box.place(pen, x + right * own.scale, y + down * own.scale, box.width);
      box.place(pen, x, y, box.width);
    },
  };
};
