/**
 * Lays out an equation as a drawing.
 *
 * KaTeX parses the TeX and decides every size and distance by the rules of the TeXbook; this
 * room walks the tree that it would have turned into HTML and places the glyphs of its fonts
 * itself, so that a page holds real text and no browser is needed. The way of an equation:
 *
 *     TeX ── readEquation ──▶ EquationTree ── Setting.set ──▶ Box ── place ──▶ marks ──▶ Drawing
 *            katex-tree        our own kinds    nodes/…        measured          pen
 *            katex-classes     of node          one a kind
 *
 * Whatever the reader does not know (a class, a style, a kind of node, a character without a
 * glyph) is refused by name with a TypesetFault, so that a new version of KaTeX fails loudly
 * instead of shifting a sign. Three ways to arrange lines: one equation as written (typeset),
 * broken before its relations and operators (typesetBroken), or a derivation stacked on its
 * equals signs (typesetAligned).
 *
 * @module
 */
export { createTypesetter } from './typesetter.ts';
export type { Typesetter } from './typesetter.ts';
export type { EquationStyle } from './finish-drawing.ts';
export type { TypesetOptions } from './set-equation.ts';
export type { BrokenOptions } from './break-equation.ts';
export type {
  AlignedEquations,
  AlignedLine,
  AlignedOptions,
} from './align-equations.ts';
export { stackDrawings } from './stack-drawings.ts';
export type { Leading } from './stack-drawings.ts';
export { TypesetFault } from './typeset-fault.ts';
export { tryTypeset } from './try-typeset.ts';
