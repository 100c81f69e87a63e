import type { Place } from '../diagnostics/index.ts';
import { printable } from './paint.ts';

/** A line of a file and, under it, where to look. */
export interface Excerpt {
  readonly line: string;
  readonly underline: string;
}

/** Characters of a line that are shown; longer lines are cut at both ends. */
const mostShown = 100;
const shownBefore = 40;

const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]/gu;

/** The line at a place with carets under a stretch of so many characters, one caret at least, to the end of the line at most. */
export function excerptAt({ lineText, column }: Place, length: number): Excerpt {
  const at = column - 1;
  const from = lineText.length <= mostShown ? 0 : Math.max(0, at - shownBefore);
  const to = Math.min(lineText.length, from + mostShown);
  const end = Math.max(at, Math.min(at + length, to));
  const [before, marked] = [lineText.slice(from, at), lineText.slice(at, end)];
  const cut = from > 0 ? '… ' : '';
  return {
    line: printable(
      `${cut}${lineText.slice(from, to)}${to < lineText.length ? ' …' : ''}`,
    ),
    underline: blanks(cut + before) + '^'.repeat(Math.max(1, blanks(marked).length)),
  };
}

/** As many blanks as the text takes columns on a terminal. */
function blanks(text: string): string {
  return text.replace(/\p{M}/gu, '').replace(wide, '  ').replace(/[^ ]/gu, ' ');
}
