import type { NodeSetter } from '../node-setter.ts';

/** Children side by side on one baseline. */
export const setRow: NodeSetter<'row'> = (node, own, { set }) => {
  const boxes = node.children.map((child) => set(child, own));
  let width = 0;
  for (const box of boxes) width += box.width;
  return {
    width,
    fills: false,
    place: (pen, x, y) => {
      let at = x;
      for (const box of boxes) {
        box.place(pen, at, y, box.width);
        at += box.width;
      }
    },
  };
};
