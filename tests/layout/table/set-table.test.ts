import { describe, expect, test } from 'vitest';
import type { Page } from '../../../src/layout/index.ts';
import {
  cell,
  headRow,
  paragraph,
  row,
  table,
  text,
  words,
} from '../../support/blocks.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { runsOf, shapesOf, textOf, treeOf } from '../../support/read-pages.ts';
import type { ReadRun } from '../../support/read-pages.ts';

const has = (page: Page, words_: string): boolean =>
  runsOf(page).some((run) => run.text.trim() === words_);
const find = (page: Page, words_: string): ReadRun =>
  runsOf(page).find((run) => run.text.trim() === words_)!;

const textLeft = 72;
const textRight = 72 + 420;

describe('setTable', () => {
  const results = table(['left', 'decimal', 'right', 'centre'], {
    head: [
      headRow('Member', 'Shear', 'Moment', 'Check'),
      headRow('', 'kip', 'kip·ft', ''),
    ],
    body: [
      row('B1', '8.4', '1,250', 'OK'),
      row('B2', '12.25', '36', 'not OK'),
      { ...row('B3', '7', '4', 'OK'), isRuled: true },
    ],
  });
  const page = layOutBlocks(results).pages[0]!;

  test('stands cells of a row on one baseline, and rows below each other', () => {
    const [first, second] = [find(page, 'B1'), find(page, 'B2')];
    for (const words_ of ['8.4', '1,250'])
      expect(find(page, words_).y).toBeCloseTo(first.y, 6);
    expect(second.y).toBeGreaterThan(first.y + 10);
  });

  test('lines up the points of a decimal column', () => {
    const whole = (words_: string): number => {
      const run = find(page, words_);
      const digit =
        (run.right - run.x) / (words_.includes('.') ? words_.length - 0.5 : 1);
      const places = words_.split('.')[0]!.length;
      return run.x + places * digit;
    };
    expect(whole('8.4')).toBeCloseTo(whole('12.25'), 0);
    expect(find(page, '7').right).toBeCloseTo(whole('8.4'), 0);
  });

  test('ends right columns and their heads at one edge', () => {
    const edge = find(page, 'Moment').right;
    for (const words_ of ['kip·ft', '1,250', '36', '4'])
      expect(find(page, words_).right).toBeCloseTo(edge, 6);
  });

  test('centres in a centred column', () => {
    const middle = (words_: string): number => {
      const run = find(page, words_);
      return (run.x + run.right) / 2;
    };
    expect(middle('OK')).toBeCloseTo(middle('not OK'), 6);
  });

  test('rules above, below the head, above a set-off row and at the foot, as no part of the text', () => {
    const rules = shapesOf(page).filter(({ artifact }) => artifact === 'layout');
    expect(rules).toHaveLength(4);
    expect(rules.map(({ mark }) => mark.stroke!.width).sort()).toEqual([
      0.5, 0.5, 0.8, 0.8,
    ]);
  });

  test('has no rules where it is plain', () => {
    const plain = layOutBlocks(
      table(['left'], { body: [row('a')] }, { style: 'plain' }),
    );
    expect(
      shapesOf(plain.pages[0]!).filter(({ artifact }) => artifact === 'layout'),
    ).toEqual([]);
  });

  test('wraps the widest column and keeps the others on one line', () => {
    const wide = table(['left', 'left', 'decimal'], {
      head: [headRow('Mark', 'Why', 'Value')],
      body: [row('B1 Ledger', words(60), '12.5 kip')],
    });
    const { pages } = layOutBlocks(wide);
    const runs = runsOf(pages[0]!).filter(({ artifact }) => artifact === undefined);
    expect(runs.filter(({ text: of }) => of === 'B1 Ledger')).toHaveLength(1);
    expect(runs.filter(({ text: of }) => of === '12.5 kip')).toHaveLength(1);
    expect(Math.max(...runs.map(({ right }) => right))).toBeLessThanOrEqual(
      textRight + 1e-6,
    );
  });

  test('breaks words rather than leave the column where there are too many columns', () => {
    const count = 16;
    const many = table(
      Array.from({ length: count }, () => 'left'),
      {
        head: [headRow(...Array.from({ length: count }, () => 'Combination'))],
        body: [row(...Array.from({ length: count }, () => 'statically'))],
      },
    );
    for (const { right, artifact } of runsOf(layOutBlocks(many).pages[0]!))
      if (artifact === undefined) expect(right).toBeLessThanOrEqual(textRight + 1e-6);
  });

  test('repeats its head on the next page, as no part of the text', () => {
    const body = Array.from({ length: 60 }, (_, index) =>
      row(`row-${index}`, String(index)),
    );
    const document = layOutBlocks(
      table(['left', 'right'], { head: [headRow('Case', 'Sheet')], body }),
    );
    expect(document.pages.length).toBeGreaterThan(1);
    const heads = document.pages.map((of) => find(of, 'Case'));
    expect(heads.map(({ artifact }) => artifact)).toEqual([
      undefined,
      ...document.pages.slice(1).map(() => 'layout'),
    ]);
    expect(document.elements.filter(({ type }) => type === 'TH')).toHaveLength(2);
    const words_ = document.pages.map(textOf).join(' ');
    for (const { cells } of body) {
      const [first] = cells[0]!.content;
      expect(words_).toContain(first!.kind === 'text' ? first!.text : '');
    }
  });

  test('never leaves a row alone on a page', () => {
    for (let before = 30; before < 45; before += 1) {
      const { pages } = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        table(['left'], {
          head: [headRow('Head')],
          body: Array.from({ length: 12 }, (_, index) => row(`row-${index}`)),
        }),
      );
      for (const page_ of pages) {
        const rows = runsOf(page_).filter(({ text: of }) =>
          of.startsWith('row-'),
        ).length;
        expect(rows).not.toBe(1);
      }
    }
  });

  test('sets cells over several columns across them', () => {
    const spanned = table(['left', 'right', 'right'], {
      head: [
        {
          cells: [
            cell('', { isHead: true }),
            cell('Both of these', { isHead: true, colSpan: 2 }),
          ],
        },
        headRow('Mark', 'V', 'M'),
      ],
      body: [row('B1', '1', '2')],
    });
    const document = layOutBlocks(spanned);
    const both = find(document.pages[0]!, 'Both of these');
    const [v, m] = [find(document.pages[0]!, 'V'), find(document.pages[0]!, 'M')];
    expect(both.x).toBeLessThan(v.x);
    expect(both.right).toBeLessThanOrEqual(m.right + 1e-6);
    const element = document.elements[both.element!]!;
    expect(element).toMatchObject({ type: 'TH', colSpan: 2, scope: 'Column' });
  });

  test('tags cells so that each knows its head', () => {
    const { elements } = layOutBlocks(results);
    const heads = elements.filter(({ type }) => type === 'TH');
    expect(heads.every(({ scope }) => scope === 'Column')).toBe(true);
    const plain = layOutBlocks(
      table(
        ['left', 'left'],
        { body: [row('Span', '21 ft'), row('Load')] },
        { style: 'plain' },
      ),
    );
    expect(treeOf(plain).split('\n').slice(2)).toEqual([
      '    Table',
      '      TBody',
      '        TR',
      '          TH',
      '          TD',
      '        TR',
      '          TH',
      '          TD',
    ]);
    expect(plain.elements.find(({ type }) => type === 'TH')!.scope).toBe('Row');
  });

  test('tags a table of heads alone without a head, which would want a body', () => {
    const { elements } = layOutBlocks(
      table(['left'], { head: [headRow('A')], body: [] }),
    );
    expect(elements.some(({ type }) => type === 'THead')).toBe(false);
  });

  test('keeps its caption above it and on its page', () => {
    for (let before = 36; before < 48; before += 1) {
      const document = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        table(
          ['left'],
          { body: [row('first'), row('second')] },
          { caption: [text('Caption')] },
        ),
      );
      const pageOf = (words_: string): number =>
        document.pages.findIndex((of) => has(of, words_));
      expect(pageOf('Caption')).toBe(pageOf('first'));
    }
  });

  test('splits a row that is taller than a page between its lines', () => {
    const tall = table(['left', 'left'], {
      body: [row('a'), row('b', words(2200)), row('c', 'd')],
    });
    const { pages } = layOutBlocks(tall);
    expect(pages.length).toBeGreaterThan(1);
    for (const page_ of pages)
      for (const { y, artifact } of runsOf(page_))
        if (artifact === undefined) expect(y).toBeLessThanOrEqual(792 - 66);
  });

  test('begins at the left edge of the text', () => {
    expect(find(page, 'B1').x).toBe(textLeft);
  });
});

test('a row that heads others is never the last on its page', () => {
  // Forty rows before and after: wherever the page ends, the head goes with the row below it.
  for (let before = 28; before < 44; before += 1) {
    const body = [
      ...Array.from({ length: before }, (_, index) => row(`a${index}`)),
      { ...row('Head'), headsRows: true },
      ...Array.from({ length: 20 }, (_, index) => row(`b${index}`)),
    ];
    const { pages } = layOutBlocks(table(['left'], { head: [headRow('Load')], body }));
    const [page] = pages.filter((one) => has(one, 'Head'));
    expect(has(page!, 'b0'), `${before} rows above`).toBe(true);
  }
});
