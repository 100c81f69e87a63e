import type { Box } from '../geometry/box.ts';
import { unionOf } from '../geometry/box.ts';
import type { Part } from '../ink/part.ts';
import { stroked, together } from '../ink/part.ts';
import { closedPath } from '../ink/paths.ts';
import { ground } from './ground.ts';
import type { SymbolFrame } from './symbol-frame.ts';

/** Depth of the ground under pins and rollers, points, before scaling. */
export const groundDepth: number = 10.4;

/** A pin: a triangle on hatched ground. */
export function pin(frame: SymbolFrame): Part {
  const { at, outline } = frame;
  const triangle = closedPath([
    at(0, 0.7),
    at(-5.8, groundDepth),
    at(5.8, groundDepth),
  ]);
  return together(
    { marks: stroked(triangle, outline).marks, boxes: steps(frame) },
    ground(frame, groundDepth, frame.groundHalf),
  );
}

/** The triangle as three steps, so that a name may stand close beside its top. */
function steps({ at }: SymbolFrame): readonly Box[] {
  const depths = [0.7, 3.9, 7.2, groundDepth];
  return [1.9, 3.8, 5.8].flatMap((half, index) => {
    const corners = [
      at(-half, depths[index] ?? 0),
      at(half, depths[index + 1] ?? 0),
      at(half, depths[index] ?? 0),
      at(-half, depths[index + 1] ?? 0),
    ];
    const step = unionOf(
      corners.map(({ x, y }) => ({ left: x, right: x, top: y, bottom: y })),
    );
    return step === undefined ? [] : [step];
  });
}
