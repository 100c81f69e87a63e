import { describe, expect, test } from 'vitest';
import { defaultTheme } from '../../../src/theme/index.ts';
import { flatMarks, pointsOf, textsOf } from '../../support/flat-marks.ts';
import { layBodies } from '../../support/lay-figures.ts';
import { beam, down, unknown } from '../../support/pictures.ts';

describe('free bodies', () => {
  const body = beam(20, {
    supports: [
      { x: 0, type: 'pin' },
      { x: 20, type: 'roller' },
    ],
    loads: [down(8, 5)],
    reactions: [unknown(0, 90, 'RA'), unknown(0, 0, 'HA'), unknown(20, 90, 'RB')],
  });

  test('reactions have open heads in the accent, loads filled heads in black', () => {
    const shapes = flatMarks(layBodies(body).drawing).flatMap((mark) =>
      mark.kind === 'shape' ? [mark] : [],
    );
    const accent = shapes.filter(
      ({ stroke }) => stroke?.colour === defaultTheme.colour.accent,
    );
    // A shaft and a head for each of the three.
    expect(accent).toHaveLength(6);
    const filled = shapes.filter(({ fill }) => fill !== undefined);
    expect(filled.every(({ fill }) => fill === defaultTheme.colour.ink)).toBe(true);
  });

  test('no supports are drawn', () => {
    const bare = layBodies({ ...body, supports: [] });
    expect(layBodies(body)).toEqual(bare);
  });

  test('the axes stand at the left', () => {
    const { drawing } = layBodies(body);
    expect(textsOf(drawing)).toEqual(expect.arrayContaining(['x', 'y']));
  });

  test('parts stand one under the other on common stations', () => {
    const left = beam(12, { reactions: [unknown(12, 270, 'VB')] });
    const right = { ...beam(20, { reactions: [unknown(12, 90, 'VB')] }), start: 12 };
    const lines = flatMarks(layBodies(left, right).drawing).flatMap((mark) =>
      mark.kind === 'shape' && mark.stroke?.width === defaultTheme.line.member
        ? [pointsOf(mark.path)]
        : [],
    );
    const [first, second] = lines;
    expect(first![1]!.x).toBeCloseTo(second![0]!.x, 9);
    expect(second![0]!.y).toBeGreaterThan(first![0]!.y + 20);
  });
});
