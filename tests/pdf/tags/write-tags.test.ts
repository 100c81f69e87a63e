import { describe, expect, test } from 'vitest';
import {
  checkPdf,
  elementsWithin,
  readPages,
  readPdf,
  readStructure,
} from '../../../src/pdf/index.ts';
import type { ReadElement } from '../../../src/pdf/index.ts';
import type { Page } from '../../../src/layout/index.ts';
import { itemsOf, nameOf, numberOf } from '../../../src/pdf/reading/pdf-object.ts';
import { documentOf, of, page, words, write } from '../../support/paged-documents.ts';
import type { Tree } from '../../support/paged-documents.ts';

/** The structure as nested lists: types, and `page:sequence` for content, `link` for annotations. */
async function structure(tree: Tree, pages: readonly Page[]): Promise<unknown> {
  const bytes = await write(documentOf(tree, pages));
  expect(checkPdf(bytes)).toEqual([]);
  const file = readPdf(bytes);
  if ('problem' in file) throw new Error(file.problem);
  const numbers = readPages(file).map(({ number }) => number);
  const print = ({ type, kids }: ReadElement): readonly unknown[] => [
    type,
    ...kids.map((kid) => {
      if (kid.kind === 'element') return print(kid.element);
      return kid.kind === 'object'
        ? 'link'
        : `${numbers.indexOf(kid.page!) + 1}:${kid.mcid}`;
    }),
  ];
  return print(readStructure(file)[0]!);
}

/** The attributes of the only element of a type. */
async function attributes(
  type: string,
  tree: Tree,
  pages: readonly Page[],
): Promise<Record<string, unknown>> {
  const file = readPdf(await write(documentOf(tree, pages)));
  if ('problem' in file) throw new Error(file.problem);
  const found = readStructure(file)
    .flatMap(elementsWithin)
    .find((element) => element.type === type);
  return Object.fromEntries(
    [...found!.attributes].map(([key, value]) => [
      key,
      nameOf(value) ?? numberOf(value) ?? itemsOf(value).map(numberOf),
    ]),
  );
}

const text = (element: number, y: number) =>
  of(element, 72, y, words(`text of ${element}`));

describe('the structure tree', () => {
  test('has the pieces of a paragraph around its inner elements in reading order', async () => {
    const tree: Tree = ['Document', {}, [['P', {}, [['Span'], ['Span']]]]];
    expect(
      await structure(tree, [
        page('1', [text(1, 10), text(2, 20), text(1, 30), text(3, 40), text(1, 50)]),
      ]),
    ).toEqual([
      'Document',
      ['P', '1:0', ['Span', '1:1'], '1:2', ['Span', '1:3'], '1:4'],
    ]);
  });

  test('keeps an element whole that goes on over pages', async () => {
    const tree: Tree = ['Document', {}, [['P'], ['P']]];
    expect(
      await structure(tree, [
        page('1', [text(1, 10)]),
        page('2', [text(1, 10), text(2, 30)]),
      ]),
    ).toEqual(['Document', ['P', '1:0', '2:0'], ['P', '2:1']]);
  });

  test('keeps child elements in the order of the document where they are drawn in another', async () => {
    const tree: Tree = ['Document', {}, [['P'], ['Note'], ['P']]];
    expect(
      await structure(tree, [page('1', [text(1, 10), text(3, 20), text(2, 30)])]),
    ).toEqual(['Document', ['P', '1:0'], ['Note', '1:2'], ['P', '1:1']]);
  });

  test('keeps elements that nothing is drawn of: an empty cell is a cell', async () => {
    const row = (cells: readonly Tree[]): Tree => ['TR', {}, cells];
    const head = ['TH', { scope: 'Column' }] as const;
    const tree: Tree = [
      'Document',
      {},
      [['Table', {}, [row([head, head]), row([['TD'], ['TD']])]]],
    ];
    expect(
      await structure(tree, [page('1', [text(3, 10), text(4, 10), text(7, 20)])]),
    ).toEqual([
      'Document',
      ['Table', ['TR', ['TH', '1:0'], ['TH', '1:1']], ['TR', ['TD'], ['TD', '1:2']]],
    ]);
  });

  test('knows links as pieces of their elements, on the page where they are', async () => {
    const link = (y: number) =>
      of(2, 72, y, [
        ...words('here'),
        {
          kind: 'link',
          x: 0,
          y: -8,
          width: 20,
          height: 10,
          to: { address: 'https://a.example' },
          says: 'Here',
        } as const,
      ]);
    const tree: Tree = ['Document', {}, [['P', {}, [['Link']]]]];
    expect(
      await structure(tree, [
        page('1', [text(1, 10), link(20)]),
        page('2', [link(10), text(1, 20)]),
      ]),
    ).toEqual([
      'Document',
      ['P', '1:0', ['Link', '1:1', 'link', '2:0', 'link'], '2:1'],
    ]);
  });

  test('refuses an element that stands before its parent', async () => {
    const document = documentOf(['Document', {}, [['P']]], [page('1', [])]);
    const elements = [
      { id: 0, type: 'P', parent: 1 },
      { id: 1, type: 'Document' },
    ] as const;
    await expect(write({ ...document, elements })).rejects.toThrow('before its parent');
  });
});

