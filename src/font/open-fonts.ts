import type { Face, FontBook } from './font-book.ts';
import { openFace } from './open-face.ts';

/** The files of the text faces, by the names that a font book gives them. */
const textFiles: Readonly<Record<string, string>> = {
  text: 'fonts/SourceSerif4-Regular.ttf',
  'text-italic': 'fonts/SourceSerif4-It.ttf',
  'text-semibold': 'fonts/SourceSerif4-Semibold.ttf',
  'text-semibold-italic': 'fonts/SourceSerif4-SemiboldIt.ttf',
  'text-bold': 'fonts/SourceSerif4-Bold.ttf',
};

/** The families of equation faces and the styles that each has: KaTeX's twenty font files. */
const equationFamilies: Readonly<Record<string, readonly string[]>> = {
  AMS: ['Regular'],
  Caligraphic: ['Regular', 'Bold'],
  Fraktur: ['Regular', 'Bold'],
  Main: ['Regular', 'Italic', 'Bold', 'BoldItalic'],
  Math: ['Italic', 'BoldItalic'],
  SansSerif: ['Regular', 'Italic', 'Bold'],
  Script: ['Regular'],
  Size1: ['Regular'],
  Size2: ['Regular'],
  Size3: ['Regular'],
  Size4: ['Regular'],
  Typewriter: ['Regular'],
};

/** Every face name that a font book knows: the text faces first, then the equation faces. */
export const faceNames: readonly string[] = [
  ...Object.keys(textFiles),
  ...Object.entries(equationFamilies).flatMap(([family, styles]) =>
    styles.map((style) => `KaTeX_${family}-${style}`),
  ),
];

/**
 * A font book whose faces are opened when first asked for: a sheet of text alone never pays for
 * the equation faces. `ownFile` answers a file of the program itself (see World). The book's
 * `face` throws RangeError on a name that is not in {@link faceNames}.
 */
export function openFonts(ownFile: (name: string) => Uint8Array): FontBook {
  const opened = new Map<string, Face>();
  const known = new Set(faceNames);
  const open = (name: string): Face => {
    if (!known.has(name)) throw new RangeError(`There is no face called ${name}.`);
    const textFile = textFiles[name];
    return textFile === undefined
      ? openFace(name, ownFile(`${name}.ttf`), { shaping: 'none' })
      : openFace(name, ownFile(textFile), { shaping: 'opentype' });
  };
  return {
    face: (name) => {
      const before = opened.get(name);
      if (before !== undefined) return before;
      const face = open(name);
      opened.set(name, face);
      return face;
    },
  };
}
