import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/report/index.ts';
import { part, report } from '../../support/blocks.ts';
import { layOutReport } from '../../support/layout-tools.ts';
import { visitMarks } from '../../support/read-pages.ts';
import type { ImageMark } from '../../../src/drawing/index.ts';
import type { PagedDocument } from '../../../src/layout/index.ts';

const image = (width: number, height: number): Block => ({
  kind: 'image',
  source: 'logo.png',
  width,
  height,
  alternate: 'The office’s mark',
});

function imagesOf({ pages }: PagedDocument): readonly ImageMark[] {
  const images: ImageMark[] = [];
  for (const { drawing } of pages)
    visitMarks(drawing.marks, (mark) => {
      if (mark.kind === 'image') images.push(mark);
    });
  return images;
}

const images = { 'logo.png': new Uint8Array([1]) };

describe('setImage', () => {
  test('places a picture at its size, as a figure with its spoken text', () => {
    const document = layOutReport(report([part('One', [image(150, 54)])]), { images });
    expect(imagesOf(document)).toMatchObject([
      { width: 150, height: 54, source: 'logo.png' },
    ]);
    expect(document.elements.find(({ type }) => type === 'Figure')!.alternate).toBe(
      'The office’s mark',
    );
    expect(document.remarks).toEqual([]);
  });

  test('makes one smaller that is wider than the column, keeping its shape', () => {
    const document = layOutReport(report([part('One', [image(840, 200)])]), { images });
    const [of] = imagesOf(document);
    expect(of!.width).toBeCloseTo(420, 6);
    expect(of!.height).toBeCloseTo(100, 6);
  });

  test('leaves the place of a missing picture blank and says so', () => {
    const document = layOutReport(report([part('One', [image(150, 54)])]));
    expect(imagesOf(document)).toEqual([]);
    expect(document.remarks).toEqual([
      'The picture logo.png is not at hand; its place is left blank.',
    ]);
  });
});
