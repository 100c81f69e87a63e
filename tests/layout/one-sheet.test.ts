import { expect, test } from 'vitest';
import { describeDrawing } from '../../src/drawing/index.ts';
import {
  cell,
  equals,
  equation,
  group,
  headRow,
  heading,
  letter,
  link,
  list,
  math,
  paragraph,
  quotient,
  row,
  sheetNumber,
  table,
  text,
} from '../support/blocks.ts';
import { layOutBlocks } from '../support/layout-tools.ts';

test('a sheet with one of each comes out as reviewed, mark by mark', async () => {
  const result = {
    ...equals(letter('R', 'C'), letter('P')),
    boxed: true,
    margin: '(1)',
  };
  const { pages } = layOutBlocks(
    heading(1, 'B1 Stringer', { anchor: 'b1' }),
    paragraph(
      [
        text('Handed on ('),
        sheetNumber('b1'),
        text(') to '),
        link('b1', 'B1'),
        text('.'),
      ],
      {
        margin: [text('ASCE 7-22')],
      },
    ),
    paragraph([text('The moment '), math(letter('M')), text(' is greatest where:')]),
    equation([equals(letter('M'), quotient(letter('P'), letter('L'))), result], true),
    table(
      ['left', 'decimal'],
      {
        head: [headRow('Case', 'V, kip')],
        body: [row('D', '8.4'), row(cell('L'), cell('12.25'))],
      },
      { caption: [text('Shear')] },
    ),
    list(['small displacements', 'no shear strain'], true),
    group('box', [heading(3, 'Results'), paragraph('8.4 kip')]),
    paragraph('Bearing is not checked.', { style: 'caution' }),
    { kind: 'listing', lines: ['member: B1'] },
    { kind: 'space', height: 60, label: 'Seal' },
  );
  expect(pages).toHaveLength(1);
  await expect(`${describeDrawing(pages[0]!.drawing)}\n`).toMatchFileSnapshot(
    'one-sheet.txt',
  );
});
