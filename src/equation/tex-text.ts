import { greekNames } from './greek.ts';

const special: ReadonlyMap<string, string> = new Map([
  ['\\', '\\textbackslash{}'],
  ['{', '\\{'],
  ['}', '\\}'],
  ['$', '\\$'],
  ['%', '\\%'],
  ['#', '\\#'],
  ['&', '\\&'],
  ['_', '\\_'],
  ['^', '\\textasciicircum{}'],
  ['~', '\\textasciitilde{}'],
  // Doubled, these would run together into a dash or a quotation mark.
  ['-', '{-}'],
  ["'", "{'}"],
  ['`', '{`}'],
  ['\u2212', '{-}'],
  ['\u00a0', '~'],
  ['\u2009', '~'],
  ['\u202f', '~'],
  ['×', '$\\times$'],
  ['÷', '$\\div$'],
  ['±', '$\\pm$'],
  ['≤', '$\\le$'],
  ['≥', '$\\ge$'],
  ['′', '$\\prime$'],
]);

// Letters with marks that the equation fonts compose, and signs that they hold (looked up in the character
// maps of KaTeX 0.19.1's fonts). Anything else has no glyph there and would print as an empty box.
const printable =
  /^[ -~À-ÏÑ-ÖØ-Ýß-ïñ-öø-ýÿĀ-ăĆ-ďĒ-ėĚ-ĥĨ-ĭİıĴ-ķĹ-ľŃ-ňŌ-ŗŘ-ťŨ-űŴ-ž–—‘’“”…°]$/u;

/**
 * Text of a user's own (a point's name, a word) as upright TeX text, its special characters escaped.
 * A character without a glyph in the equation fonts becomes a question mark.
 */
export function texText(text: string): string {
  return `\\text{${Array.from(text, texCharacter).join('')}}`;
}

function texCharacter(character: string): string {
  const escaped = special.get(character);
  if (escaped !== undefined) return escaped;
  const greek = greekNames.get(character);
  if (greek !== undefined) return `$\\${greek}$`;
  return printable.test(character) ? character : '?';
}
