import type { Colour, GroupMark, PathStep } from '../drawing/index.ts';
import { missingCharacters, outlineText } from '../font/index.ts';
import type { FontBook } from '../font/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Sheet } from './paper.ts';

const face = 'text-bold';
const measure = 100;
const diagonalShare = 0.78;
const largest = 150;
const lineWidth = 1.1;

/**
 * A word across the whole sheet from its lower left to its upper right, as large light outlines
 * behind the text: what is void or superseded cannot be taken for valid, and stays legible.
 */
export function setStamp(
  word: string,
  sheet: Sheet,
  { theme, fonts }: { readonly theme: Theme; readonly fonts: FontBook },
): GroupMark {
  const text = outlinable(fonts, word.toUpperCase());
  const bold = fonts.face(face);
  const { width, height } = sheet;
  const diagonal = Math.hypot(width, height);
  const natural = outlineText(bold, measure, text).width;
  const size = Math.min(largest, (measure * diagonal * diagonalShare) / natural);
  const outlined = outlineText(bold, size, text);
  const turn = turnedAbout(
    { x: outlined.width / 2, y: (-bold.capHeight * size) / 2 },
    Math.atan2(height, width),
  );
  const path = outlined.path.map((step) => turnStep(step, turn));
  const stroke = {
    width: lineWidth,
    colour: between(theme.colour.hatch, theme.colour.fill),
  };
  return {
    kind: 'group',
    x: width / 2,
    y: height / 2,
    artifact: 'pagination',
    marks: [{ kind: 'shape', path, stroke }],
  };
}

/** Light enough to read on, dark enough to be copied. */
function between(one: Colour, other: Colour): Colour {
  return [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2, (one[2] + other[2]) / 2];
}

/** The word without characters that the face has no outline for. */
function outlinable(fonts: FontBook, word: string): string {
  const lacking = new Set(missingCharacters(fonts, face, word));
  const own = fonts.face(face);
  return Array.from(word)
    .filter((letter) => !lacking.has(letter) && own.has(letter.codePointAt(0) ?? 0))
    .join('');
}

type Turn = (x: number, y: number) => readonly [number, number];

/** Moves a centre to the origin and turns counterclockwise as seen on paper (y down). */
function turnedAbout(
  centre: { readonly x: number; readonly y: number },
  angle: number,
): Turn {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (x, y) => {
    const [dx, dy] = [x - centre.x, y - centre.y];
    return [dx * cos + dy * sin, dy * cos - dx * sin];
  };
}

function turnStep(step: PathStep, turn: Turn): PathStep {
  switch (step[0]) {
    case 'M':
      return ['M', ...turn(step[1], step[2])];
    case 'L':
      return ['L', ...turn(step[1], step[2])];
    case 'C':
      return [
        'C',
        ...turn(step[1], step[2]),
        ...turn(step[3], step[4]),
        ...turn(step[5], step[6]),
      ];
    case 'Z':
      return step;
  }
}
