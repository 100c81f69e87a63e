import type { Part, Report } from '../report/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Column } from './setting.ts';

/** Sizes of paper in points: 8½ × 11 in, and 210 × 297 mm (ISO 216). */
const sizes: Readonly<
  Record<Report['paper'], { readonly width: number; readonly height: number }>
> = {
  letter: { width: 612, height: 792 },
  a4: { width: (210 * 72) / 25.4, height: (297 * 72) / 25.4 },
};

/** A sheet of paper and the areas on it, points from its top left. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Top left of the text column. */
  readonly left: number;
  readonly top: number;
  /** Right edge of everything that is printed. */
  readonly right: number;
  readonly column: Column;
}

/** The sheet of a part: a cover has no margin column and is as wide as both. */
export function sheetOf(
  paper: Report['paper'],
  look: Part['look'],
  theme: Theme,
): Sheet {
  const { width, height } = sizes[paper];
  const { left, right, top, foot, marginColumn, marginGap } = theme.paper;
  const whole = width - left - right;
  const text = whole - marginColumn - marginGap;
  const area = { x: 0, height: height - top - foot };
  const column: Column =
    look === 'cover'
      ? { ...area, width: whole }
      : { ...area, width: text, margin: { x: text + marginGap, width: marginColumn } };
  return { width, height, left, top, right: width - right, column };
}
