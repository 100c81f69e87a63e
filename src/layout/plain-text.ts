import { toLinear } from '../equation/index.ts';
import type { Inline } from '../report/index.ts';

/** Inlines as plain text, for bookmarks and for what a link says; sheet numbers and blanks are left out. */
export function plainText(inlines: readonly Inline[]): string {
  return inlines.map(textOf).join('').replace(/\s+/gu, ' ').trim();
}

function textOf(inline: Inline): string {
  switch (inline.kind) {
    case 'text':
      return inline.text;
    case 'math':
      return toLinear(inline.expression);
    case 'break':
      return ' ';
    case 'link':
      return inline.content.map(textOf).join('');
    case 'sheet-number':
    case 'sheet-count':
    case 'blank':
      return '';
  }
}
