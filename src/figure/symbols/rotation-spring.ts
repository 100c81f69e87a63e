import type { PathStep } from '../../drawing/index.ts';
import type { Part } from '../ink/part.ts';
import { asOneBox, stroked, together } from '../ink/part.ts';
import { groundDepth, pin } from './pin.ts';
import type { SymbolFrame } from './symbol-frame.ts';

/** Radii of the spiral at each quarter turn, from its inner end; points before scaling. */
const radii = [1.6, 2.5, 3.4, 4.3, 5.2, 6.1, 7];
/** Handle of a quarter circle as a Bézier curve, part of its radius: 4/3 (√2 − 1). */
const handle = (4 / 3) * (Math.SQRT2 - 1);

/** A pin that a spiral spring holds against turning: its inner end on the member, its outer end on the ground. */
export function pinWithRotationSpring(frame: SymbolFrame): Part {
  const line = { ...frame.outline, width: 0.6 };
  return together(pin(frame), asOneBox(stroked(spiral(frame), line)));
}

/** Quarters of ellipses about the pin, each a little wider than the last, and a leg to the ground. */
function spiral({ at }: SymbolFrame): readonly PathStep[] {
  const inner = radii[0] ?? 0;
  const outer = radii.at(-1) ?? 0;
  const corner = (radius: number, quarter: number): readonly [number, number] => {
    const sides = [
      [-radius, 0],
      [0, -radius],
      [radius, 0],
      [0, radius],
    ] as const;
    return sides[quarter % 4] ?? [radius, 0];
  };
  const quarters = radii.slice(1).map((to, index): PathStep => {
    const from = radii[index] ?? 0;
    const [ax, ay] = corner(from, index);
    const [bx, by] = corner(to, index + 1);
    const p = at(ax + bx * handle, ay + by * handle);
    const q = at(bx + ax * handle, by + ay * handle);
    const end = at(bx, by);
    return ['C', p.x, p.y, q.x, q.y, end.x, end.y];
  });
  const start = at(...corner(inner, 0));
  const foot = at(outer, groundDepth);
  return [['M', start.x, start.y], ...quarters, ['L', foot.x, foot.y]];
}
