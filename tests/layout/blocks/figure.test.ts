import { describe, expect, test } from 'vitest';
import type { FigureSpec } from '../../../src/figure/index.ts';
import type { Block } from '../../../src/report/index.ts';
import { fitDrawing } from '../../../src/layout/blocks/figure.ts';
import { paragraph, text } from '../../support/blocks.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { runsOf } from '../../support/read-pages.ts';

const spec: FigureSpec = {
  kind: 'member',
  alternate: 'A beam from A to B on two supports.',
  picture: {
    start: 0,
    end: 6,
    points: [
      { name: 'A', x: 0 },
      { name: 'B', x: 6 },
    ],
    supports: [
      { x: 0, type: 'pin' },
      { x: 6, type: 'roller' },
    ],
    hinges: [],
    loads: [],
    reactions: [],
    dimensions: [],
  },
};
const figure: Block = {
  kind: 'figure',
  figure: spec,
  caption: [text('The member as loaded.')],
  anchor: 'drawing',
};

describe('setFigure', () => {
  test('stands a figure in its element with its spoken text, the caption beside it', () => {
    const { elements, sheets } = layOutBlocks(figure);
    const of = elements.find(({ type }) => type === 'Figure')!;
    expect(of.alternate).toBe('A beam from A to B on two supports.');
    expect(elements.find(({ type }) => type === 'Caption')!.parent).toBe(of.parent);
    expect(sheets.drawing).toBe(1);
  });

  test('keeps the caption below the figure and on its page', () => {
    for (let before = 30; before < 48; before += 1) {
      const { pages, elements } = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        figure,
      );
      const typesOn = pages.map((page) =>
        runsOf(page).flatMap(({ element }) =>
          element === undefined ? [] : [elements[element]!.type],
        ),
      );
      const withFigure = typesOn.findIndex((types) => types.includes('Figure'));
      expect(typesOn[withFigure]).toContain('Caption');
      const runs = runsOf(pages[withFigure]!);
      const yOf = (type: string): readonly number[] =>
        runs
          .filter(
            ({ element }) => element !== undefined && elements[element]!.type === type,
          )
          .map(({ y }) => y);
      expect(Math.min(...yOf('Caption'))).toBeGreaterThan(Math.max(...yOf('Figure')));
    }
  });
});

describe('fitDrawing', () => {
  const drawing = { width: 400, height: 900, marks: [] };

  test('makes a drawing smaller that is taller than a page, keeping its shape', () => {
    const fitted = fitDrawing(drawing, { width: 420, height: 600 });
    expect(fitted.height).toBeCloseTo(600, 9);
    expect(fitted.width / fitted.height).toBeCloseTo(400 / 900, 9);
  });

  test('never makes one larger', () => {
    expect(fitDrawing(drawing, { width: 4000, height: 6000 })).toBe(drawing);
  });
});
