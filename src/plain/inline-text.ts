import { toLinear } from '../equation/index.ts';
import type { Inline } from '../report/index.ts';

/** Mathematics no wider than this is kept on one line. */
const keptTogether = 24;
/** Points of a ruled blank that one low line stands for. */
const pointsOfALowLine = 6;

/**
 * The parts of a line as plain text: mathematics in linear form, forced breaks as line breaks, ruled
 * blanks as low lines. A terminal has no sheets, so the number of one becomes a word on what stands
 * there: `see B2`.
 */
export function inlineText(inlines: readonly Inline[]): string {
  return inlines.map(textOf).join('');
}

function textOf(inline: Inline): string {
  switch (inline.kind) {
    case 'text':
      return withoutControls(inline.text);
    case 'math':
      return mathText(toLinear(inline.expression));
    case 'break':
      return '\n';
    case 'link':
      return inlineText(inline.content);
    case 'sheet-number':
      return `see\u00a0${withoutControls(inline.anchor.replace(/^member-/u, ''))}`;
    case 'sheet-count':
      return '–';
    case 'blank':
      return '_'.repeat(Math.max(3, Math.round(inline.width / pointsOfALowLine)));
  }
}

function mathText(linear: string): string {
  return linear.length > keptTogether ? linear : linear.replaceAll(' ', '\u00a0');
}

/** The text with every control character shown as a replacement, so that no file can steer the terminal. */
export function withoutControls(text: string): string {
  return text.replace(/[^\P{Cc}\n\t]/gu, '\ufffd');
}
