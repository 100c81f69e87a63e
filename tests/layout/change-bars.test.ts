import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/report/index.ts';
import {
  foot,
  headRow,
  paragraph,
  part,
  report,
  row,
  table,
} from '../support/blocks.ts';
import { layOutReport } from '../support/layout-tools.ts';
import { footOf, runsOf, shapesOf } from '../support/read-pages.ts';
import type { Page } from '../../src/layout/index.ts';

const textLeft = 72;
const pageOf = (blocks: readonly Block[], changeMark?: string): Page =>
  layOutReport(
    report([part('Part', blocks)], changeMark === undefined ? {} : { changeMark }),
  ).pages[0]!;

/** Upright lines left of the text, from the top down: what is drawn beside what changed. */
const barsOf = (page: Page): { top: number; foot: number }[] =>
  shapesOf(page).flatMap(({ mark, x, y, artifact }) => {
    const [from, to, ...more] = mark.path;
    const isBar =
      from?.[0] === 'M' && to?.[0] === 'L' && from[1] === to[1] && more.length === 0;
    return isBar && artifact === 'layout' && x + from[1] < textLeft
      ? [{ top: y + from[2], foot: y + to[2] }]
      : [];
  });

describe('change bars', () => {
  const changed = { ...paragraph('Changed.'), isChanged: true };

  test('stand beside what differs, in the margin and as no part of the text', () => {
    const page = pageOf([paragraph('Same.'), changed, paragraph('Same again.')], 'B');
    const [bar, ...others] = barsOf(page);
    expect(others).toEqual([]);
    const line = runsOf(page).find(({ text }) => text.startsWith('Changed'))!;
    expect(bar!.top).toBeLessThan(line.y);
    expect(bar!.foot).toBeGreaterThan(line.y);
    const after = runsOf(page).find(({ text }) => text.startsWith('Same again'))!;
    expect(bar!.foot).toBeLessThan(after.y - 7);
  });

  test('are one bar for neighbours and two where something stands between', () => {
    expect(barsOf(pageOf([changed, changed]))).toHaveLength(1);
    expect(barsOf(pageOf([changed, paragraph('Same.'), changed]))).toHaveLength(2);
  });

  test('stand beside single rows of a table and lines of a listing', () => {
    const rows = table(['left'], {
      head: [headRow('Load')],
      body: [row('P1'), { ...row('P2'), isChanged: true }, row('P3')],
    });
    expect(barsOf(pageOf([rows]))).toHaveLength(1);
    const lines = ['a', 'b', 'c', 'd'];
    expect(barsOf(pageOf([{ kind: 'listing', lines, changed: [0, 2] }]))).toHaveLength(
      2,
    );
  });

  test('carry the mark once a sheet, and the sheet carries it in its foot', () => {
    const page = pageOf([changed, paragraph('Same.'), changed], 'B');
    const marks = runsOf(page).filter(({ text }) => text === 'B');
    expect(marks.map(({ artifact }) => artifact)).toEqual(['layout', 'pagination']);
    expect(marks[0]!.right).toBeLessThan(textLeft - 9);
    expect(footOf(page)).toContain(`${foot.revisionDate ?? ''} B`);
  });

  test('and their mark are on no sheet where nothing differs', () => {
    const page = pageOf([paragraph('Same.')], 'B');
    expect(barsOf(page)).toEqual([]);
    expect(runsOf(page).filter(({ text }) => text === 'B')).toEqual([]);
  });
});
