import { faceNames } from '../font/index.ts';

/** The families of the equation faces. */
export type Family =
  | 'AMS'
  | 'Caligraphic'
  | 'Fraktur'
  | 'Main'
  | 'Math'
  | 'SansSerif'
  | 'Script'
  | 'Size1'
  | 'Size2'
  | 'Size3'
  | 'Size4'
  | 'Typewriter';

const known = new Set(faceNames);

/**
 * The name of the face of a family in a weight and slope. Where a family lacks the style, the
 * slope is kept before the weight, as CSS does when it matches fonts (CSS Fonts 4, §5.2); a bold
 * or slanted face is never made up from another.
 */
export function faceName(family: Family, bold: boolean, italic: boolean): string {
  const styles = [
    ...(bold && italic ? ['BoldItalic'] : []),
    ...(italic ? ['Italic'] : []),
    ...(bold ? ['Bold'] : []),
    'Regular',
    'Italic', // the Math family has no upright style
  ];
  for (const style of styles) {
    const name = `KaTeX_${family}-${style}`;
    if (known.has(name)) return name;
  }
  throw new RangeError(`No equation face of family ${family}.`);
}
