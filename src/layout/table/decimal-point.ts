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
  const end = endOfWhole(characters, first);
  return characters[end]?.x ?? line.width;
}

/** The character behind the digits before the point: the point itself, or what follows the number. */
function endOfWhole(characters: readonly PlacedCharacter[], first: number): number {
  let index = first;
  while (isDigit(textAt(characters, index)) || isSeparator(characters, index))
    index += 1;
  return index;
}

function textAt(characters: readonly PlacedCharacter[], index: number): string {
  return characters[index]?.text ?? '';
}

/** A comma or a narrow space between thousands: with a digit behind it. */
function isSeparator(characters: readonly PlacedCharacter[], index: number): boolean {
  return (
    /^[,\u2009\u202f]$/u.test(textAt(characters, index)) &&
    isDigit(textAt(characters, index + 1))
  );
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
