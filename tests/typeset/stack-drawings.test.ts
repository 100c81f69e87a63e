import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/drawing/index.ts';
import { stackDrawings } from '../../src/typeset/index.ts';

const line = (height: number, baseline: number, width: number): Drawing => ({
  width,
  height,
  baseline,
  marks: [{ kind: 'anchor', y: 0, name: `${width}` }],
});

describe('stacking drawings', () => {
  const leading = { leading: 14, clearance: 2 };

  test('sets baselines one leading apart', () => {
    const stacked = stackDrawings([line(10, 8, 30), line(10, 8, 50)], leading);
    expect(stacked).toMatchObject({
      width: 50,
      height: 24,
      baseline: 8,
      lastBaseline: 22,
    });
    expect(stacked.marks[1]).toMatchObject({ kind: 'group', x: 0, y: 14 });
  });

  test('widens the leading where two lines would come too close', () => {
    const stacked = stackDrawings([line(20, 8, 30), line(20, 15, 50)], leading);
    expect(stacked.marks[1]).toMatchObject({ y: 22 });
    expect(stacked.height).toBe(42);
  });

  test('speaks with its first line', () => {
    const spoken = { ...line(10, 8, 30), alternate: 'first' };
    expect(stackDrawings([spoken, line(10, 8, 30)], leading).alternate).toBe('first');
  });

  test('nothing stacked is nothing', () => {
    expect(stackDrawings([], leading)).toEqual({
      width: 0,
      height: 0,
      baseline: 0,
      marks: [],
    });
  });
});
