import { describe, expect, test } from 'vitest';
import type { ShapeMark } from '../../../src/drawing/index.ts';
import { drawn } from '../../support/page-content.ts';

const line: ShapeMark['path'] = [
  ['M', 0, 0],
  ['L', 10, 20],
];
const stroke = { width: 0.8, colour: [0, 0, 0] } as const;

/** The operators between the marked content's begin and end. */
const inside = async (...marks: readonly ShapeMark[]): Promise<readonly string[]> =>
  (await drawn(marks)).slice(1, -1);

describe('a shape', () => {
  test('is drawn with y growing upward from the foot of the page', async () => {
    expect(await inside({ kind: 'shape', path: line, stroke })).toEqual([
      '0.8 w',
      '100 592 m 110 572 l S',
    ]);
  });

  test('is filled, stroked or both', async () => {
    const path: ShapeMark['path'] = [...line, ['C', 1, 2, 3, 4, 5, 6], ['Z']];
    const steps = '100 592 m 110 572 l 101 590 103 588 105 586 c h';
    const red = [1, 0, 0] as const;
    expect(await inside({ kind: 'shape', path, fill: red })).toEqual([
      '1 0 0 rg',
      `${steps} f`,
    ]);
    expect(await inside({ kind: 'shape', path, fill: red, stroke })).toEqual([
      '1 0 0 rg',
      '0.8 w',
      `${steps} B`,
    ]);
  });

  test('of neither fill nor stroke leaves no trace', async () => {
    expect(await drawn([{ kind: 'shape', path: line }])).toEqual(['']);
    expect(await drawn([{ kind: 'shape', path: [], stroke }])).toEqual(['']);
  });

  test('says only what changes from one to the next', async () => {
    const dashed = { ...stroke, dash: [3, 1.5], cap: 'round', join: 'bevel' } as const;
    const mark = (style: ShapeMark['stroke']): ShapeMark => ({
      kind: 'shape',
      path: line,
      stroke: style!,
    });
    expect(
      await inside(mark(stroke), mark(dashed), mark(dashed), mark(stroke)),
    ).toEqual([
      '0.8 w',
      '100 592 m 110 572 l S',
      '[3 1.5] 0 d',
      '1 J',
      '2 j',
      '100 592 m 110 572 l S',
      '100 592 m 110 572 l S',
      '[] 0 d',
      '0 J',
      '0 j',
      '100 592 m 110 572 l S',
    ]);
  });

  test('at a place that is no number is refused', async () => {
    const path: ShapeMark['path'] = [
      ['M', NaN, 0],
      ['L', 1, 1],
    ];
    await expect(drawn([{ kind: 'shape', path, stroke }])).rejects.toThrow(RangeError);
  });
});
