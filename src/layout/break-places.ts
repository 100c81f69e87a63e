import type { TextStyle } from '../font/index.ts';
import { codeFace } from './text-look.ts';

// Behind a hyphen or stroke between two words, and behind a dash that something follows.
const inText = /(?<=\p{L}{2}[-–/])(?=\p{L}{2})|(?<=—)(?=\S)/u;
// Paths break behind their strokes; a file's name and its ending stay together.
const inCode = /(?<=[/])(?=[\p{L}\p{N}])/u;

/** The parts of a word that a line may end between, without a hyphen being added. */
export function splitWord(word: string, look: TextStyle): readonly string[] {
  if (look.face === codeFace) return word.split(inCode);
  return /[-–—/]/u.test(word) ? word.split(inText) : [word];
}

const number = /^[^\p{L}\p{N}]*[\d.,]*\d[\d.,]*[^\p{L}\p{N}]*$/u;
// Most words have no digit: asked first, since it is by far the cheaper question.
const hasDigit = /\d/u;
const unit = /^[\p{L}°%′″][\p{L}\d°%′″·/²³⁴⁻]{0,9}[.,;:)]*$/u;
const longestPlainUnit = 4;

/**
 * True for a space between a number and its unit, `6 ft` or `12.5 kip·ft`, which no line may end
 * at. Any word of up to four letters behind a number counts: tying one too many does no harm.
 */
export function joinsNumberAndUnit(before: string, after: string): boolean {
  if (!hasDigit.test(before) || !number.test(before) || !unit.test(after)) return false;
  const bare = after.replace(/[.,;:)]+$/u, '');
  return bare.length <= longestPlainUnit || /[·/²³⁴⁻°%]/u.test(bare);
}
