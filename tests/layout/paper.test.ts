import { describe, expect, test } from 'vitest';
import { sheetOf } from '../../src/layout/paper.ts';
import { defaultTheme } from '../../src/theme/index.ts';

const { paper } = defaultTheme;

describe('sheetOf', () => {
  test('leaves a binding margin on the left and a margin column on the right', () => {
    const sheet = sheetOf('letter', 'body', defaultTheme);
    expect(sheet).toMatchObject({
      width: 612,
      height: 792,
      left: paper.left,
      top: paper.top,
    });
    const { column } = sheet;
    expect(sheet.left + column.width).toBeLessThan(612 - paper.right);
    expect(sheet.left + column.margin!.x + column.margin!.width).toBeCloseTo(
      sheet.right,
      9,
    );
    expect(sheet.top + column.height).toBe(792 - paper.foot);
  });

  test('lets a cover use the width of the margin column', () => {
    const { column, left, right } = sheetOf('letter', 'cover', defaultTheme);
    expect(column.margin).toBeUndefined();
    expect(left + column.width).toBeCloseTo(right, 9);
  });

  test('knows A4 in points', () => {
    const sheet = sheetOf('a4', 'body', defaultTheme);
    expect(sheet.width).toBeCloseTo(595.276, 3);
    expect(sheet.height).toBeCloseTo(841.89, 2);
  });
});
