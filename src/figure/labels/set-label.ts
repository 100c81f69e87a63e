import type { Colour, Drawing } from '../../drawing/index.ts';
import { lineToLinear, lineToTex, toLinear, toTex } from '../../equation/index.ts';
import type { FontBook } from '../../font/index.ts';
import { setText, spellOut } from '../../font/index.ts';
import { tryTypeset, type Typesetter } from '../../typeset/index.ts';
import type { Label } from '../figure-spec.ts';

/** How a label is set. */
export interface LabelStyle {
  /** Size of the em, points; the same for words and mathematics. */
  readonly size: number;
  readonly colour: Colour;
  /** Set heavier: extremes. Default false. */
  readonly heavy?: boolean;
}

/** Sets a label as a drawing whose box fits its ink closely, so that gaps around labels are even. */
export type SetLabel = (label: Label, style: LabelStyle) => Drawing;

/**
 * Labels set with a firm's faces: words in the text face, mathematics by the typesetter. What the
 * equation faces lack is set as words; what no face has is set as its number, and `missing` is told.
 */
export function labelSetter(
  fonts: FontBook,
  typesetter: Typesetter,
  missing: (character: string) => void = () => undefined,
): SetLabel {
  const words = (text: string, style: LabelStyle): Drawing => {
    const spelled = spellOut(fonts, faceOf(style), text);
    for (const character of spelled.missing) missing(character);
    return setWords(fonts, spelled.text, style);
  };
  const mathematics = (written: Written, style: LabelStyle): Drawing =>
    tryTypeset([written], () => setTex(typesetter, style, written)) ??
    words(written.linear, style);
  return (label, style) => {
    switch (label.kind) {
      case 'text':
        return words(label.text, style);
      case 'expression': {
        const { expression } = label;
        return mathematics(
          { tex: toTex(expression), linear: toLinear(expression) },
          style,
        );
      }
      case 'line': {
        const { left, right } = lineToTex(label.line);
        const written = { tex: `${left} ${right}`, linear: lineToLinear(label.line) };
        return mathematics(written, style);
      }
    }
  };
}

/** Mathematics as it is set, and as it is copied and found in the finished document. */
interface Written {
  readonly tex: string;
  readonly linear: string;
}

function setTex(
  typesetter: Typesetter,
  style: LabelStyle,
  { tex, linear }: Written,
): Drawing {
  const { size, colour, heavy = false } = style;
  return typesetter.typeset(heavy ? heavier(tex) : tex, {
    size,
    colour,
    actualText: linear,
  });
}

// KaTeX's \boldsymbol leaves upright text as it is, so the units are made bold by themselves.
function heavier(tex: string): string {
  return `\\boldsymbol{${tex.replaceAll('\\text{', '\\textbf{')}}`;
}

function faceOf({ heavy = false }: LabelStyle): string {
  return heavy ? 'text-semibold' : 'text';
}

/** Characters that reach below the baseline. */
const descending = /[gjpqyQ,;()[\]{}|/₀-₉]/u;

function setWords(fonts: FontBook, text: string, style: LabelStyle): Drawing {
  const { size, colour } = style;
  const face = faceOf(style);
  const { width, marks } = setText(fonts, { face, size, colour }, text);
  const baseline = fonts.face(face).capHeight * size * 1.07;
  const depth = descending.test(text) ? 0.23 * size : 0.02 * size;
  return {
    width,
    height: baseline + depth,
    baseline,
    marks: marks.map((mark) => ({ ...mark, y: baseline })),
  };
}
