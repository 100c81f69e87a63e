import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wrapCode } from '../../../src/layout/blocks/listing.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { runsOf } from '../../support/read-pages.ts';

const one = (): number => 1;
const wrap = (line: string, width: number): readonly string[] =>
  wrapCode(line, width, one).map(({ text, setIn }) => ' '.repeat(setIn) + text);

describe('wrapCode', () => {
  test('leaves a line that fits as it is', () => {
    expect(wrap('loads: [dead, live]', 20)).toEqual(['loads: [dead, live]']);
    expect(wrap('', 20)).toEqual(['']);
  });

  test('breaks at a space and sets further rows in by two characters more than the line', () => {
    expect(wrap('  note: one two three four five six', 18)).toEqual([
      '  note: one two ',
      '    three four ',
      '    five six',
    ]);
  });

  test('breaks anywhere where there is no space', () => {
    expect(wrap('abcdefghij', 4)).toEqual(['abcd', '  ef', '  gh', '  ij']);
  });

  test('loses no character and keeps to the width, however wide the characters are', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 80 }),
        fc.integer({ min: 6, max: 40 }),
        (line, width) => {
          const widthOf = (character: string): number => (character > 'm' ? 1.5 : 1);
          const rows = wrapCode(line, width, widthOf);
          expect(rows.map(({ text }) => text).join('')).toBe(line);
          for (const { text, setIn } of rows) {
            const visible = Array.from(text.trimEnd());
            const own = visible.reduce((sum, character) => sum + widthOf(character), 0);
            expect(own + setIn).toBeLessThanOrEqual(width + 1.5);
          }
        },
      ),
    );
  });
});

describe('setListing', () => {
  const lines = Array.from(
    { length: 130 },
    (_, index) => `  point-${index}: { x: ${index} ft }`,
  );
  const document = layOutBlocks({ kind: 'listing', lines });

  test('numbers the lines of a file, and the numbers are no part of the text', () => {
    const runs = document.pages.flatMap((page) => runsOf(page));
    const numbers = runs
      .filter(({ artifact }) => artifact === 'layout')
      .map(({ text }) => text);
    expect(numbers).toEqual(lines.map((_, index) => String(index + 1)));
    const code = runs.filter(({ artifact }) => artifact === undefined);
    expect(code.map(({ text }) => text)).toEqual(lines);
    expect(new Set(code.map(({ face }) => face))).toEqual(
      new Set(['KaTeX_Typewriter-Regular']),
    );
  });

  test('goes on over pages as one element', () => {
    expect(document.pages.length).toBeGreaterThan(1);
    expect(document.elements.filter(({ type }) => type === 'Code')).toHaveLength(1);
  });

  test('sets letters that the typewriter face lacks, in their place', () => {
    const { pages, remarks } = layOutBlocks({
      kind: 'listing',
      lines: ['note: Östra bryggan, 3 × 2 µm'],
    });
    const words = runsOf(pages[0]!).filter(({ artifact }) => artifact === undefined);
    expect(words.map(({ text }) => text).join('')).toBe(
      'note: Östra bryggan, 3 × 2 µm',
    );
    expect(remarks).toEqual([]);
  });
});
