import { describe, expect, test } from 'vitest';
import { characters, draw } from '../../support/equations.ts';

describe('poor man’s bold', () => {
  test('is drawn twice, a hair apart, and takes the room of one', () => {
    const [first, second] = characters(draw('\\pmb{1}'));
    expect(first!.x - second!.x).toBeCloseTo(0.2, 9);
    expect(first!.y - second!.y).toBeCloseTo(0.1, 9);
    expect(draw('\\pmb{1}').width).toBeCloseTo(5, 9);
  });
});
