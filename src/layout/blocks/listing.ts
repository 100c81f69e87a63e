import type { Block } from '../../report/index.ts';
import { neverBreak } from '../band.ts';
import type { Band, Piece } from '../band.ts';
import { elementNode } from '../element-node.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { codeFace } from '../text-look.ts';

type Listing = Extract<Block, { kind: 'listing' }>;

const size = 7.6;
const leading = 9.8;
const baseline = leading * 0.74;
const numberLook = { face: 'text', size: 6.4, features: ['tnum'] } as const;
const numberGap = 8;
const hanging = 2;
const tabStop = 2;
const gap = 6;

/**
 * Sets the lines of a file as they stand there, numbered in small muted figures. A line longer
 * than the column goes on below, set in by two characters and without a number.
 */
export function setListing(block: Listing, column: Column, setting: Setting): SetBlock {
  const { theme, words } = setting;
  const { ink: colour, muted } = theme.colour;
  const setNumber = words.inLook({ ...numberLook, colour: muted });
  const setCode = words.inLook({ face: codeFace, size, colour });
  const widthOf: WidthOf = (character) => setCode(character).width;
  const gutter = setNumber(String(block.lines.length)).width;
  const left = column.x + gutter + numberGap;
  const width = column.width - gutter - numberGap;
  const code = elementNode('Code');
  const changed = new Set(block.changed);
  const bands = block.lines.flatMap((line, index): readonly Band[] => {
    const number = setNumber(String(index + 1));
    const x = column.x + gutter - number.width;
    const label: Piece = { of: 'layout', x, y: baseline, marks: number.marks };
    return wrapCode(expandTabs(line), width, widthOf).map((row, rowIndex): Band => {
      const text: Piece = {
        of: code,
        x: left + row.setIn * widthOf(' '),
        y: baseline,
        marks: setCode(row.text).marks,
      };
      return {
        height: leading,
        baseline,
        above: 0,
        below: 0,
        breakBefore: rowIndex > 0 ? neverBreak : 0,
        pieces: rowIndex === 0 ? [label, text] : [text],
        ...(changed.has(index) ? { isChanged: true } : {}),
      };
    });
  });
  return { bands: spaced(bands), nodes: [elementNode('P', [code])] };
}

function spaced(bands: readonly Band[]): readonly Band[] {
  return bands.map((band, index) => ({
    ...band,
    above: index === 0 ? gap : 0,
    below: index === bands.length - 1 ? gap : 0,
  }));
}

/** How wide a character is, points. */
export type WidthOf = (character: string) => number;

/** A row of a wrapped line, and how many characters it is set in from the line's beginning. */
export interface CodeRow {
  readonly text: string;
  readonly setIn: number;
}

/**
 * Splits a line into rows no wider than `width`, at a space where there is one in the second half
 * of the row. Further rows are set in by two characters more than the line's own indentation.
 */
export function wrapCode(
  line: string,
  width: number,
  widthOf: WidthOf,
): readonly CodeRow[] {
  const characters = Array.from(line);
  const own = /^ */u.exec(line)?.[0].length ?? 0;
  const space = widthOf(' ');
  const setIn = own * space < width / 3 ? own + hanging : hanging;
  const rows: CodeRow[] = [];
  let from = 0;
  do {
    const room = width - (from === 0 ? 0 : setIn * space);
    const to = endOfRow(characters, from, { room, widthOf });
    const text = characters.slice(from, to).join('');
    rows.push({ text, setIn: from === 0 ? 0 : setIn });
    from = to;
  } while (from < characters.length);
  return rows;
}

interface RowRoom {
  readonly room: number;
  readonly widthOf: WidthOf;
}

/** Where a row ends that begins at `from`: always at least one character on. */
function endOfRow(
  characters: readonly string[],
  from: number,
  { room, widthOf }: RowRoom,
): number {
  let used = 0;
  let atSpace: number | undefined;
  for (let index = from; index < characters.length; index += 1) {
    const character = characters[index] ?? '';
    used += widthOf(character);
    if (used > room + 1e-6 && character !== ' ')
      return atSpace ?? Math.max(index, from + 1);
    if (character === ' ' && used > room / 2) atSpace = index + 1;
  }
  return characters.length;
}

function expandTabs(line: string): string {
  return line.replaceAll('\t', ' '.repeat(tabStop));
}
