/** How a figure is printed: so many significant figures, so many decimals, or the text as given. */
export type Print =
  | { readonly kind: 'figures'; readonly count: number }
  | { readonly kind: 'decimals'; readonly count: number }
  | { readonly kind: 'given'; readonly text: string; readonly compound: boolean };

/** How thousands are set apart from 10 000 on: not, by a comma (US), by a narrow no-break space (SI). */
export type Grouping = 'none' | 'comma' | 'space';

/**
 * A number as printed, in parts, so that plain text and typeset equations show the same digits.
 * The printed number is sign × mantissa × 10^exponent.
 */
export interface PrintedFigure {
  /** The whole as plain text, minus sign and power of ten included (`−36.9×10⁶`), without its unit unless `compound`. */
  readonly text: string;
  readonly negative: boolean;
  /** The digits, thousands set apart, without sign: `36.9`, `12,500`, `6 1/2`; for feet and inches all of it. */
  readonly mantissa: string;
  /** Power of ten; 0 where none is printed. */
  readonly exponent: number;
  /** True where the mantissa holds its units itself (feet and inches). */
  readonly compound: boolean;
  /** The number that a reader of the page would take, in the printed unit (for feet and inches in feet). */
  readonly value: number;
  /** What one unit of the last printed place is worth, in the printed unit; 0 for an exact zero. */
  readonly lastPlace: number;
}
