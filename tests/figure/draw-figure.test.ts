import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawFigure, layOutFigure } from '../../src/figure/index.ts';
import type { FigureOptions } from '../../src/figure/index.ts';
import { defaultTheme } from '../../src/theme/index.ts';
import { createTypesetter } from '../../src/typeset/index.ts';
import { faultsOf } from '../support/figure-checks.ts';
import { figureSetting } from '../support/figure-preview.ts';
import { figureSamples } from '../support/figure-samples.ts';
import { ownFonts } from '../support/own-fonts.ts';
import { beam, down, member, words } from '../support/pictures.ts';
import { somePicture } from '../support/random-pictures.ts';

const options: FigureOptions = {
  width: 410,
  fonts: ownFonts,
  typesetter: createTypesetter(ownFonts),
  theme: defaultTheme,
};
const [simple] = Object.values(figureSamples);

describe('drawFigure', () => {
  test('draws at the width asked for and says what it shows', () => {
    const drawing = drawFigure(simple!, options);
    expect(drawing.width).toBe(410);
    expect(drawing.height).toBeGreaterThan(60);
    expect(drawing.height).toBeLessThan(170);
    expect(drawing.alternate).toBe(simple!.alternate);
  });

  test('the same figure is drawn the same way each time', () => {
    for (const spec of Object.values(figureSamples))
      expect(drawFigure(spec, options)).toEqual(
        drawFigure(spec, { ...options, typesetter: createTypesetter(ownFonts) }),
      );
  });

  test('a width that cannot hold a figure is refused', () => {
    expect(() => drawFigure(simple!, { ...options, width: 40 })).toThrow(RangeError);
  });
});

describe('layOutFigure', () => {
  for (const [name, spec] of Object.entries(figureSamples)) {
    test(`the sample ${name} has no label over anything and nothing outside`, () => {
      expect(faultsOf(layOutFigure(spec, figureSetting))).toEqual([]);
    });
  }

  test('a figure with many loads grows in height, not in width', () => {
    const loads = (count: number) =>
      Array.from({ length: count }, (_, index) =>
        down((index + 1) / (count + 1), 1 + index / 7, String(index + 1)),
      );
    const few = layOutFigure(member(beam(1, { loads: loads(2) })), figureSetting);
    const many = layOutFigure(member(beam(1, { loads: loads(60) })), figureSetting);
    expect(many.drawing.height).toBeGreaterThan(few.drawing.height + 40);
    expect(many.labels).toHaveLength(60);
    expect(faultsOf(many)).toEqual([]);
  });

  test('a label wider than the figure is made to fit', () => {
    const load = { ...down(0.5, 1), label: words('a very long label '.repeat(20)) };
    expect(
      faultsOf(layOutFigure(member(beam(1, { loads: [load] })), figureSetting)),
    ).toEqual([]);
  });

  test('an empty beam is a line', () => {
    const { drawing, labels } = layOutFigure(member(beam(4)), figureSetting);
    expect(labels).toEqual([]);
    expect(drawing.height).toBeLessThan(10);
  });

  test('no picture whatever has a label over anything or anything outside', () => {
    fc.assert(
      fc.property(
        somePicture,
        fc.constantFrom('member' as const, 'free-body' as const),
        (picture, kind) => {
          const spec =
            kind === 'member'
              ? { kind, picture, alternate: '' }
              : { kind, pictures: [picture], alternate: '' };
          expect(faultsOf(layOutFigure(spec, figureSetting))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});
