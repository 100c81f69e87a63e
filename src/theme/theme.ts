import type { Colour } from '../drawing/index.ts';

/**
 * Sizes, weights and colours that a firm may change (`theme.yaml` in the project folder).
 * Lengths in points unless said otherwise.
 */
export interface Theme {
  readonly paper: {
    /** Distance of the text from the left edge (the binding side), right edge, top and foot. */
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly foot: number;
    /** Width of the column right of the text that holds references and flags. */
    readonly marginColumn: number;
    readonly marginGap: number;
  };
  readonly text: {
    readonly size: number;
    readonly leading: number;
    readonly small: number;
    readonly smallLeading: number;
    readonly h1: number;
    readonly h2: number;
    readonly h3: number;
    /** Size of the equations' em; KaTeX faces sit well a touch larger than the text. */
    readonly equation: number;
    /** Space between paragraphs, and above and below an equation. */
    readonly paragraphGap: number;
    readonly equationGap: number;
  };
  readonly line: {
    readonly member: number;
    readonly load: number;
    readonly dimension: number;
    readonly diagram: number;
    readonly rule: number;
  };
  readonly colour: {
    readonly ink: Colour;
    readonly muted: Colour;
    readonly accent: Colour;
    readonly hatch: Colour;
    readonly fill: Colour;
  };
}
