import type { Align, StackLine } from '../equation-node.ts';
import type { Box, NodeSetter } from '../node-setter.ts';

/**
 * Lines above each other. The stack is as wide as its widest line; a line that is narrower
 * stands at the left, in the middle or at the right, as inherited; a line wider than its room
 * begins at the left of it (CSS Text 3, §6.1: what overflows is not centred).
 */
export const setStack: NodeSetter<'stack'> = (node, own, { set }) => {
  const { scale } = own;
  const lines = node.lines.map((line) => {
    const align: Align = line.atLeft ? 'left' : own.align;
    const box = set(line.node, align === own.align ? own : { ...own, align });
    return { line, box, align };
  });
  let width = 0;
  for (const { line, box } of lines) {
    width = Math.max(width, (line.before + line.after) * scale + box.width);
  }
  return {
    width,
    fills: false,
    place: (pen, x, y) => {
      for (const { line, box, align } of lines) {
        const room = roomOf(line, width, scale);
        const free = box.fills ? 0 : Math.max(0, room - box.width);
        const at = x + line.before * scale + free * shareBefore[align];
        box.place(pen, at, y + line.below * scale, lineWidth(box, room));
      }
    },
  };
};

const shareBefore: Readonly<Record<Align, number>> = { left: 0, centre: 0.5, right: 1 };

function roomOf(line: StackLine, width: number, scale: number): number {
  const taken = line.narrowedBy ?? line.before + line.after;
  return width - taken * scale;
}

function lineWidth(box: Box, room: number): number {
  return box.fills ? room : box.width;
}
