import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { characters, draw, textOf, typesetter } from '../support/equations.ts';

const moment =
  'M_{Ed}=10\\cdot 6.0\\cdot\\frac{6.0}{2}+25\\cdot 2.0+12.5\\cdot 4.25+8.33\\cdot 3.1=339.6';

const sorted = (text: string): string => Array.from(text).sort().join('');

describe('an equation broken into lines', () => {
  test('stays whole where it fits, the same as unbroken', () => {
    const [line, ...others] = typesetter.typesetBroken('a=b', { size: 10, width: 300 });
    expect(others).toEqual([]);
    expect(textOf(line!)).toBe('a=b');
    expect(line!.width).toBeCloseTo(draw('a=b').width, 9);
    expect(characters(line!)).toEqual(characters(draw('a=b')));
  });

  test('keeps to its width and loses no glyph', () => {
    fc.assert(
      fc.property(fc.integer({ min: 120, max: 400 }), (width) => {
        const lines = typesetter.typesetBroken(moment, { size: 10, width });
        for (const line of lines) expect(line.width).toBeLessThanOrEqual(width + 1e-6);
        expect(sorted(lines.map(textOf).join(''))).toBe(sorted(textOf(draw(moment))));
      }),
    );
  });

  test('begins its further lines with a sign', () => {
    const [, ...further] = typesetter.typesetBroken(moment, { size: 10, width: 150 });
    expect(further.length).toBeGreaterThan(1);
    for (const line of further) expect('=+−⋅').toContain(textOf(line).charAt(0));
  });

  test('sets relations under the first relation, other signs just right of it', () => {
    const lines = typesetter.typesetBroken(moment, { size: 10, width: 150 });
    const equals = characters(lines[0]!).find(({ text }) => text === '=')!;
    const after = characters(lines[0]!).find(({ text }) => text === '1')!;
    for (const line of lines.slice(1)) {
      const [first] = characters(line);
      expect(first!.x).toBeCloseTo(first!.text === '=' ? equals.x : after.x, 6);
    }
  });

  test('indents by two ems where the relation stands in the right half', () => {
    const tex = 'aaaaaaaaaaaaaaa=b+c+d+e+f+g+h+i+j+k+l+m';
    const [, second] = typesetter.typesetBroken(tex, { size: 10, width: 150 });
    expect(characters(second!)[0]!.x).toBeCloseTo(20, 6);
  });

  test('breaks within brackets only where it must', () => {
    const brackets = 'a=(1+2+3+4)+(5+6+7+8)';
    const [first, second] = typesetter.typesetBroken(brackets, {
      size: 10,
      width: 130,
    });
    expect(textOf(first!)).toBe('a=(1+2+3+4)');
    expect(textOf(second!)).toBe('+(5+6+7+8)');
    const long = 'a=\\left(\\frac{1}{2}+2+3+4+5+6+7+8\\right)';
    const lines = typesetter.typesetBroken(long, { size: 10, width: 100 });
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line.width).toBeLessThanOrEqual(100);
  });

  test('what offers no break stays too wide, and shows it by its width', () => {
    const [only, ...others] = typesetter.typesetBroken('\\frac{a+b+c+d+e}{2}', {
      size: 10,
      width: 30,
    });
    expect(others).toEqual([]);
    expect(only!.width).toBeGreaterThan(30);
  });

  test('says the whole equation with its first line', () => {
    const lines = typesetter.typesetBroken(moment, {
      size: 10,
      width: 150,
      actualText: 'M = …',
      alternate: 'M equals …',
    });
    expect(lines.map(({ alternate }) => alternate)).toEqual([
      'M equals …',
      ...lines.slice(1).map(() => undefined),
    ]);
    expect(lines.map(({ marks }) => marks.length)).toEqual(lines.map(() => 1));
    expect(lines.map(({ marks }) => marks[0])).toMatchObject([
      { kind: 'group', actualText: 'M = …' },
      ...lines.slice(1).map(() => ({ kind: 'group', actualText: '' })),
    ]);
  });

  test('honours the line breaks of the TeX', () => {
    const lines = typesetter.typesetBroken('a=b\\\\c=d', { size: 10, width: 300 });
    expect(lines.map(textOf)).toEqual(['a=b', 'c=d']);
  });

  test('refuses a tag', () => {
    const options = { size: 10, width: 300 };
    expect(() => typesetter.typesetBroken('a=b\\tag{1}', options)).toThrow(/tag/);
  });
});
