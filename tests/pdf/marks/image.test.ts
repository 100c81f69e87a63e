import { describe, expect, test } from 'vitest';
import { drawn } from '../../support/page-content.ts';
import { jpeg, pngWithAlpha } from '../../support/test-pictures.ts';

const images = { 'a.jpg': jpeg, 'b.png': pngWithAlpha };
const image = (source: string, x: number) =>
  ({ kind: 'image', x, y: 10, width: 30, height: 20, source }) as const;

describe('a picture', () => {
  test('fills its rectangle, upright, and is embedded once', async () => {
    const lines = await drawn(
      [image('b.png', 0), image('a.jpg', 40), image('b.png', 80)],
      images,
    );
    expect(lines.slice(1, -1)).toEqual([
      'q 30 0 0 20 100 562 cm /Im1 Do Q',
      'q 30 0 0 20 140 562 cm /Im2 Do Q',
      'q 30 0 0 20 180 562 cm /Im1 Do Q',
    ]);
  });

  test('whose source is a word of the language itself is missing like any other', async () => {
    await expect(drawn([image('constructor', 0)], images)).rejects.toThrow(
      'There is no picture',
    );
  });
});
