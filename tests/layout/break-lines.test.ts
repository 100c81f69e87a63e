import { describe, expect, test } from 'vitest';
import { breakJustified } from '../../src/layout/break-lines.ts';
import { breakRagged, widestChunk } from '../../src/layout/break-ragged.ts';
import { lineItems } from '../../src/layout/line-items.ts';
import type { LineItem } from '../../src/layout/line-items.ts';
import { setLine } from '../../src/layout/set-line.ts';
import { bodyBase } from '../../src/layout/text-look.ts';
import { defaultTheme } from '../../src/theme/index.ts';
import type { Inline } from '../../src/report/index.ts';
import { letter, link, math, product, text, words } from '../support/blocks.ts';
import { openSetting } from '../support/layout-setting.ts';

const setting = openSetting();
const base = bodyBase(defaultTheme);

const itemsOf = (content: readonly Inline[]): readonly LineItem[] =>
  lineItems(content, base, setting);

/** The words of each line. */
function read(lines: ReturnType<typeof breakRagged>): readonly string[] {
  return lines.map((range) =>
    setLine(range, setting)
      .parts.flatMap(({ marks }) => marks)
      .flatMap((mark) => (mark.kind === 'glyphs' ? mark.glyphs : []))
      .map((glyph) => glyph.text)
      .join('')
      .trim(),
  );
}

describe('breakJustified', () => {
  const paragraph = [text(words(90))];

  test('fills every line but the last to the width of the column', () => {
    const ranges = breakJustified(itemsOf(paragraph), 300, setting)!;
    const widths = ranges.map((range) => setLine(range, setting).width);
    expect(widths.length).toBeGreaterThan(4);
    for (const width of widths.slice(0, -1)) expect(width).toBeCloseTo(300, 6);
    expect(widths.at(-1)!).toBeLessThanOrEqual(300 + 1e-6);
  });

  test('sets every word once and in order', () => {
    const ranges = breakJustified(itemsOf(paragraph), 300, setting)!;
    expect(read(ranges).join(' ').replaceAll('\u00ad ', '')).toBe(words(90));
  });

  test('hyphenates where whole words would gape', () => {
    const long =
      'the considerable responsibilities of a calculation notwithstanding, every supporting structure is to be characterised by a representative approximation of its interconnections';
    let broken = 0;
    let hyphens = 0;
    for (let width = 220; width <= 420; width += 10) {
      const ranges = breakJustified(itemsOf([text(long)]), width, setting);
      if (ranges === undefined) continue;
      broken += 1;
      const lines = read(ranges);
      hyphens += lines.filter((line) => line.endsWith('\u00ad')).length;
      expect(lines.join(' ').replaceAll('\u00ad ', '')).toBe(long);
      for (const range of ranges.slice(0, -1))
        expect(setLine(range, setting).width).toBeCloseTo(width, 6);
    }
    expect(broken).toBeGreaterThan(14);
    expect(hyphens).toBeGreaterThan(3);
  });

  test('gives up rather than stretch spaces beyond taste', () => {
    const content = [
      text('a '),
      text('x'.repeat(40)),
      text(' b '),
      text('y'.repeat(40)),
    ];
    expect(breakJustified(itemsOf(content), 250, setting)).toBeUndefined();
  });

  test('starts a new line at a forced break and leaves the one before ragged', () => {
    const content = [text('one two'), { kind: 'break' } as const, text('three')];
    const ranges = breakJustified(itemsOf(content), 300, setting)!;
    expect(read(ranges)).toEqual(['one two', 'three']);
    expect(setLine(ranges[0]!, setting).width).toBeLessThan(60);
  });

  test('never parts a number from its unit', () => {
    for (let width = 200; width < 320; width += 7) {
      const content = [
        text(`${words(9)} 12.5 kip·ft ${words(9)} 6 ft ${words(9)} 100 % of it`),
      ];
      const ranges = breakJustified(itemsOf(content), width, setting) ?? [];
      for (const line of read(ranges)) expect(line).not.toMatch(/(12\.5|\b6|100)$/);
    }
  });
});

describe('breakRagged', () => {
  test('takes as many words into each line as fit', () => {
    const lines = breakRagged(itemsOf([text(words(40))]), 120, setting);
    const read_ = read(lines);
    for (const [index, line] of lines.entries()) {
      const { width } = setLine(line, setting);
      expect(width).toBeLessThanOrEqual(120 + 1e-6);
      const next = read_[index + 1]?.split(' ')[0];
      if (next === undefined) continue;
      const more = itemsOf([text(` ${next}`)]).find(({ type }) => type === 'box')!;
      expect(width + base.look.size * 0.233 + more.width).toBeGreaterThan(120);
    }
    expect(read_.join(' ')).toBe(words(40));
  });

  test('hyphenates a word that is wider than the column', () => {
    const lines = read(
      breakRagged(itemsOf([text('on incompressibility')]), 45, setting),
    );
    expect(lines[0]).toMatch(/^on.*\u00ad$/);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join('').replaceAll('\u00ad', '')).toBe('on incompressibility');
  });

  test('breaks a digest anywhere rather than leave the column', () => {
    const digest = '3f786850e387550fdab836ed7e6dc881de23001b'.repeat(2);
    const ranges = breakRagged(itemsOf([text(`SHA-256 ${digest} end`)]), 100, setting);
    for (const range of ranges)
      expect(setLine(range, setting).width).toBeLessThanOrEqual(100 + 1e-6);
    expect(read(ranges).join('').replace(/ /g, '')).toBe(`SHA-256${digest}end`);
  });

  test('makes an equation smaller that is wider than the column', () => {
    const wide = product(
      letter('q'),
      letter('L'),
      letter('R', 'combined'),
      letter('M', 'max'),
    );
    const [range] = breakRagged(itemsOf([math(wide)]), 40, setting);
    expect(setLine(range!, setting).width).toBeLessThanOrEqual(40 + 1e-6);
  });

  test('keeps a link’s own words apart from those around it', () => {
    const [range] = breakRagged(
      itemsOf([text('('), link('part', 'B1'), text(').')]),
      100,
      setting,
    );
    const { parts } = setLine(range!, setting);
    expect(parts.map(({ of }) => (of === 'own' ? 'own' : of.type))).toEqual([
      'own',
      'Link',
      'own',
    ]);
  });
});

describe('widestChunk', () => {
  test('is the widest thing between two places where a line may end', () => {
    const both = widestChunk(itemsOf([text('a self-weighted b')]));
    const part = itemsOf([text('weighted')])[0]!;
    expect(both).toBeCloseTo(part.width, 6);
  });

  test('counts a number and its unit as one', () => {
    const tied = widestChunk(itemsOf([text('12 kip')]));
    const alone =
      widestChunk(itemsOf([text('12')])) + widestChunk(itemsOf([text('kip')]));
    expect(tied).toBeGreaterThan(alone);
  });
});
