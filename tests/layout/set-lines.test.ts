import { describe, expect, test } from 'vitest';
import { elementNode } from '../../src/layout/element-node.ts';
import { placeLine, setLines, textNode } from '../../src/layout/set-lines.ts';
import { bodyBase } from '../../src/layout/text-look.ts';
import { defaultTheme } from '../../src/theme/index.ts';
import { letter, link, math, quotient, text, words } from '../support/blocks.ts';
import { openSetting } from '../support/layout-setting.ts';

const setting = openSetting();
const base = bodyBase(defaultTheme);
const { leading } = base;
const own = elementNode('P');
const fit = { width: 300, align: 'justified' } as const;

describe('setLines', () => {
  test('sets nothing as no lines', () => {
    expect(setLines([], base, fit, setting)).toEqual([]);
  });

  test('sets a narrow column ragged, though asked to justify', () => {
    const lines = setLines([text(words(60))], base, { ...fit, width: 150 }, setting);
    const widths = lines.slice(0, -1).map(({ width }) => width);
    expect(Math.min(...widths)).toBeLessThan(149);
  });
});

describe('placeLine', () => {
  test('gives a line of text its leading', () => {
    const [line] = setLines([text('Words.')], base, fit, setting);
    expect(placeLine(line!, leading, { own }).height).toBeCloseTo(leading, 9);
  });

  test('gives a small equation no more, and a tall fraction the room that it needs', () => {
    const [small] = setLines([math(letter('M'))], base, fit, setting);
    expect(placeLine(small!, leading, { own }).height).toBeCloseTo(leading, 9);
    const tower = quotient(
      quotient(letter('M'), letter('S')),
      quotient(letter('F'), letter('b')),
    );
    const [tall] = setLines([math(tower)], base, fit, setting);
    const placed = placeLine(tall!, leading, { own });
    expect(placed.height).toBeGreaterThan(leading);
    expect(placed.baseline).toBeGreaterThanOrEqual(tall!.above);
    expect(placed.height - placed.baseline).toBeGreaterThanOrEqual(tall!.below);
  });
});

describe('textNode', () => {
  test('holds links and formulas in the order of the text', () => {
    const content = [text('a '), math(letter('M')), text(' b '), link('part', 'c')];
    const node = textNode('P', setLines(content, base, fit, setting));
    expect(node.children.map(({ type }) => type)).toEqual(['Formula', 'Link']);
    expect(node.children[0]!.alternate).toBe('M');
  });
});
