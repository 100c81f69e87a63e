import type { TextStyle as FontStyle } from '../font/index.ts';
import type { TextStyle } from '../report/index.ts';
import type { Theme } from '../theme/index.ts';

/** How the text of a block is set before its inlines have their say. */
export interface TextBase {
  /** Face, size and colour of plain text. */
  readonly look: FontStyle;
  /** Baseline to baseline, points. */
  readonly leading: number;
  readonly muted: FontStyle['colour'];
}

/** Plain text of the theme at a size. */
export function textBase(
  theme: Theme,
  look: { readonly size: number; readonly leading: number; readonly face?: string },
): TextBase {
  const { size, leading, face = 'text' } = look;
  const { ink, muted } = theme.colour;
  return { look: { face, size, colour: ink }, leading, muted };
}

/** Body text and small text of the theme. */
export function bodyBase(theme: Theme): TextBase {
  return textBase(theme, theme.text);
}

/** Text of captions, notes and small tables. */
export function smallBase(theme: Theme): TextBase {
  const { small, smallLeading } = theme.text;
  return textBase(theme, { size: small, leading: smallLeading });
}

/** The face for lines of a file: one advance for all characters. */
export const codeFace = 'KaTeX_Typewriter-Regular';

// The typewriter face has a tall x; a little smaller it keeps company with the text.
const codeShare = 0.94;

const slanted: Readonly<Record<string, string>> = {
  text: 'text-italic',
  'text-semibold': 'text-semibold-italic',
  'text-bold': 'text-semibold-italic',
  'text-italic': 'text',
};
const heavier: Readonly<Record<string, string>> = {
  text: 'text-semibold',
  'text-semibold': 'text-bold',
  'text-italic': 'text-semibold-italic',
};

/** The look of an inline's style on a base. */
export function lookOf(base: TextBase, style: TextStyle): FontStyle {
  const { look } = base;
  switch (style) {
    case 'plain':
      return look;
    case 'emphasis':
      return { ...look, face: slanted[look.face] ?? look.face };
    case 'strong':
      return { ...look, face: heavier[look.face] ?? look.face };
    case 'small-caps':
      return { ...look, features: [...(look.features ?? []), 'smcp'] };
    case 'muted':
      return { ...look, colour: base.muted };
    case 'code':
      return { face: codeFace, size: look.size * codeShare, colour: look.colour };
  }
}
