import { describe, expect, test } from 'vitest';
import { readColour } from '../../src/typeset/colours.ts';

describe('colours in equations', () => {
  test.each([
    ['red', [1, 0, 0]],
    ['Navy', [0, 0, 128 / 255]],
    ['#0f0', [0, 1, 0]],
    ['#6495ed', [0x64 / 255, 0x95 / 255, 0xed / 255]],
  ])('%s is read', (written, colour) => {
    expect(readColour(written)).toEqual(colour);
  });

  test('transparent is no colour', () => {
    expect(readColour('transparent')).toBeUndefined();
  });

  test.each(['mauve', '#ff00ff80', '#12', ''])('"%s" is refused', (written) => {
    expect(() => readColour(written)).toThrow(`"${written}"`);
  });
});
