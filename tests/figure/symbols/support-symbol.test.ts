import { describe, expect, test } from 'vitest';
import { unionOf } from '../../../src/figure/geometry/box.ts';
import type { Box, PictureSupport } from '../../../src/figure/index.ts';
import { supportSymbol } from '../../../src/figure/symbols/support-symbol.ts';
import type { SupportPlace } from '../../../src/figure/symbols/support-symbol.ts';

const types = [
  'pin',
  'roller',
  'fixed',
  'guide',
  'spring',
  'pin-with-rotation-spring',
] as const;

function outline(
  support: Omit<PictureSupport, 'x'>,
  place: SupportPlace,
  scale: number = 1,
): Box {
  const part = supportSymbol(
    { ...support, x: 0 },
    { point: { x: 100, y: 0 }, place, colour: [0, 0, 0], scale },
  );
  return unionOf(part.boxes)!;
}

describe('supportSymbol', () => {
  test.each(['pin', 'roller', 'spring'] as const)(
    'a %s stands under the member',
    (type) => {
      const { left, top, right, bottom } = outline({ type }, 'inside');
      expect(top).toBeGreaterThan(-0.5);
      expect(bottom).toBeGreaterThan(10);
      expect((left + right) / 2).toBeGreaterThan(96);
      expect((left + right) / 2).toBeLessThan(104);
    },
  );

  test('a fixed end is a wall outside the end that it holds', () => {
    expect(outline({ type: 'fixed' }, 'left-end').right).toBeLessThan(100.6);
    expect(outline({ type: 'fixed' }, 'right-end').left).toBeGreaterThan(99.4);
  });

  test('a guide stands outside an end, and on both sides of a point within', () => {
    expect(outline({ type: 'guide' }, 'left-end').left).toBeLessThan(93);
    const inside = outline({ type: 'guide' }, 'inside');
    expect(inside.left).toBeLessThan(94);
    expect(inside.right).toBeGreaterThan(106);
  });

  test('a roller turns with the direction of its reaction', () => {
    const held = outline({ type: 'roller', normal: 270 }, 'inside');
    expect(held.bottom).toBeLessThan(0.5);
    const sideways = outline({ type: 'roller', normal: 0 }, 'left-end');
    expect(sideways.right).toBeLessThan(100.5);
    const sloped = outline({ type: 'roller', normal: 60 }, 'inside');
    // Its reaction points up and to the right, so its ground lies to the left.
    expect(sloped.left).toBeLessThan(outline({ type: 'roller' }, 'inside').left);
  });

  test.each(types)('a %s beside close neighbours is smaller', (type) => {
    const full = outline({ type }, 'inside');
    const small = outline({ type }, 'inside', 0.6);
    expect(small.right - small.left).toBeLessThan(full.right - full.left);
  });
});
