import type { Mark } from '../../drawing/index.ts';
import type { Line } from '../set-line.ts';

interface PlacedCharacter {
  readonly text: string;
  readonly x: number;
}

/**
 * Where the decimal point of a line's first number stands, from the line's left: the place that
 * a decimal column lines up. Of a number without a point it is where its digits end; undefined
 * where the line has no digit. Reads the glyphs, so that text and equations line up alike.
 */
export function decimalPointOf(line: Line): number | undefined {
  const characters = line.parts
    .flatMap(({ marks }) => charactersOf(marks, 0))
    .sort((one, other) => one.x - other.x);
  const first = characters.findIndex(({ text }) => isDigit(text));
  if (first < 0) return undefined;
  for (let index = first; index < characters.length; index += 1) {
    const character = characters[index];
    const next = characters[index + 1];
    if (character?.text === '.' && isDigit(next?.text ?? '')) return character.x;
    const goesOn = isDigit(next?.text ?? '') || isInNumber(characters, index + 1);
    if (!goesOn) return next?.x ?? line.width;
  }
  return line.width;
}

function charactersOf(marks: readonly Mark[], dx: number): readonly PlacedCharacter[] {
  return marks.flatMap((mark): readonly PlacedCharacter[] => {
    if (mark.kind === 'group') return charactersOf(mark.marks, dx + mark.x);
    if (mark.kind !== 'glyphs') return [];
    return mark.glyphs.map(({ text, x }) => ({ text, x: dx + mark.x + x }));
  });
}

function isDigit(text: string): boolean {
  return /^\d/u.test(text);
}

/** A separator of thousands or the point itself, with a digit behind it. */
function isInNumber(characters: readonly PlacedCharacter[], index: number): boolean {
  const text = characters[index]?.text ?? '';
  return /^[.,\u2009\u202f]$/u.test(text) && isDigit(characters[index + 1]?.text ?? '');
}
