import { measureText } from '../../font/index.ts';
import type { Block } from '../../report/index.ts';
import { neverBreak } from '../band.ts';
import type { Band, Piece } from '../band.ts';
import { elementNode } from '../element-node.ts';
import type { ElementNode } from '../element-node.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { codeFace } from '../text-look.ts';

type Listing = Extract<Block, { kind: 'listing' }>;

const size = 7.6;
const leading = 9.8;
const numberSize = 6.4;
const numberGap = 8;
const hanging = 2;
const tabStop = 2;
const gap = 6;

/**
 * Sets the lines of a file as they stand there, numbered in small muted figures. A line longer
 * than the column goes on below, set in by two characters and without a number.
 */
export function setListing(block: Listing, column: Column, setting: Setting): SetBlock {
  const { fonts, theme, words } = setting;
  const advance = measureText(fonts.face(codeFace), size, '0').width;
  const setNumber = words.inLook({
    face: 'text',
    size: numberSize,
    colour: theme.colour.muted,
    features: ['tnum'],
  });
  const setCode = words.inLook({ face: codeFace, size, colour: theme.colour.ink });
  const gutter = setNumber(String(block.lines.length)).width;
  const left = column.x + gutter + numberGap;
  const columns = Math.floor((column.width - gutter - numberGap) / advance);
  const code = elementNode('Code');
  const bands = block.lines.flatMap((line, index): readonly Band[] => {
    const number = setNumber(String(index + 1));
    const rows = wrapCode(expandTabs(line), columns);
    return rows.map((row, rowIndex): Band => {
      const x = left + (rowIndex === 0 ? 0 : hanging * advance);
      const baseline = leading * 0.74;
      const label: readonly Piece[] =
        rowIndex === 0
          ? [
              {
                of: 'layout',
                x: column.x + gutter - number.width,
                y: baseline,
                marks: number.marks,
              },
            ]
          : [];
      const text: Piece = { of: code, x, y: baseline, marks: setCode(row).marks };
      const breakBefore = rowIndex > 0 ? neverBreak : 0;
      const room = { height: leading, baseline, above: 0, below: 0 };
      return { ...room, breakBefore, pieces: [...label, text] };
    });
  });
  return { bands: spaced(bands), nodes: [listingNode(code)] };
}

function spaced(bands: readonly Band[]): readonly Band[] {
  return bands.map((band, index) => ({
    ...band,
    above: index === 0 ? gap : 0,
    below: index === bands.length - 1 ? gap : 0,
  }));
}

function listingNode(code: ElementNode): ElementNode {
  return elementNode('P', [code]);
}

/** Splits a line into rows of at most so many characters, at a space where there is one. */
export function wrapCode(line: string, columns: number): readonly string[] {
  const rows: string[] = [];
  let rest = [...line];
  let room = columns;
  while (rest.length > room) {
    const space = rest.slice(0, room + 1).lastIndexOf(' ');
    const isIndentOnly = rest
      .slice(0, space + 1)
      .every((character) => character === ' ');
    const at = space < room / 2 || isIndentOnly ? room : space + 1;
    rows.push(rest.slice(0, at).join(''));
    rest = rest.slice(at);
    room = columns - hanging;
  }
  return [...rows, rest.join('')];
}

function expandTabs(line: string): string {
  return line.replaceAll('\t', ' '.repeat(tabStop));
}
