import { describe, expect, test } from 'vitest';
import { heading, paragraph, words } from '../../support/blocks.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { linesOf, runsOf, visitMarks } from '../../support/read-pages.ts';

describe('setHeading', () => {
  test('takes at least two lines of its text with it to a page', () => {
    for (let before = 36; before < 46; before += 1) {
      const { pages } = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        heading(2, 'Internal forces'),
        paragraph(words(120)),
      );
      const page = pages.find((of) =>
        runsOf(of).some(({ text }) => text === 'Internal forces'),
      )!;
      const lines = linesOf(page);
      const at = lines.findIndex(([first]) => first!.text === 'Internal forces');
      expect(lines.length - 1 - at).toBeGreaterThanOrEqual(2);
    }
  });

  test('is larger the higher its level', () => {
    const { pages } = layOutBlocks(
      heading(1, 'One'),
      heading(2, 'Two'),
      heading(3, 'Three'),
    );
    const sizes = runsOf(pages[0]!)
      .filter(({ artifact }) => artifact === undefined)
      .map(({ size }) => size);
    expect([...sizes].sort((a, b) => b - a)).toEqual(sizes);
    expect(new Set(sizes).size).toBe(3);
  });

  test('wraps without hyphens', () => {
    const { pages } = layOutBlocks(heading(1, words(30)));
    for (const line of linesOf(pages[0]!))
      expect(line.at(-1)!.text.trimEnd()).not.toMatch(/[-\u00ad]$/);
  });

  test('is where its anchor leads', () => {
    const { pages, sheets } = layOutBlocks(
      paragraph(words(30)),
      heading(2, 'Here', { anchor: 'here' }),
    );
    expect(sheets.here).toBe(1);
    const places: number[] = [];
    visitMarks(pages[0]!.drawing.marks, (mark, { y }) => {
      if (mark.kind === 'anchor' && mark.name === 'here') places.push(y + mark.y);
    });
    const { y: baseline, size } = runsOf(pages[0]!).find(
      ({ text }) => text === 'Here',
    )!;
    expect(places).toHaveLength(1);
    expect(baseline - places[0]!).toBeGreaterThan(size * 0.7);
    expect(baseline - places[0]!).toBeLessThan(size * 1.3);
  });

  test('holds its anchor though it has no words', () => {
    const { sheets } = layOutBlocks(
      heading(2, [], { anchor: 'empty' }),
      paragraph('Text.'),
    );
    expect(sheets.empty).toBe(1);
  });
});
