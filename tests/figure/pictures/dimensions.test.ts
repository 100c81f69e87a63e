import { describe, expect, test } from 'vitest';
import { flatMarks, pointsOf } from '../../support/flat-marks.ts';
import { layMember } from '../../support/lay-figures.ts';
import { beam, chain } from '../../support/pictures.ts';
import { defaultTheme } from '../../../src/theme/index.ts';

const { dimension } = defaultTheme.line;

describe('dimension chains', () => {
  test('ticks are slanted strokes where the dimensions meet, heavier than the line', () => {
    const { drawing } = layMember(beam(20, { dimensions: [chain(0, 8, 20)] }));
    const ticks = flatMarks(drawing).flatMap((mark) =>
      mark.kind === 'shape' &&
      (mark.stroke?.width ?? 0) > dimension * 1.5 &&
      (mark.stroke?.width ?? 0) < dimension * 2
        ? [pointsOf(mark.path)]
        : [],
    );
    expect(ticks).toHaveLength(3);
    for (const [from, to] of ticks) {
      expect(Math.abs(to!.x - from!.x)).toBeCloseTo(Math.abs(to!.y - from!.y), 9);
    }
  });

  test('the first chain is nearest, and each label is over the middle of its line', () => {
    const { labels, drawing } = layMember(
      beam(20, { dimensions: [chain(0, 8, 20), chain(0, 20)] }),
    );
    const [first, second, overall] = labels;
    expect(overall!.top).toBeGreaterThan(first!.bottom);
    expect((overall!.left + overall!.right) / 2).toBeCloseTo(drawing.width / 2, 6);
    expect(first!.top).toBeCloseTo(second!.top, 6);
  });

  test('a label too long for its line is led out below', () => {
    const { labels } = layMember(beam(20, { dimensions: [chain(0, 0.4, 20)] }));
    const [long, short] = [...labels].sort((a, b) => a.top - b.top);
    expect(short!.top).toBeGreaterThan(long!.bottom);
  });
});