describe('attributes', () => {
  const square = (size: number) =>
    ({
      kind: 'shape',
      path: [['M', 0, 0], ['L', size, 0], ['L', size, size], ['Z']],
      fill: [0, 0, 0],
    }) as const;

  test('of a figure say where it stands, clipped to what is seen of it', async () => {
    const tree: Tree = ['Document', {}, [['Figure', { alternate: 'a square' }]]];
    expect(
      await attributes('Figure', tree, [page('1', [of(1, 72, 100, [square(50)])])]),
    ).toEqual({
      O: 'Layout',
      Placement: 'Block',
      BBox: [72, 642, 122, 692],
    });
    const clipped = {
      kind: 'group',
      x: 10,
      y: 0,
      clip: { x: 0, y: 0, width: 20, height: 30 },
      marks: [square(50)],
    } as const;
    expect(
      await attributes('Figure', tree, [page('1', [of(1, 72, 100, [clipped])])]),
    ).toMatchObject({
      BBox: [82, 662, 102, 692],
    });
  });

  test('of an equation in a line do not make it a block', async () => {
    const tree: Tree = ['Document', {}, [['P', {}, [['Formula', { alternate: 'x' }]]]]];
    const found = await attributes('Formula', tree, [
      page('1', [of(2, 72, 100, words('x'))]),
    ]);
    expect(found).not.toHaveProperty('Placement');
    expect(found.BBox).toHaveLength(4);
  });

  test('of a table say where it stands only where that is one page', async () => {
    const head = ['TH', { scope: 'Row' }] as const;
    const tree: Tree = [
      'Document',
      {},
      [
        [
          'Table',
          {},
          [
            ['TR', {}, [head]],
            ['TR', {}, [head]],
          ],
        ],
      ],
    ];
    const whole = await attributes('Table', tree, [
      page('1', [text(3, 100), text(5, 120)]),
    ]);
    expect(whole.BBox).toHaveLength(4);
    const split = await attributes('Table', tree, [
      page('1', [text(3, 100)]),
      page('2', [text(5, 72)]),
    ]);
    expect(split).toEqual({});
  });

  test('of a header cell say what it heads and how wide it is', async () => {
    const tree: Tree = [
      'Document',
      {},
      [['Table', {}, [['TR', {}, [['TH', { scope: 'Column', colSpan: 3 }]]]]]],
    ];
    expect(await attributes('TH', tree, [page('1', [text(3, 100)])])).toEqual({
      O: 'Table',
      Scope: 'Column',
      ColSpan: 3,
    });
  });
});
