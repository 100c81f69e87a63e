import { describe, expect, test } from 'vitest';
import { list, paragraph, words } from '../../support/blocks.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { runsOf } from '../../support/read-pages.ts';
import type { Block } from '../../../src/report/index.ts';
import type { ReadRun } from '../../support/read-pages.ts';

const runs = (...blocks: readonly Block[]): readonly ReadRun[] =>
  runsOf(layOutBlocks(...blocks).pages[0]!).filter(
    ({ artifact }) => artifact === undefined,
  );

describe('setList', () => {
  test('stands a bullet on the baseline of each item and the text to its right', () => {
    const [bullet, item] = runs(list(['one', 'two']));
    expect(bullet!.text).toBe('•');
    expect(bullet!.y).toBe(item!.y);
    expect(item!.x).toBeGreaterThan(bullet!.right);
  });

  test('numbers an ordered list, points under each other', () => {
    const labels = runs(
      list(
        Array.from({ length: 11 }, () => 'item'),
        true,
      ),
    ).filter(({ text }) => /^\d+\.$/.test(text));
    expect(labels.map(({ text }) => text)).toEqual(
      Array.from({ length: 11 }, (_, index) => `${index + 1}.`),
    );
    for (const { right } of labels) expect(right).toBeCloseTo(labels[0]!.right, 6);
  });

  test('sets further lines and blocks of an item under its first', () => {
    const of = runs(list([[paragraph(words(50)), paragraph('Second.')]]));
    const [, first, ...others] = of;
    for (const { x } of others) expect(x).toBeCloseTo(first!.x, 6);
  });

  test('sets a nested list further in', () => {
    const of = runs(list([[paragraph('outer'), list(['inner'])]]));
    const [outer, inner] = ['outer', 'inner'].map((text) =>
      of.find((run) => run.text === text)!,
    );
    expect(inner!.x).toBeGreaterThan(outer!.x);
  });
});
