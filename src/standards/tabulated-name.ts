/**
 * A name as tables are searched by it: case, blanks, underscores and dashes do not count, and the
 * sign × is the letter x, so that `W 12 × 26`, `w12x26` and `W12X26` are one designation.
 */
export function tabulatedName(name: string): string {
  return name
    .toLowerCase()
    .replaceAll('×', 'x')
    .replaceAll(/[\s_-]/g, '');
}
