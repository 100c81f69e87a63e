import { describe, expect, test } from 'vitest';
import type { Bookmark } from '../../src/layout/index.ts';
import { checkPdf, readOutline, readPdf } from '../../src/pdf/index.ts';
import { documentWith, words, write } from '../support/paged-documents.ts';

const bookmark = (title: string, children: readonly Bookmark[] = []): Bookmark => ({
  title,
  anchor: 'here',
  children,
});
const text = documentWith({ kind: 'anchor', y: 0, name: 'here' }, ...words('text'));

describe('bookmarks', () => {
  test('keep their order and depth, the first row in sight and all else closed', async () => {
    const bookmarks = [
      bookmark('One', [
        bookmark('1.1', [bookmark('1.1.1'), bookmark('1.1.2')]),
        bookmark('1.2'),
      ]),
      bookmark('Two'),
      bookmark('Three', [bookmark('3.1')]),
    ];
    const bytes = await write({ ...text, bookmarks });
    expect(checkPdf(bytes)).toEqual([]);
    const file = readPdf(bytes);
    if ('problem' in file) throw new Error(file.problem);
    const outline = readOutline(file);
    const print = (row: (typeof outline)['bookmarks']): unknown =>
      row.map(({ title, count, children }) => [title, count ?? 0, print(children)]);
    expect(outline.count).toBe(3);
    expect(print(outline.bookmarks)).toEqual([
      [
        'One',
        -2,
        [
          [
            '1.1',
            -2,
            [
              ['1.1.1', 0, []],
              ['1.1.2', 0, []],
            ],
          ],
          ['1.2', 0, []],
        ],
      ],
      ['Two', 0, []],
      ['Three', -1, [['3.1', 0, []]]],
    ]);
  });

  test('leave no trace where there are none', async () => {
    const written = Buffer.from(await write(text)).toString('latin1');
    expect(written).not.toContain('/Outlines');
    expect(written).not.toContain('/PageMode');
  });
});
