import type { Part } from '../ink/part.ts';
import { asOneBox, stroked, together } from '../ink/part.ts';
import { closedPath } from '../ink/paths.ts';
import { ground } from './ground.ts';
import type { SymbolFrame } from './symbol-frame.ts';

/** A fixed end: a hatched wall square to the member; the frame's depth runs along the member, outwards. */
export function fixedEnd(frame: SymbolFrame): Part {
  return ground(frame, 0, 13);
}

/** A fixed support inside the member: it is clamped between two hatched plates. */
export function fixedInside(below: SymbolFrame, above: SymbolFrame): Part {
  const plates = closedPath([
    below.at(-8, 3),
    below.at(8, 3),
    below.at(8, -3),
    below.at(-8, -3),
  ]);
  return together(
    asOneBox(stroked(plates, below.outline)),
    ground(below, 3, 8),
    ground(above, 3, 8),
  );
}
