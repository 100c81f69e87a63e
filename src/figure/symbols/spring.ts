import type { Part } from '../ink/part.ts';
import { asOneBox, stroked, together } from '../ink/part.ts';
import { openPath } from '../ink/paths.ts';
import { ground } from './ground.ts';
import type { SymbolFrame } from './symbol-frame.ts';

const turns = 4;
const coilTop = 3;
const turnHeight = 2.9;

/** A spring: a coil on hatched ground. */
export function spring(frame: SymbolFrame): Part {
  const { at, outline } = frame;
  const foot = coilTop + turns * turnHeight;
  const coil = Array.from({ length: turns * 2 }, (_, index) =>
    at(index % 2 === 0 ? 4.2 : -4.2, coilTop + (index + 0.5) * (turnHeight / 2)),
  );
  const path = openPath([
    at(0, 0.7),
    at(0, coilTop),
    ...coil,
    at(0, foot),
    at(0, foot + 2.3),
  ]);
  return together(
    asOneBox(stroked(path, { ...outline, join: 'bevel' })),
    ground(frame, foot + 2.3, frame.groundHalf),
  );
}
