import type { Drawing } from '../drawing/index.ts';
import { boundedCache } from '../font/index.ts';
import type { FontBook } from '../font/index.ts';
import { finishDrawing } from './finish-drawing.ts';
import { readEquation } from './katex-tree.ts';
import { setEquation } from './set-equation.ts';
import type { TypesetOptions } from './set-equation.ts';
import { openSetting } from './set-node.ts';
import { inEquation } from './typeset-fault.ts';

/** Sets equations with one font book and remembers the last of them. */
export interface Typesetter {
  /** Sets one equation as it is written. Throws TypesetFault on what cannot be set. */
  readonly typeset: (tex: string, options: TypesetOptions) => Drawing;
}

/** Equations kept by default: a few megabytes, and more than repeat on neighbouring sheets. */
const equationsKept = 2000;

/** Makes a typesetter; `kept` is the number of equations that it remembers. */
export function createTypesetter(
  fonts: FontBook,
  kept: number = equationsKept,
): Typesetter {
  const setting = openSetting(fonts);
  const drawings = boundedCache<Drawing>(kept);
  const typeset = (tex: string, options: TypesetOptions): Drawing =>
    drawings.get(JSON.stringify([tex, options]), () =>
      inEquation(tex, () => {
        const tree = readEquation(tex, options.display ?? false);
        return finishDrawing(setEquation(tree, options, setting), options);
      }),
    );
  return { typeset };
}
