import { describe, expect, test } from 'vitest';
import { paragraph, part, report, words } from '../support/blocks.ts';
import { layOutReport } from '../support/layout-tools.ts';

const parts = [part('One', [paragraph(words(900)), paragraph(words(900))])];

describe('a stamp', () => {
  test('stands on every sheet, first of all marks and so behind the text, as no part of it', () => {
    const { pages } = layOutReport(report(parts, { stamp: 'superseded' }));
    expect(pages.length).toBeGreaterThan(1);
    for (const { drawing } of pages) {
      expect(drawing.marks[0]).toMatchObject({ kind: 'group', artifact: 'pagination' });
      const [shape] = drawing.marks[0]!.kind === 'group' ? drawing.marks[0]!.marks : [];
      expect(shape).toMatchObject({ kind: 'shape' });
      expect(shape).not.toHaveProperty('fill');
    }
  });

  test('stays on the sheet, however long the word', () => {
    for (const stamp of ['void', 'superseded by revision C of another package']) {
      const { drawing } = layOutReport(report(parts, { stamp })).pages[0]!;
      const group = drawing.marks[0]!;
      if (group.kind !== 'group' || group.marks[0]?.kind !== 'shape')
        throw new Error('no stamp');
      for (const [, ...numbers] of group.marks[0].path) {
        for (const [index, number] of numbers.entries()) {
          const at = number + (index % 2 === 0 ? group.x : group.y);
          expect(at).toBeGreaterThan(0);
          expect(at).toBeLessThan(index % 2 === 0 ? drawing.width : drawing.height);
        }
      }
    }
  });

  test('is left out where the package is in force', () => {
    const { drawing } = layOutReport(report(parts)).pages[0]!;
    expect(drawing.marks[0]).not.toHaveProperty('artifact');
  });
});
