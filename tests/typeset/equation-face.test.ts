import { describe, expect, test } from 'vitest';
import { faceName } from '../../src/typeset/equation-face.ts';

describe('the face of a family', () => {
  test.each([
    ['Main', false, false, 'KaTeX_Main-Regular'],
    ['Main', true, true, 'KaTeX_Main-BoldItalic'],
    ['Math', false, true, 'KaTeX_Math-Italic'],
    ['Math', false, false, 'KaTeX_Math-Italic'],
    ['AMS', true, false, 'KaTeX_AMS-Regular'],
    ['SansSerif', true, true, 'KaTeX_SansSerif-Italic'],
    ['Fraktur', true, true, 'KaTeX_Fraktur-Bold'],
    ['Typewriter', true, true, 'KaTeX_Typewriter-Regular'],
    ['Size3', false, false, 'KaTeX_Size3-Regular'],
  ] as const)('%s, bold %s, italic %s is %s', (family, bold, italic, name) => {
    expect(faceName(family, bold, italic)).toBe(name);
  });
});
