import { describe, expect, test } from 'vitest';
import { bodyBase, lookOf, smallBase, textBase } from '../../src/layout/text-look.ts';
import { faceNames } from '../../src/font/index.ts';
import { defaultTheme } from '../../src/theme/index.ts';

const styles = ['plain', 'emphasis', 'strong', 'small-caps', 'muted', 'code'] as const;

describe('lookOf', () => {
  test('asks only for faces that there are', () => {
    for (const face of ['text', 'text-italic', 'text-semibold', 'text-bold']) {
      const base = textBase(defaultTheme, { size: 10, leading: 12, face });
      for (const style of styles) expect(faceNames).toContain(lookOf(base, style).face);
    }
  });

  test('sets emphasis in a heading apart from the heading', () => {
    const base = textBase(defaultTheme, {
      size: 10,
      leading: 12,
      face: 'text-semibold',
    });
    const faces = styles.map((style) => lookOf(base, style).face);
    expect(new Set(faces.slice(0, 3)).size).toBe(3);
  });

  test('mutes by colour and keeps the size', () => {
    const muted = lookOf(bodyBase(defaultTheme), 'muted');
    expect(muted).toMatchObject({
      colour: defaultTheme.colour.muted,
      size: defaultTheme.text.size,
    });
  });

  test('takes its sizes from the theme', () => {
    expect(smallBase(defaultTheme)).toMatchObject({
      look: { size: defaultTheme.text.small },
      leading: defaultTheme.text.smallLeading,
    });
  });
});
