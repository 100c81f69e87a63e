import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/report/index.ts';
import { hasMarks, markBlocks } from '../../../src/report/revision/mark-blocks.ts';
import {
  equals,
  equation,
  group,
  heading,
  headRow,
  letter,
  link,
  list,
  paragraph,
  row,
  sheetNumber,
  table,
  text,
} from '../../support/blocks.ts';

/** Places of the blocks that are marked. */
const marked = (earlier: readonly Block[], later: readonly Block[]): number[] =>
  markBlocks(earlier, later).flatMap(({ isChanged }, index) =>
    isChanged === true ? [index] : [],
  );

const [a, b, c] = ['One.', 'Two.', 'Three.'].map((words) => paragraph(words));
const all = [a!, b!, c!];

describe('blocks of a part', () => {
  test('are marked where they are new or say something else', () => {
    expect(marked(all, all)).toEqual([]);
    expect(marked(all, [a!, paragraph('Two and a half.'), c!])).toEqual([1]);
    expect(marked(all, [a!, b!, paragraph('New.'), c!])).toEqual([2]);
    expect(marked([], all)).toEqual([0, 1, 2]);
  });

  test('before what was taken out are marked, and after it at the beginning', () => {
    expect(marked(all, [a!, c!])).toEqual([0]);
    expect(marked(all, [b!, c!])).toEqual([0]);
    expect(marked(all, [])).toEqual([]);
  });

  test('are not marked for numbers of sheets, equations and sections, nor for anchors', () => {
    const page = (number: number, anchor: string): readonly Block[] => [
      heading(2, `${number} Equations`, { anchor }),
      paragraph([link(anchor, 'B1'), text(' on sheet '), sheetNumber(anchor)]),
      equation([{ ...equals(letter('R'), letter('P')), margin: `(${number})` }]),
    ];
    expect(marked(page(3, 'member-B1'), page(4, 'member-B2'))).toEqual([]);
  });

  test('are marked for a note in the margin that is no number', () => {
    const with_ = (margin: string): Block =>
      equation([{ ...equals(letter('R'), letter('P')), margin }]);
    expect(marked([with_('2.3.1')], [with_('2.3.2')])).toEqual([0]);
  });
});

describe('what stands in a block', () => {
  const tableOf = (...sizes: readonly string[]): Block =>
    table(['left', 'left'], {
      head: [headRow('Load', 'Size')],
      body: sizes.map((size, index) => row(`P${index + 1}`, size)),
    });
  const rowsOf = (block: Block | undefined): number[] =>
    block?.kind === 'table'
      ? block.body.flatMap(({ isChanged }, index) =>
          isChanged === true ? [index] : [],
        )
      : [];

  test('is marked row by row in a table of the same head', () => {
    const [now] = markBlocks([tableOf('1 kip', '2 kip')], [tableOf('1 kip', '3 kip')]);
    expect(now?.isChanged).toBeUndefined();
    expect(rowsOf(now)).toEqual([1]);
  });

  test('is marked as a whole where a table has another head', () => {
    const other = table(['left'], { head: [headRow('Case')], body: [row('D')] });
    expect(marked([tableOf('1 kip')], [other])).toEqual([0]);
  });

  test('is marked line by line in a listing', () => {
    const lines = ['mark: B1', 'kind: beam', 'title: Stringer'];
    const [now] = markBlocks(
      [{ kind: 'listing', lines }],
      [{ kind: 'listing', lines: lines.with(1, 'kind: truss') }],
    );
    expect(now).toMatchObject({ changed: [1] });
  });

  test('is marked inside a group and an item of a list', () => {
    const [box] = markBlocks([group('box', [a!, b!])], [group('box', [a!, c!])]);
    expect(box).toMatchObject({ blocks: [{ ...a }, { ...c, isChanged: true }] });
    const [items] = markBlocks([list(['x', 'y'])], [list(['x', 'z'])]);
    expect(items?.isChanged).toBeUndefined();
    expect(items).toMatchObject({ items: [[{}], [{ isChanged: true }]] });
  });

  test('counts as a mark of the part', () => {
    expect(hasMarks(all)).toBe(false);
    expect(hasMarks([group('box', [{ ...a!, isChanged: true }])])).toBe(true);
    expect(hasMarks(markBlocks([tableOf('1 kip')], [tableOf('2 kip')]))).toBe(true);
    expect(hasMarks([{ kind: 'listing', lines: ['x'], changed: [0] }])).toBe(true);
    expect(hasMarks([{ kind: 'listing', lines: ['x'], changed: [] }])).toBe(false);
  });
});
