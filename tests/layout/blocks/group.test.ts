import { describe, expect, test } from 'vitest';
import { group, heading, list, paragraph, words } from '../../support/blocks.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { runsOf, shapesOf, treeOf } from '../../support/read-pages.ts';
import type { Page } from '../../../src/layout/index.ts';
import type { ReadShape } from '../../support/read-pages.ts';

const frames = (page: Page): readonly ReadShape[] =>
  shapesOf(page).filter(
    ({ artifact, mark }) => artifact === 'layout' && mark.path.at(-1)?.[0] === 'Z',
  );

/** Top and foot of a frame on its page. */
function extentOf({ mark, y }: ReadShape): readonly [number, number] {
  const ys = mark.path.flatMap((step) =>
    step[0] === 'M' || step[0] === 'L' ? [y + step[2]] : [],
  );
  return [Math.min(...ys), Math.max(...ys)];
}

const line = paragraph('Line.', { style: 'field' });

describe('setGroup', () => {
  test('rules a box round all of its blocks, wherever it stands', () => {
    for (let before = 0; before < 50; before += 7) {
      const { pages } = layOutBlocks(
        ...Array.from({ length: before }, () => line),
        group('box', [
          heading(3, 'Results'),
          paragraph(words(60)),
          list(['one', 'two']),
        ]),
        line,
      );
      const boxed = pages.filter((page) => frames(page).length > 0);
      expect(boxed).toHaveLength(1);
      const [top, foot] = extentOf(frames(boxed[0]!)[0]!);
      const runs = runsOf(boxed[0]!).filter(({ artifact }) => artifact === undefined);
      const first = runs.find(({ text }) => text === 'Results')!;
      const last = runs.find(({ text }) => text === 'two')!;
      expect(top).toBeLessThan(first.y - first.size * 0.7);
      expect(foot).toBeGreaterThan(last.y + last.size * 0.2);
      expect(top).toBeGreaterThanOrEqual(54 - 1e-6);
      expect(foot).toBeLessThanOrEqual(792 - 66 + 1e-6);
      for (const run of runs) {
        const isInside = run.y > top && run.y < foot;
        if (isInside) expect(run.right).toBeLessThanOrEqual(72 + 420 - 9);
      }
    }
  });

  test('frames a box longer than a page on every page that it reaches', () => {
    const { pages } = layOutBlocks(
      group(
        'box',
        Array.from({ length: 14 }, () => paragraph(words(90))),
      ),
    );
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      const [top, foot] = extentOf(frames(page)[0]!);
      const runs = runsOf(page).filter(({ artifact }) => artifact === undefined);
      expect(top).toBeLessThan(Math.min(...runs.map(({ y, size }) => y - size * 0.7)));
      expect(foot).toBeGreaterThan(
        Math.max(...runs.map(({ y, size }) => y + size * 0.2)),
      );
      expect(foot).toBeLessThanOrEqual(792 - 66 + 1e-6);
    }
  });

  test('keeps a group on one page', () => {
    for (let before = 36; before < 48; before += 1) {
      const { pages } = layOutBlocks(
        ...Array.from({ length: before }, () => line),
        group('keep', [paragraph('First.'), paragraph(words(60)), paragraph('Last.')]),
      );
      const pageOf = (text: string): number =>
        pages.findIndex((page) => runsOf(page).some((run) => run.text === text));
      expect(pageOf('First.')).toBe(pageOf('Last.'));
    }
  });

  test('gives a section an element but no look', () => {
    const document = layOutBlocks(group('section', [paragraph('Text.')], 'here'));
    expect(treeOf(document)).toBe('Document\n  Part\n    Sect\n      P');
    expect(document.sheets.here).toBe(1);
    expect(frames(document.pages[0]!)).toEqual([]);
  });

  test('holds its anchor though nothing stands in it', () => {
    expect(layOutBlocks(group('keep', [], 'empty')).sheets.empty).toBe(1);
  });
});
