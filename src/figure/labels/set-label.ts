import type { Colour, Drawing } from '../../drawing/index.ts';
import { lineToLinear, lineToTex, toLinear, toTex } from '../../equation/index.ts';
import type { FontBook } from '../../font/index.ts';
import { setText } from '../../font/index.ts';
import type { Typesetter } from '../../typeset/index.ts';
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

/** Labels set with a firm's faces: words in the text face, mathematics by the typesetter. */
export function labelSetter(fonts: FontBook, typesetter: Typesetter): SetLabel {
  return (label, style) => {
    switch (label.kind) {
      case 'text':
        return setWords(fonts, label.text, style);
      case 'expression':
        return setTex(typesetter, style, {
          tex: toTex(label.expression),
          linear: toLinear(label.expression),
        });
      case 'line': {
        const { left, right } = lineToTex(label.line);
        return setTex(typesetter, style, {
          tex: `${left} ${right}`,
          linear: lineToLinear(label.line),
        });
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

/** Characters that reach below the baseline. */
const descending = /[gjpqyQ,;()[\]{}|/₀-₉]/u;

function setWords(fonts: FontBook, text: string, style: LabelStyle): Drawing {
  const { size, colour, heavy = false } = style;
  const face = heavy ? 'text-semibold' : 'text';
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
