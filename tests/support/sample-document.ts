import type { Mark } from '../../src/drawing/index.ts';
import type { PagedDocument } from '../../src/layout/index.ts';
import type { WriteOptions } from '../../src/pdf/index.ts';
import { draw, typesetter } from './equations.ts';
import { artifact, documentOf, of, page, words } from './paged-documents.ts';
import type { Tree } from './paged-documents.ts';
import { jpeg, pngWithAlpha } from './test-pictures.ts';

/** The elements of the sample by the names that its pages use; numbers count as they are read. */
const tree: Tree = [
  'Document',
  { title: 'Calculations' },
  [
    [
      'Sect',
      { title: 'Deck beam' },
      [
        ['H1'], // 2
        ['P', {}, [['Link'], ['Formula', { alternate: 'R sub A' }], ['Link']]], // 3: 4, 5, 6
        ['Formula', { alternate: 'M equals w l squared over 8' }], // 7
        ['L', {}, [['LI', {}, [['Lbl'], ['LBody', {}, [['P']]]]]]], // 8: 9: 10, 11: 12
        [
          'Table', // 13
          {},
          [
            [
              'THead',
              {},
              [
                [
                  'TR',
                  {},
                  [
                    ['TH', { scope: 'Column' }],
                    ['TH', { scope: 'Column', colSpan: 2 }],
                  ],
                ],
              ],
            ], // 14: 15: 16, 17
            [
              'TBody', // 18
              {},
              [
                ['TR', {}, [['TH', { scope: 'Row' }], ['TD'], ['TD']]], // 19: 20, 21, 22
                ['TR', {}, [['TH', { scope: 'Row' }], ['TD'], ['TD']]], // 23: 24, 25, 26
              ],
            ],
          ],
        ],
        ['Note'], // 27
        ['Note'], // 28
      ],
    ],
    [
      'Sect', // 29
      {},
      [
        ['H1'], // 30
        ['H2'], // 31
        ['Div', {}, [['Figure', { alternate: 'A beam on two supports' }], ['Caption']]], // 32: 33, 34
        ['Figure', { alternate: 'The mark of the office' }], // 35
      ],
    ],
  ],
];

const equation = typesetter.typeset(
  String.raw`M = \frac{w\,\ell^2}{8} = \sqrt{2}\ \text{kN·m}`,
  {
    size: 10,
    display: true,
    actualText: 'M = w·ℓ²/8',
  },
);
const reaction: Mark = {
  kind: 'group',
  x: 0,
  y: 0,
  marks: draw('R_A').marks,
  actualText: 'R_A',
};

const foot = (label: string): Mark =>
  artifact([
    ...words(`Sheet ${label} of 3`, { x: 72, y: 750, size: 8 }),
    {
      kind: 'shape',
      path: [
        ['M', 72, 738],
        ['L', 540, 738],
      ],
      stroke: { width: 0.5, colour: [0, 0, 0] },
    },
  ]);

const row = (
  cells: readonly (readonly [element: number, text: string])[],
  y: number,
): readonly Mark[] =>
  cells.map(([element, text], index) =>
    of(element, 72 + 90 * index, y, words(text, { y: 10 })),
  );

const first = page('1', [
  of(2, 72, 72, [
    { kind: 'anchor', y: 0, name: 'B1' },
    ...words('Deck beam B1 & <its> loads', { y: 19, size: 19 }),
  ]),
  of(3, 72, 110, words('It hands its reaction to', { y: 10 })),
  of(4, 190, 110, [
    ...words('sheet 3', { y: 10 }),
    {
      kind: 'link',
      x: 0,
      y: 2,
      width: 34,
      height: 10,
      to: { anchor: 'Säule ½' },
      says: 'Column, sheet 3',
    },
  ]),
  of(3, 226, 110, words(', where it is called', { y: 10 })),
  of(5, 330, 103, [reaction]),
  of(3, 72, 124, words('and loads are from', { y: 10 })),
  of(6, 190, 124, [
    ...words('the county', { y: 10, face: 'text-italic' }),
    {
      kind: 'link',
      x: 0,
      y: 2,
      width: 46,
      height: 10,
      to: { address: 'https://loads.example/snow?zone=2&höhe=3' },
      says: 'Snow loads of the county',
    },
  ]),
  of(7, 90, 150, equation.marks),
  of(10, 72, 200, words('1.', { y: 10 })),
  of(12, 90, 200, words('Small displacements — ‘first order’ only.', { y: 10 })),
  of(27, 470, 200, words('fl ffi: 0.5 ≤ α', { y: 8, size: 8 })),
  ...row(
    [
      [16, 'Case'],
      [17, 'Reactions, kN'],
    ],
    230,
  ),
  artifact(
    [
      {
        kind: 'shape',
        path: [
          ['M', 72, 244],
          ['L', 300, 244],
        ],
        stroke: { width: 0.5, colour: [0.4, 0.4, 0.4], dash: [3, 1.5] },
      },
    ],
    'layout',
  ),
  ...row(
    [
      [20, 'Dead'],
      [21, '12.5'],
      [22, '−3.0'],
    ],
    250,
  ),
  of(28, 470, 250, words('assumed', { y: 8, size: 8 })),
  foot('1'),
]);

