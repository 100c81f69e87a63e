import type { Part } from '../ink/part.ts';
import { asOneBox, stroked, together } from '../ink/part.ts';
import { circlePath, closedPath } from '../ink/paths.ts';
import { ground, groundBetween } from './ground.ts';
import type { SymbolFrame } from './symbol-frame.ts';

const rollerRadius = 1.4;
const blockHalf = 6.4;
const blockDepth = 4;
const wallDepth = blockDepth + 2 * rollerRadius + 0.4;

/**
 * A guide at an end: a block that slides up and down against a hatched wall on two rollers, and
 * so holds the member along its axis and against turning. The frame's depth runs outwards.
 */
export function guideEnd(frame: SymbolFrame): Part {
  return together(block(frame, 0), rollers(frame), ground(frame, wallDepth, 13));
}

/** A guide inside the member: the block slides between two hatched rails. */
export function guideInside(left: SymbolFrame, right: SymbolFrame): Part {
  const rails = [left, right].flatMap((side) => [
    rollers(side),
    groundBetween(side, wallDepth, { from: -13, to: -2.6 }),
    groundBetween(side, wallDepth, { from: 2.6, to: 13 }),
  ]);
  return together(block(left, -blockDepth), ...rails);
}

function block({ at, outline }: SymbolFrame, from: number): Part {
  const corners = [
    at(-blockHalf, from),
    at(blockHalf, from),
    at(blockHalf, blockDepth),
    at(-blockHalf, blockDepth),
  ];
  return asOneBox(stroked(closedPath(corners), outline));
}

function rollers({ at, fine, scale }: SymbolFrame): Part {
  const depth = blockDepth + rollerRadius + 0.2;
  const circle = (across: number): Part =>
    asOneBox(stroked(circlePath(at(across, depth), rollerRadius * scale), fine));
  return together(circle(-3.9), circle(3.9));
}
