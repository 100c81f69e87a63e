import { describe, expect, test } from 'vitest';
import {
  paragraph,
  part,
  report,
  sheetNumber,
  text,
  words,
} from '../../support/blocks.ts';
import { layOutBlocks, layOutReport } from '../../support/layout-tools.ts';
import { linesOf, linksOf, runsOf, shapesOf } from '../../support/read-pages.ts';
import { defaultTheme } from '../../../src/theme/index.ts';

const { size, small, leading } = defaultTheme.text;
const left = 72;
const right = left + 420;

describe('setParagraph', () => {
  test('justifies body text between the edges of the column', () => {
    const [page] = layOutBlocks(paragraph(words(80))).pages;
    const lines = linesOf(page!);
    expect(lines.length).toBeGreaterThan(4);
    for (const line of lines) expect(line[0]!.x).toBe(left);
    for (const line of lines.slice(0, -1))
      expect(line.at(-1)!.right).toBeCloseTo(right, 6);
    const ys = lines.map((line) => line[0]!.y);
    for (const [index, y] of ys.entries())
      if (index > 0) expect(y - ys[index - 1]!).toBeCloseTo(leading, 6);
  });

  test('sets leads, notes and cautions ragged', () => {
    for (const style of ['lead', 'note', 'caution', 'field'] as const) {
      const [page] = layOutBlocks(paragraph(words(80), { style })).pages;
      const ends = linesOf(page!).map((line) => line.at(-1)!.right);
      expect(new Set(ends.map((end) => end.toFixed(2))).size).toBeGreaterThan(2);
      expect(Math.max(...ends)).toBeLessThanOrEqual(right + 1e-6);
    }
  });

  test('sets each style in its size', () => {
    const sizeOf = (style: Parameters<typeof paragraph>[1] & object): number =>
      runsOf(layOutBlocks(paragraph('Word', style)).pages[0]!)[0]!.size;
    expect(sizeOf({ style: 'body' })).toBe(size);
    expect(sizeOf({ style: 'small' })).toBe(small);
    expect(sizeOf({ style: 'note' })).toBe(small);
    expect(sizeOf({ style: 'lead' })).toBeGreaterThan(size);
    expect(sizeOf({ style: 'title' })).toBeGreaterThan(defaultTheme.text.h1);
  });

  test('marks a caution by a bar at its left, as no part of the text', () => {
    const [page] = layOutBlocks(paragraph(words(40), { style: 'caution' })).pages;
    const bars = shapesOf(page!).filter(({ artifact }) => artifact === 'layout');
    expect(bars).toHaveLength(1);
    expect(runsOf(page!)[0]!.x).toBeGreaterThan(left);
  });

  test('sets inline styles in their faces', () => {
    const content = [
      text('a '),
      text('b ', 'emphasis'),
      text('c ', 'strong'),
      text('d ', 'small-caps'),
      text('e ', 'muted'),
      text('f', 'code'),
    ];
    const [page] = layOutBlocks(paragraph(content)).pages;
    const runs = runsOf(page!).filter(({ artifact }) => artifact === undefined);
    expect(runs.map(({ text: of, face }) => [of.trim(), face])).toEqual([
      ['a', 'text'],
      ['b', 'text-italic'],
      ['c', 'text-semibold'],
      ['d', 'text'],
      ['e', 'text'],
      ['f', 'KaTeX_Typewriter-Regular'],
    ]);
  });

  test('stands a margin note beside its first line, in the margin column', () => {
    const note = [text('Sheet '), sheetNumber('part'), text(' and words that wrap')];
    const [page] = layOutBlocks(paragraph(words(60), { margin: note })).pages;
    const runs = runsOf(page!).filter(({ artifact }) => artifact === undefined);
    const notes = runs.filter(({ x }) => x > right);
    expect(notes[0]!.y).toBeCloseTo(runs[0]!.y, 6);
    expect(Math.max(...notes.map((run) => run.right))).toBeLessThanOrEqual(
      612 - 36 + 1e-6,
    );
    expect(linksOf(page!)).toHaveLength(1);
  });

  test('moves a note down where the one above is in its way, and no note off the page', () => {
    const note = { margin: [text(words(12))], style: 'field' } as const;
    const { pages } = layOutBlocks(
      ...Array.from({ length: 42 }, (_, index) =>
        index === 5 || index === 6 || index > 39
          ? paragraph('Line.', note)
          : paragraph('Line.', { style: 'field' }),
      ),
    );
    for (const page of pages) {
      const notes = runsOf(page)
        .filter(({ x, artifact }) => x > right && artifact === undefined)
        .map(({ y }) => y);
      for (const [index, y] of notes.entries()) {
        expect(y).toBeLessThan(792 - 66);
        if (index > 0) expect(y - notes[index - 1]!).toBeGreaterThan(8);
      }
    }
  });

  test('has no margin notes on a cover, which has no margin column', () => {
    const cover = part('Cover', [paragraph('Text', { margin: [text('note')] })], {
      look: 'cover',
    });
    const [page] = layOutReport(report([cover])).pages;
    expect(runsOf(page!).some(({ text: of }) => of === 'note')).toBe(false);
  });

  test('leaves neither the first nor the last line of a paragraph alone on a page', () => {
    for (let before = 38; before < 46; before += 1) {
      const { pages, elements } = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        paragraph(words(110)),
        paragraph(words(400)),
      );
      const long = new Set(
        elements
          .filter(({ type }) => type === 'P')
          .slice(-2)
          .map(({ id }) => id),
      );
      for (const page of pages) {
        const counts = new Map<number, number>();
        for (const [first] of linesOf(page))
          counts.set(first!.element!, (counts.get(first!.element!) ?? 0) + 1);
        for (const [element, count] of counts)
          if (long.has(element)) expect(count).toBeGreaterThan(1);
      }
    }
  });

  test('stays with what it introduces', () => {
    for (let before = 40; before < 50; before += 1) {
      const { pages } = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        paragraph('Intro:', { keepWithNext: true }),
        paragraph('Follows.'),
      );
      const pageOf = (of: string): number =>
        pages.findIndex((page) => runsOf(page).some((run) => run.text === of));
      expect(pageOf('Intro:')).toBe(pageOf('Follows.'));
    }
  });

  test('stays with what follows where it ends in a colon', () => {
    for (let before = 40; before < 50; before += 1) {
      const { pages } = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        paragraph('As follows:'),
        paragraph('Follows.'),
      );
      const pageOf = (of: string): number =>
        pages.findIndex((page) => runsOf(page).some((run) => run.text === of));
      expect(pageOf('As follows:')).toBe(pageOf('Follows.'));
    }
  });

  test('reads a hyphen at the end of a line as a soft one', () => {
    const long = 'responsibilities interconnections characterisation ';
    const [page] = layOutBlocks(paragraph(long.repeat(9))).pages;
    const ends = linesOf(page!).map((line) => line.at(-1)!.text.trimEnd().at(-1));
    expect(ends).toContain('\u00ad');
    expect(ends).not.toContain('-');
  });
});