const second = page('2', [
  artifact(words('Case (continued)', { x: 72, y: 80 }), 'layout'),
  ...row(
    [
      [24, 'Live'],
      [25, '40.0'],
    ],
    90,
  ), // the last cell is empty
  of(3, 72, 140, words('The paragraph ends on this sheet.', { y: 10 })),
  foot('2'),
]);

const third = page('3', [
  of(30, 72, 72, words('Column C1', { y: 19, size: 19 })),
  of(31, 72, 100, [
    { kind: 'anchor', y: -4, name: 'Säule ½' },
    ...words('Loads from above', { y: 13, size: 13 }),
  ]),
  of(33, 72, 130, [
    {
      kind: 'shape',
      path: [
        ['M', 0, 60],
        ['L', 240, 60],
      ],
      stroke: { width: 1.4, colour: [0, 0, 0], cap: 'round' },
    },
    {
      kind: 'shape',
      path: [['M', 0, 60], ['L', -8, 74], ['L', 8, 74], ['Z']],
      fill: [1, 1, 1],
      stroke: { width: 0.8, colour: [0, 0, 0], join: 'round' },
    },
    {
      kind: 'group',
      x: 120,
      y: 20,
      clip: { x: -60, y: 0, width: 120, height: 36 },
      marks: [
        {
          kind: 'shape',
          path: [
            ['M', -100, 40],
            ['C', -40, -20, 40, -20, 100, 40],
          ],
          stroke: { width: 0.8, colour: [0.53, 0.11, 0.15] },
        },
      ],
    },
    {
      kind: 'group',
      x: 100,
      y: 0,
      actualText: '40 kN',
      marks: draw(String.raw`40\,\text{kN}`).marks,
    },
  ]),
  of(34, 72, 220, words('Figure 1. The beam as loaded.', { y: 10, size: 9 })),
  of(35, 400, 60, [
    { kind: 'image', x: 0, y: 0, width: 48, height: 36, source: 'images/office.jpg' },
    { kind: 'image', x: 60, y: 0, width: 36, height: 36, source: 'images/mark.png' },
  ]),
  foot('3'),
]);

/** A document with every kind of mark and element: three sheets, a table and a paragraph over two of them. */
export const sampleDocument: PagedDocument = documentOf(tree, [first, second, third], {
  title: 'Brücke <A> & “B”',
  author: 'Office of I. Pellworm',
  subject: 'Structural calculations',
  bookmarks: [
    { title: 'Deck beam', anchor: 'B1', children: [] },
    {
      title: 'Säule ½ & more',
      anchor: 'Säule ½',
      children: [{ title: 'Loads (from above)', anchor: 'Säule ½', children: [] }],
    },
  ],
});

/** What the sample is written with: its pictures, two attachments and a date. */
export const sampleOptions: Partial<WriteOptions> = {
  images: { 'images/office.jpg': jpeg, 'images/mark.png': pngWithAlpha },
  attachments: [
    {
      name: 'members/B1.yaml',
      bytes: new TextEncoder().encode('mark: B1\ntitle: Deck beam\n'),
      mime: 'application/yaml',
      description: 'The definition of member B1',
      relationship: 'Source',
    },
    {
      name: 'results.json',
      bytes: new TextEncoder().encode('{"format":1}'),
      mime: 'application/json',
      description: 'Every figure of the package',
      relationship: 'Data',
    },
  ],
  date: '2026-03-14',
};
