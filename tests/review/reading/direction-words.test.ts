import { describe, expect, test } from 'vitest';
import { splitDirection } from '../../../src/review/reading/direction-words.ts';

describe('splitDirection', () => {
  test.each([
    ['RA = 6 kN down', 'RA = 6 kN', 'down'],
    ['RA = 6 kN (upwards)', 'RA = 6 kN', 'up'],
    ['HA = 2 kN, to the left', 'HA = 2 kN', 'left'],
    ['M = 36 kip ft hogging.', 'M = 36 kip ft', 'hogging'],
    ['MA = 3 kN m CCW', 'MA = 3 kN m', 'counterclockwise'],
    ['RA = 6 kN ↓', 'RA = 6 kN', 'down'],
    ['F = 3 kN acting right', 'F = 3 kN', 'right'],
  ])('takes the direction off %s', (line, text, direction) => {
    expect(splitDirection(line, [])).toEqual({ text, direction });
  });

  test('leaves a declared symbol of that name alone, and a line without one', () => {
    expect(splitDirection('RA = down', ['down'])).toEqual({ text: 'RA = down' });
    expect(splitDirection('RA = 6 kN', [])).toEqual({ text: 'RA = 6 kN' });
    expect(splitDirection('x = constructor', [])).toEqual({ text: 'x = constructor' });
  });
});
