import { describe, expect, test } from 'vitest';
import { clipOutline } from '../../src/typeset/clip-outline.ts';

const window = { left: 0, top: 0, right: 10, bottom: 5 };

describe('an outline seen through a window', () => {
  test('what lies inside stays as it is', () => {
    const steps = [['M', 1, 1], ['C', 2, 2, 3, 3, 4, 4], ['Z']] as const;
    expect(clipOutline(steps, window)).toEqual({ steps, mustClip: false });
  });

  test('a shaft that leaves level is cut exactly at the edge', () => {
    const steps = [
      ['M', 2, 1],
      ['L', 400000, 1],
      ['L', 400000, 2],
      ['L', 2, 2],
      ['Z'],
    ] as const;
    expect(clipOutline(steps, window)).toEqual({
      steps: [['M', 2, 1], ['L', 10, 1], ['L', 10, 2], ['L', 2, 2], ['Z']],
      mustClip: false,
    });
  });

  test('a slanted line that crosses the edge asks to be cut', () => {
    const steps = [
      ['M', 2, 1],
      ['L', 12, 3],
    ] as const;
    expect(clipOutline(steps, window).mustClip).toBe(true);
  });

  test('so does a curve, and a closing line', () => {
    expect(
      clipOutline(
        [
          ['M', 2, 1],
          ['C', 4, 1, 12, 2, 12, 3],
        ],
        window,
      ).mustClip,
    ).toBe(true);
    const closing = [['M', 2, 1], ['L', 12, 1], ['L', 12, 4], ['Z']] as const;
    expect(clipOutline(closing, window).mustClip).toBe(true);
  });

  test('what lies wholly outside shrinks onto the edge', () => {
    const { steps, mustClip } = clipOutline(
      [
        ['M', 12, 1],
        ['L', 14, 3],
      ],
      window,
    );
    expect(steps).toEqual([
      ['M', 10, 1],
      ['L', 10, 3],
    ]);
    expect(mustClip).toBe(false);
  });
});
