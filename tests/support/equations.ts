import type { Drawing, GlyphsMark, Mark, ShapeMark } from '../../src/drawing/index.ts';
import { createTypesetter } from '../../src/typeset/index.ts';
import type { Typesetter } from '../../src/typeset/index.ts';
import { ownFonts } from './own-fonts.ts';

/** A typesetter with the program's own faces. */
export const typesetter: Typesetter = createTypesetter(ownFonts);

/** Sets an equation at 10 points to the em, in display style. */
export function draw(tex: string): Drawing {
  return typesetter.typeset(tex, { size: 10, display: true });
}

/** All marks of a drawing that are no groups, moved to the drawing's own coordinates. */
export function leaves(drawing: { readonly marks: readonly Mark[] }): readonly Mark[] {
  return drawing.marks.flatMap((mark) => {
    if (mark.kind !== 'group') return [mark];
    return leaves(mark).map((leaf): Mark => {
      if (leaf.kind === 'glyphs')
        return { ...leaf, x: leaf.x + mark.x, y: leaf.y + mark.y };
      if (leaf.kind !== 'shape') return leaf;
      const path = leaf.path.map((step): ShapeMark['path'][number] => {
        if (step[0] === 'Z') return step;
        const [letter, ...numbers] = step;
        const moved = numbers.map(
          (n, index) => n + (index % 2 === 0 ? mark.x : mark.y),
        );
        return [letter, ...moved] as unknown as ShapeMark['path'][number];
      });
      return { ...leaf, path };
    });
  });
}

/** The runs of glyphs of a drawing. */
export function runs(drawing: Drawing): readonly GlyphsMark[] {
  return leaves(drawing).filter((mark) => mark.kind === 'glyphs');
}

/** The shapes of a drawing. */
export function shapes(drawing: Drawing): readonly ShapeMark[] {
  return leaves(drawing).filter((mark) => mark.kind === 'shape');
}

/** The characters of a drawing in drawing order. */
export function textOf(drawing: Drawing): string {
  return runs(drawing)
    .flatMap((run) => run.glyphs.map((glyph) => glyph.text))
    .join('');
}

/** One glyph of a drawing and its place. */
export interface PlacedCharacter {
  readonly text: string;
  readonly face: string;
  readonly size: number;
  readonly x: number;
  readonly y: number;
}

/** Every glyph of a drawing with its place in the drawing. */
export function characters(drawing: Drawing): readonly PlacedCharacter[] {
  return runs(drawing).flatMap(({ face, size, x, y, glyphs }) =>
    glyphs.map((glyph) => ({ text: glyph.text, face, size, x: x + glyph.x, y })),
  );
}

/** The box around the corners of a shape's path: left, top, right, bottom. */
export function boxOf({ path }: ShapeMark): readonly [number, number, number, number] {
  const points = path.flatMap((step): (readonly [number, number])[] => {
    if (step[0] === 'Z') return [];
    const [x, y] = step.slice(-2) as [number, number];
    return [[x, y]];
  });
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
