const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]/u;
const widthless = /[\p{M}\u200b-\u200f\u2060\ufeff]/u;

/**
 * Columns that a text takes on a terminal: two for a character of East Asian width or an emblem
 * (Unicode Standard Annex 11), none for a mark that stands over another, one for any other.
 */
export function textWidth(text: string): number {
  let columns = 0;
  for (const character of text) {
    if (!widthless.test(character)) columns += wide.test(character) ? 2 : 1;
  }
  return columns;
}

/** The text with blanks after it up to a width; longer text stays as it is. */
export function padAfter(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - textWidth(text)));
}

/** The text with blanks before it up to a width. */
export function padBefore(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - textWidth(text))) + text;
}

/** The text with blanks on both sides up to a width, an odd one after it. */
export function padAround(text: string, width: number): string {
  const room = Math.max(0, width - textWidth(text));
  return padAfter(' '.repeat(Math.floor(room / 2)) + text, width);
}
