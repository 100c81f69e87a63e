import type { Colour, GlyphsMark } from '../drawing/index.ts';
import { fallbackFor } from './fallback.ts';
import type { Face, Feature, FontBook } from './font-book.ts';
import { measureText } from './measure-text.ts';

/** How a text is to be set. */
export interface TextStyle {
  /** Name of the face in the book. */
  readonly face: string;
  /** Size of the em, points. */
  readonly size: number;
  readonly colour: Colour;
  /** Features asked of the text faces. Default: none. */
  readonly features?: readonly Feature[];
}

/** A text set on one baseline: its width in points and its runs, starting at x = 0, y = 0. */
export interface SetText {
  readonly width: number;
  readonly marks: readonly GlyphsMark[];
}

/**
 * Sets a text on one baseline, in as few runs as its faces allow: a character that the asked
 * face lacks comes from the nearest face that has it. Throws RangeError where no face has it;
 * missingCharacters tells beforehand.
 */
export function setText(book: FontBook, style: TextStyle, text: string): SetText {
  let width = 0;
  const marks = runsOf(book, style.face, text.normalize('NFC')).map(
    (run): GlyphsMark => {
      const measured = measureText(run.face, style.size, run.text, style.features);
      const x = width;
      width += measured.width;
      const { size, colour } = style;
      const { glyphs } = measured;
      return { kind: 'glyphs', x, y: 0, face: run.face.name, size, colour, glyphs };
    },
  );
  return { width, marks };
}

interface Run {
  readonly face: Face;
  text: string;
}

/** Splits a text where the face changes. */
function runsOf(book: FontBook, base: string, text: string): readonly Run[] {
  const runs: Run[] = [];
  for (const character of text) {
    const face = fallbackFor(book, character, base);
    if (face === undefined)
      throw new RangeError(`No face has a glyph for "${character}".`);
    const last = runs.at(-1);
    if (last?.face.name === face.name) last.text += character;
    else runs.push({ face, text: character });
  }
  return runs;
}
