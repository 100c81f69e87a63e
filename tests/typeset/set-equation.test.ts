import { describe, expect, test } from 'vitest';
import { characters, draw, textOf, typesetter } from '../support/equations.ts';

describe('an equation as it is written', () => {
  test('is as wide, high and deep as KaTeX says', () => {
    const drawing = draw('x');
    expect(drawing.width).toBeCloseTo(5.72, 2); // x of Math Italic
    expect(drawing.baseline).toBeCloseTo(4.3056, 4);
    expect(drawing.height).toBeCloseTo(4.3056, 4);
  });

  test('grows in proportion to its size', () => {
    const tex = '\\sqrt{\\frac{a}{b}}';
    const small = typesetter.typeset(tex, { size: 8 });
    const large = typesetter.typeset(tex, { size: 16 });
    expect(large.width).toBeCloseTo(2 * small.width, 9);
    expect(large.height).toBeCloseTo(2 * small.height, 9);
  });

  test('has large operators and limits in display style alone', () => {
    const tex = '\\sum_i';
    expect(characters(draw(tex))[1]?.face).toBe('KaTeX_Size2-Regular');
    const inline = characters(typesetter.typeset(tex, { size: 10 }));
    expect(inline[0]?.face).toBe('KaTeX_Size1-Regular');
    expect(inline[1]!.x).toBeGreaterThan(inline[0]!.x + 5);
  });

  test('takes its colour from the caller, its parts theirs from the TeX', () => {
    const drawing = typesetter.typeset('a\\textcolor{red}{b}', {
      size: 10,
      colour: [0, 0, 1],
    });
    const colours = drawing.marks.map((mark) =>
      mark.kind === 'glyphs' ? mark.colour : null,
    );
    expect(colours).toEqual([
      [0, 0, 1],
      [1, 0, 0],
    ]);
  });

  test('an empty equation is empty', () => {
    expect(draw('')).toEqual({ width: 0, height: 0, baseline: 0, marks: [] });
  });

  test('its own line breaks stack its lines, centred in display style', () => {
    const [a, b] = characters(draw('a\\\\bbb'));
    expect(b!.y - a!.y).toBeCloseTo(12, 6);
    expect(a!.x).toBeGreaterThan(b!.x);
    const [c, d] = characters(typesetter.typeset('a\\\\bbb', { size: 10 }));
    expect(c!.x).toBe(d!.x);
  });

  test('a tag stands at the right edge of its column, the equation in the middle', () => {
    const plain = draw('a=b').width;
    const drawing = typesetter.typeset('a=b\\tag{1}', {
      size: 10,
      display: true,
      width: 200,
    });
    expect(drawing.width).toBeCloseTo(200, 9);
    expect(textOf(drawing)).toBe('a=b(1)');
    const placed = characters(drawing);
    expect(placed[0]!.x).toBeCloseTo((200 - plain) / 2, 6);
    expect(placed.at(-1)!.x).toBeGreaterThan(190);
  });

  test('without a column, or in one too narrow, the tag stands two ems behind', () => {
    const plain = draw('a=b').width;
    for (const options of [{}, { width: 10 }]) {
      const drawing = typesetter.typeset('a=b\\tag{1}', {
        size: 10,
        display: true,
        ...options,
      });
      expect(characters(drawing)[3]!.x).toBeCloseTo(plain + 20, 6);
    }
  });
});
