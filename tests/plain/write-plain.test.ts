import { describe, expect, test } from 'vitest';
import { name, number } from '../../src/equation/index.ts';
import { writePlain } from '../../src/plain/index.ts';
import type { Block, Inline, Part } from '../../src/report/index.ts';

const words = (text: string): readonly Inline[] => [
  { kind: 'text', text, style: 'plain' },
];
const paragraph = (text: string): Block => ({
  kind: 'paragraph',
  style: 'body',
  content: words(text),
});

describe('a report as plain text', () => {
  test('underlines headings, keeps an equation to its sentence, parts the rest by blank lines', () => {
    const text = writePlain([
      { kind: 'heading', level: 1, content: words('B1 · Deck stringer') },
      { kind: 'heading', level: 2, content: words('4 Equations') },
      { kind: 'heading', level: 3, content: words('Aside') },
      paragraph('Moments about A leave one unknown.'),
      {
        kind: 'equation',
        keepWithPrevious: true,
        statement: {
          lines: [
            {
              left: name({ meaning: 'reaction', letter: 'R' }),
              chain: [{ sign: '=', of: number(3) }],
            },
          ],
        },
      },
      paragraph('Next.'),
    ]);
    expect(text).toBe(
      [
        'B1 · Deck stringer',
        '══════════════════',
        '',
        '4 Equations',
        '───────────',
        '',
        'Aside',
        '',
        'Moments about A leave one unknown.',
        '    R = 3',
        '',
        'Next.',
        '',
      ].join('\n'),
    );
  });

  test('hangs list items and cautions on their marks', () => {
    const text = writePlain(
      [
        {
          kind: 'list',
          isOrdered: false,
          items: [[paragraph('a pin: it holds x and y')], [paragraph('a roller')]],
        },
        { kind: 'list', isOrdered: true, items: [[paragraph('first')]] },
        {
          kind: 'paragraph',
          style: 'caution',
          content: words('The support at C has to pull.'),
        },
      ],
      { width: 16 },
    );
    expect(text.split('\n')).toEqual([
      '• a pin: it',
      '  holds x and y',
      '• a roller',
      '',
      '1. first',
      '',
      '! The support at',
      '  C has to pull.',
      '',
    ]);
  });

  test('puts what stands in the margin into brackets behind the paragraph', () => {
    expect(
      writePlain([
        {
          kind: 'paragraph',
          style: 'body',
          content: words('Wind'),
          margin: words('2.3.1'),
        },
      ]),
    ).toBe('Wind [2.3.1]\n');
  });

  test('tells figures and pictures in words and leaves out what speaks of the drawing', () => {
    const text = writePlain([
      {
        kind: 'figure',
        figure: {
          kind: 'conventions',
          shown: [],
          alternate: 'Forces count positive up.',
        },
        caption: words('Drawn to scale.'),
      },
      {
        kind: 'image',
        source: 'a.png',
        width: 1,
        height: 1,
        alternate: 'Logo of Fernhill',
      },
      { kind: 'space', height: 20 },
      { kind: 'space', height: 20, label: 'Space for a seal' },
    ]);
    expect(text).toBe(
      'Figure: Forces count positive up.\n\nPicture: Logo of Fernhill\n\n( Space for a seal )\n',
    );
  });

  test('numbers the lines of a file and keeps their depth', () => {
    const lines = ['points:', '  A: 0 ft', ...Array.from({ length: 8 }, () => '#')];
    expect(
      writePlain([{ kind: 'listing', lines }])
        .split('\n')
        .slice(0, 2),
    ).toEqual([' 1  points:', ' 2    A: 0 ft']);
  });

  test('draws a line beside a box and nothing round other groups', () => {
    expect(
      writePlain([
        { kind: 'group', role: 'box', blocks: [paragraph('one'), paragraph('two')] },
        { kind: 'group', role: 'keep', blocks: [paragraph('three')] },
      ]),
    ).toBe('│ one\n│\n│ two\n\nthree\n');
  });

  test('writes the parts of a report one after another', () => {
    const foot = { project: '', subject: '', prepared: '', checked: '', status: '' };
    const part = (title: string): Part => ({
      anchor: title,
      title,
      look: 'body',
      foot,
      blocks: [paragraph(title)],
    });
    expect(
      writePlain({
        title: 'x',
        language: 'en',
        paper: 'a4',
        parts: [part('one'), part('two')],
      }),
    ).toBe('one\n\ntwo\n');
  });

  test('leaves no no-break space behind, which terminals copy as it is', () => {
    expect(writePlain([paragraph('21\u00a0ft')])).toBe('21 ft\n');
  });
});
