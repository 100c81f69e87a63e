import type { GivenQuantity } from '../../units/index.ts';

/** A stretch of a written line: offsets into its text, `end` not included. */
export interface Extent {
  readonly start: number;
  readonly end: number;
}

/** An expression as somebody wrote it, every part with its place in the text. */
export type Written = Extent &
  (
    | {
        readonly kind: 'number';
        readonly quantity: GivenQuantity;
        /** True where no unit stands with it. */
        readonly isBare: boolean;
        /** What one unit of the last written place is worth, in SI: how finely it was rounded. */
        readonly lastPlace: number;
      }
    | { readonly kind: 'name'; readonly name: string }
    | {
        readonly kind: 'sum';
        readonly terms: readonly { readonly sign: 1 | -1; readonly of: Written }[];
      }
    | { readonly kind: 'product'; readonly factors: readonly Written[] }
    | { readonly kind: 'quotient'; readonly over: Written; readonly under: Written }
    | { readonly kind: 'power'; readonly base: Written; readonly exponent: number }
    | {
        readonly kind: 'call';
        readonly of: 'sin' | 'cos' | 'tan' | 'sqrt' | 'abs';
        readonly argument: Written;
      }
  );

/** Which way a person says that something acts. */
export type DirectionWord =
  | 'up'
  | 'down'
  | 'left'
  | 'right'
  | 'clockwise'
  | 'counterclockwise'
  | 'sagging'
  | 'hogging'
  | 'tension'
  | 'compression';

/** A line as read: what stands between its equals signs, and a direction in words at its end. */
export interface WrittenLine {
  readonly text: string;
  /** One a side of the equals signs, from left to right; never empty. */
  readonly links: readonly Written[];
  readonly direction?: DirectionWord;
}

/** Why a line cannot be read, with the place in its text. */
export interface ReadingFault extends Extent {
  readonly kind: 'syntax' | 'symbol';
  /** One sentence, lower case at the start, no full stop. */
  readonly message: string;
}

/**
 * A line read, in every way that it reads (`20/2 ft` as 20/(2 ft) and as (20/2) ft), the
 * likeliest first; or why it cannot be.
 */
export type ReadLine =
  | { readonly readings: readonly WrittenLine[]; readonly fault?: undefined }
  | { readonly fault: ReadingFault; readonly readings?: undefined };
