import { describe, expect, test } from 'vitest';
import { createTypesetter } from '../../src/typeset/index.ts';
import { ownFonts } from '../support/own-fonts.ts';
import { characters, draw } from '../support/equations.ts';

describe('the typesetter', () => {
  test('remembers a drawing by its TeX and all its options', () => {
    const { typeset } = createTypesetter(ownFonts);
    const first = typeset('x+1', { size: 10 });
    expect(typeset('x+1', { size: 10 })).toBe(first);
    expect(typeset('x+1', { size: 11 })).not.toBe(first);
    expect(typeset('x+1', { size: 10, display: true })).not.toBe(first);
    expect(typeset('x+1', { size: 10, alternate: 'x plus 1' })).not.toBe(first);
  });

  test('forgets the oldest and sets it again the same', () => {
    const { typeset } = createTypesetter(ownFonts, 1);
    const first = typeset('x', { size: 10 });
    typeset('y', { size: 10 });
    const again = typeset('x', { size: 10 });
    expect(again).not.toBe(first);
    expect(again).toEqual(first);
  });

  test('passes the spoken text through and groups the marks under the linear text', () => {
    const { typeset } = createTypesetter(ownFonts);
    const options = { size: 10, alternate: 'a half', actualText: '1/2' };
    const drawing = typeset('\\frac{1}{2}', options);
    expect(drawing.alternate).toBe('a half');
    expect(drawing.marks).toHaveLength(1);
    expect(drawing.marks[0]).toMatchObject({
      kind: 'group',
      x: 0,
      y: 0,
      actualText: '1/2',
    });
    expect(characters(drawing).map(({ text }) => text)).toEqual(['1', '2']);
  });

  test('sets expressions that differ in digits alone on the same places', () => {
    const places = (tex: string): readonly unknown[] =>
      characters(draw(tex)).map(({ x, y, size }) => [x, y, size]);
    expect(places('R_1=\\frac{12.5\\cdot 6.0^2}{8}')).toEqual(
      places('R_7=\\frac{98.4\\cdot 3.1^5}{2}'),
    );
  });
});
