import type { Drawing } from '../drawing/index.ts';
import { boundedCache } from '../font/index.ts';
import type { FontBook } from '../font/index.ts';
import { alignEquations } from './align-equations.ts';
import type {
  AlignedEquations,
  AlignedLine,
  AlignedOptions,
  AlignedTrees,
} from './align-equations.ts';
import { breakEquation } from './break-equation.ts';
import type { BrokenOptions } from './break-equation.ts';
import { finishDrawing } from './finish-drawing.ts';
import { readEquation } from './katex-tree.ts';
import { setEquation } from './set-equation.ts';
import type { TypesetOptions } from './set-equation.ts';
import { openSetting } from './set-node.ts';
import { inEquation } from './typeset-fault.ts';

/**
 * Sets equations with one font book and remembers the last of them. TeX is KaTeX's, without
 * links, picture files and commutative diagrams. Each function throws TypesetFault on what it
 * cannot set; none drops a sign silently.
 */
export interface Typesetter {
  /** Sets one equation as it is written. */
  readonly typeset: (tex: string, options: TypesetOptions) => Drawing;
  /** Sets one equation in as many lines as its width asks for; see breakEquation. */
  readonly typesetBroken: (tex: string, options: BrokenOptions) => readonly Drawing[];
  /** Sets the lines of a derivation with their relations under each other. */
  readonly typesetAligned: (
    lines: readonly AlignedLine[],
    options: AlignedOptions,
  ) => AlignedEquations;
}

/** Equations kept by default: a few megabytes, and more than repeat on neighbouring sheets. */
const equationsKept = 2000;

/** Makes a typesetter; `kept` is the number of equations of each sort that it remembers. */
export function createTypesetter(
  fonts: FontBook,
  kept: number = equationsKept,
): Typesetter {
  const setting = openSetting(fonts);
  const single = boundedCache<Drawing>(kept);
  const broken = boundedCache<readonly Drawing[]>(kept);
  const aligned = boundedCache<AlignedEquations>(kept);
  const parse = (line: AlignedLine, display: boolean): AlignedTrees => ({
    left: inEquation(line.left, () => readEquation(line.left, display)),
    right: inEquation(line.right, () => readEquation(`{}${line.right}`, display)),
    line,
  });
  return {
    typeset: (tex, options) =>
      single.get(JSON.stringify([tex, options]), () =>
        inEquation(tex, () => {
          const tree = readEquation(tex, options.display ?? false);
          return finishDrawing(setEquation(tree, options, setting), options);
        }),
      ),
    typesetBroken: (tex, options) =>
      broken.get(JSON.stringify([tex, options]), () =>
        inEquation(tex, () =>
          breakEquation(readEquation(tex, options.display ?? true), options, setting),
        ),
      ),
    typesetAligned: (lines, options) =>
      aligned.get(JSON.stringify([lines, options]), () => {
        const trees = lines.map((line) => parse(line, options.display ?? true));
        const tex = lines.map(({ left, right }) => `${left} ${right}`).join(' \\\\ ');
        return inEquation(tex, () => alignEquations(trees, options, setting));
      }),
  };
}
