import { describe, expect, test } from 'vitest';
import { layOutFigure } from '../../../src/figure/index.ts';
import type { ConventionKind, LaidFigure } from '../../../src/figure/index.ts';
import { figureSetting } from '../../support/figure-preview.ts';
import { filledHeads, textsOf } from '../../support/flat-marks.ts';

function lay(...shown: readonly ConventionKind[]): LaidFigure {
  const spec = {
    kind: 'conventions' as const,
    shown: shown.map((what) => ({ what, caption: 'A caption of several words' })),
    alternate: 'Sign conventions.',
  };
  return layOutFigure(spec, figureSetting);
}

describe('sign conventions', () => {
  test('forces: the arrows point to the sides that count positive', () => {
    const heads = filledHeads(
      lay({ kind: 'forces', horizontal: 'left', vertical: 'up' }).drawing,
    );
    expect(heads.some(({ tip, back }) => tip.x < back.x - 1)).toBe(true);
    expect(heads.some(({ tip, back }) => tip.y < back.y - 1)).toBe(true);
  });

  test('moments: the arrow turns as told', () => {
    const turnOf = (positive: 'clockwise' | 'counterclockwise'): number => {
      const { drawing } = lay({ kind: 'moments', positive });
      const [head] = filledHeads(drawing);
      // Open below: a counterclockwise arrow ends at the left, a clockwise one at the right.
      return Math.sign(head!.tip.x - drawing.width / 2);
    };
    expect(turnOf('counterclockwise')).toBe(-1);
    expect(turnOf('clockwise')).toBe(1);
  });

  test('axial: both arrows pull', () => {
    const [left, right] = filledHeads(lay({ kind: 'axial' }).drawing);
    expect(left!.tip.x).toBeLessThan(left!.back.x);
    expect(right!.tip.x).toBeGreaterThan(right!.back.x);
  });

  test('shear: up on the left face, down on the right face', () => {
    const [left, right] = filledHeads(lay({ kind: 'shear' }).drawing);
    expect(left!.tip.x).toBeLessThan(right!.tip.x);
    expect(left!.tip.y).toBeLessThan(left!.back.y);
    expect(right!.tip.y).toBeGreaterThan(right!.back.y);
  });

  test('bending: both arrows lift the ends, so that the piece sags', () => {
    for (const { tip, back } of filledHeads(
      lay({ kind: 'bending', drawnOn: 'tension' }).drawing,
    ))
      expect(tip.y).toBeLessThan(back.y);
  });

  test('bending: the side on which moments are drawn can be seen', () => {
    const compression = lay({ kind: 'bending', drawnOn: 'compression' });
    const tension = lay({ kind: 'bending', drawnOn: 'tension' });
    expect(compression.drawing.marks).not.toEqual(tension.drawing.marks);
  });

  test('captions are broken to the width of their cells, in words', () => {
    const all = lay(
      { kind: 'axial' },
      { kind: 'shear' },
      { kind: 'moments', positive: 'clockwise' },
      { kind: 'forces', horizontal: 'right', vertical: 'up' },
      { kind: 'bending', drawnOn: 'tension' },
    );
    const words = textsOf(all.drawing).join(' ');
    expect(words.match(/several/g)).toHaveLength(5);
    expect(textsOf(all.drawing)).not.toContain('A caption of several words');
  });

  test('more conventions than a row holds go to further rows', () => {
    const axial: ConventionKind = { kind: 'axial' };
    const [few, many] = [
      lay(axial, axial),
      lay(...Array.from({ length: 9 }, () => axial)),
    ];
    expect(many.drawing.height).toBeGreaterThan(few.drawing.height * 1.8);
    expect(many.drawing.width).toBe(few.drawing.width);
  });
});
