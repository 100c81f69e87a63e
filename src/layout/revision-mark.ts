import type { Mark } from '../drawing/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Words } from './words.ts';

/** A revision's mark drawn: a triangle with its letter in it, from its lower left corner. */
export interface RevisionMark {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

interface Look {
  readonly theme: Theme;
  readonly words: Words;
  /** Height of the triangle, points. */
  readonly height: number;
}

// Letter and lines as shares of the triangle's height.
const letterShare = 0.47;
const capShare = 0.7;
const footShare = 0.11;
const lineWidth = 0.7;
const widest = 2.4;

/**
 * The mark of a revision as drawings carry it: a triangle on its base with the mark inside. It is as
 * wide as it has to be, and beyond some width the letters become smaller.
 */
export function drawRevisionMark(mark: string, look: Look): RevisionMark {
  const { theme, words, height } = look;
  const { ink: colour } = theme.colour;
  const setIn = (size: number): ReturnType<ReturnType<Words['inLook']>> =>
    words.inLook({ face: 'text-semibold', size, colour })(mark);
  const size = height * letterShare;
  const natural = setIn(size);
  // A line at the letters' top is this share of the base.
  const topShare = 1 - footShare - letterShare * capShare;
  const equilateral = (height * 2) / Math.sqrt(3);
  const wish = (natural.width + lineWidth * 2) / topShare;
  const width = Math.min(Math.max(equilateral, wish), height * widest);
  const room = width * topShare - lineWidth * 2;
  const letters = natural.width > room ? setIn((size * room) / natural.width) : natural;
  return {
    width,
    height,
    marks: [
      {
        kind: 'shape',
        path: [['M', 0, 0], ['L', width, 0], ['L', width / 2, -height], ['Z']],
        stroke: { width: lineWidth, colour, join: 'round' },
      },
      {
        kind: 'group',
        x: (width - letters.width) / 2,
        y: -height * footShare,
        marks: letters.marks,
      },
    ],
  };
}
