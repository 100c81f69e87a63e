import { describe, expect, test } from 'vitest';
import { characters, draw } from '../../support/equations.ts';

describe('laps', () => {
  test.each([
    ['llap', -5],
    ['clap', -2.5],
    ['rlap', 0],
  ])('\\math%s sets its content at its place without taking room', (name, offset) => {
    const drawing = draw(`1\\math${name}{2}3`);
    const [one, two, three] = characters(drawing);
    expect(three!.x).toBeCloseTo(one!.x + 5, 9);
    expect(two!.x).toBeCloseTo(one!.x + 5 + offset, 9);
  });
});
