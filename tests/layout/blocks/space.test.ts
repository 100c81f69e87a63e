import { describe, expect, test } from 'vitest';
import { paragraph } from '../../support/blocks.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { runsOf, shapesOf } from '../../support/read-pages.ts';

const field = { style: 'field' } as const;

describe('setSpace', () => {
  test('leaves blank paper between blocks', () => {
    const yOf = (height: number): number =>
      runsOf(
        layOutBlocks(
          paragraph('a', field),
          { kind: 'space', height },
          paragraph('b', field),
        ).pages[0]!,
      ).find(({ text }) => text === 'b')!.y;
    expect(yOf(90) - yOf(40)).toBeCloseTo(50, 6);
  });

  test('outlines a space with a label, the label inside', () => {
    const [page] = layOutBlocks({ kind: 'space', height: 96, label: 'Seal' }).pages;
    const [shape] = shapesOf(page!).filter(({ artifact }) => artifact === 'layout');
    const label = runsOf(page!).find(({ text }) => text === 'Seal')!;
    const xs = shape!.mark.path.flatMap((step) =>
      step[0] === 'M' || step[0] === 'L' ? [shape!.x + step[1]] : [],
    );
    expect(label.x).toBeGreaterThan(Math.min(...xs));
    expect(label.right).toBeLessThan(Math.max(...xs));
    expect(label.y).toBeLessThan(shape!.y + 96);
  });

  test('is never taller than a page', () => {
    const { pages } = layOutBlocks({ kind: 'space', height: 5000, label: 'Sketch' });
    expect(pages).toHaveLength(1);
  });
});
