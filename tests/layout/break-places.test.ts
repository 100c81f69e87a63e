import { describe, expect, test } from 'vitest';
import { joinsNumberAndUnit, splitWord } from '../../src/layout/break-places.ts';
import { codeFace } from '../../src/layout/text-look.ts';

const look = { face: 'text', size: 10, colour: [0, 0, 0] } as const;
const code = { ...look, face: codeFace };

describe('splitWord', () => {
  test('lets a line end behind the hyphen of a compound, a stroke between words, a dash', () => {
    expect(splitWord('self-weight', look)).toEqual(['self-', 'weight']);
    expect(splitWord('shear/bending', look)).toEqual(['shear/', 'bending']);
    expect(splitWord('loads—spans', look)).toEqual(['loads—', 'spans']);
  });

  test('keeps numbers, marks and ranges together', () => {
    for (const word of ['B-1', '3–5', '-12.5', '7-16', 'kN/m', '1/2'])
      expect(splitWord(word, look)).toEqual([word]);
  });

  test('breaks a path behind its strokes, and no file name from its ending', () => {
    expect(splitWord('members/B1.yaml', code)).toEqual(['members/', 'B1.yaml']);
  });
});

describe('joinsNumberAndUnit', () => {
  test.each([
    ['6', 'ft'],
    ['12.5', 'kip·ft,'],
    ['−36.9', 'kN'],
    ['(1,250', 'in⁴)'],
    ['20', 'kN/m²'],
    ['100', '%'],
  ])('keeps %s %s on one line', (number, unit) => {
    expect(joinsNumberAndUnit(number, unit)).toBe(true);
  });

  test.each([
    ['the', 'ft'],
    ['6', 'supports'],
    ['B1', 'is'],
    ['', 'ft'],
    ['6', ''],
    ['6', '7'],
  ])('does not tie “%s” to “%s”', (before, after) => {
    expect(joinsNumberAndUnit(before, after)).toBe(false);
  });
});
