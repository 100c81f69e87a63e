import { describe, expect, test } from 'vitest';
import {
  group,
  heading,
  letter,
  link,
  list,
  math,
  paragraph,
  part,
  report,
  row,
  headRow,
  sheetNumber,
  table,
  text,
  words,
} from '../support/blocks.ts';
import type { FontBook, MeasuredGlyph } from '../../src/font/index.ts';
import { ownFonts } from '../support/own-fonts.ts';
import { layOutBlocks, layOutReport } from '../support/layout-tools.ts';
import { footOf, linksOf, runsOf, textOf, treeOf } from '../support/read-pages.ts';

const long = (count: number): readonly ReturnType<typeof paragraph>[] =>
  Array.from({ length: count }, (_, index) => paragraph(words(80, index)));

describe('layOut', () => {
  test('begins each part on a sheet of its own and numbers the sheets over the whole package', () => {
    const document = layOutReport(
      report([
        part('One', long(12)),
        part('Two', [paragraph('Short.')]),
        part('Three', []),
      ]),
    );
    const count = document.pages.length;
    expect(count).toBeGreaterThan(3);
    expect(document.pages.map(({ label }) => label)).toEqual(
      Array.from({ length: count }, (_, index) => String(index + 1)),
    );
    expect(document.sheets).toEqual({ one: 1, two: count - 1, three: count });
    expect(textOf(document.pages[count - 2]!)).toBe('Short.');
    expect(footOf(document.pages[0]!)).toContain(`1 of ${count}`);
  });

  test('prints the sheet that an anchor stands on, as a link that says so', () => {
    const index = part('Index', [
      table(['left', 'right'], {
        head: [headRow('Part', 'Sheet')],
        body: [
          row('Two', { content: [sheetNumber('two')], isHead: false, colSpan: 1 }),
        ],
      }),
      paragraph([
        text('Of '),
        { kind: 'sheet-count' },
        text(' sheets; see '),
        link('late', 'Late'),
      ]),
    ]);
    const two = part('Two', [...long(20), heading(2, 'Late news', { anchor: 'late' })]);
    const document = layOutReport(report([index, part('One', long(30)), two]));
    const first = document.pages[0]!;
    const { late, two: second } = document.sheets;
    expect(textOf(first)).toContain(`Two ${second}`);
    expect(textOf(first)).toContain(`Of ${document.pages.length} sheets`);
    expect(textOf(document.pages[late! - 1]!)).toContain('Late news');
    expect(linksOf(first)).toMatchObject([
      { to: { anchor: 'two' }, says: `Sheet ${second}: Two` },
      { to: { anchor: 'late' }, says: `Sheet ${late}: Late news` },
    ]);
  });

  test('settles though numbers that grow wider push text on to further sheets', () => {
    const mentions = Array.from({ length: 400 }, (_, index) => [
      text('sheet '),
      sheetNumber(index % 2 === 0 ? 'end' : 'start'),
      text(', '),
    ]).flat();
    const document = layOutReport(
      report([
        part('Start', [paragraph(mentions), ...long(85)]),
        part('End', [paragraph('The end.')]),
      ]),
    );
    expect(document.remarks).toEqual([]);
    expect(document.sheets.end).toBeGreaterThan(9);
    expect(textOf(document.pages[0]!)).toContain(
      `sheet ${document.sheets.end}, sheet 1,`,
    );
  });

  test('gives up after five rounds where numbers never settle, and says so', () => {
    // A face whose 1 is so wide that naming sheet 1 pushes the anchor on to sheet 2, whose narrow
    // number brings it back.
    const fonts: FontBook = {
      face: (name) => {
        const face = ownFonts.face(name);
        const widen = (glyph: MeasuredGlyph): MeasuredGlyph =>
          glyph.text === '1' ? { ...glyph, advance: 4 } : glyph;
        return {
          ...face,
          shape: (of, features) => face.shape(of, features).map(widen),
        };
      },
    };
    const mentions = Array.from({ length: 60 }, () => [
      sheetNumber('late'),
      text(' '),
    ]).flat();
    const remarks = Array.from({ length: 12 }, (_, index) => {
      const filler = Array.from({ length: 34 + index }, () =>
        paragraph('x', { style: 'field' }),
      );
      const blocks = [
        paragraph(mentions),
        ...filler,
        heading(3, 'Late', { anchor: 'late' }),
      ];
      return layOutReport(report([part('One', [...blocks, paragraph('End.')])]), {
        fonts,
      }).remarks;
    }).flat();
    expect(new Set(remarks)).toEqual(
      new Set([
        'Sheet numbers still changed after 5 rounds of laying out; some that are printed may be off by one.',
      ]),
    );
  });

  test('tells of anchors that are nowhere and makes no link to them', () => {
    const document = layOutBlocks(
      paragraph([
        text('See '),
        link('nowhere', 'there'),
        text(', sheet '),
        sheetNumber('nowhere'),
      ]),
    );
    expect(textOf(document.pages[0]!)).toBe('See there, sheet ?');
    expect(linksOf(document.pages[0]!)).toEqual([]);
    expect(document.remarks).toHaveLength(1);
    expect(document.remarks[0]).toContain('“nowhere”');
  });

  test('tells of characters without a glyph, once each', () => {
    const document = layOutBlocks(paragraph('中 and 中'), heading(2, '中'));
    expect(textOf(document.pages[0]!)).toBe('[U+4E2D] and [U+4E2D] [U+4E2D]');
    expect(document.remarks).toEqual([
      'No typeface at hand has the character “中”; it is printed as [U+4E2D].',
    ]);
  });

  test('sets an equation as plain text where the equation faces lack a letter', () => {
    const document = layOutBlocks(paragraph([math(letter('中'))]), paragraph('After.'));
    expect(textOf(document.pages[0]!)).toContain('After.');
    expect(document.remarks.some((remark) => remark.includes('equation'))).toBe(true);
  });

  test('mirrors the blocks in the tree of elements, in reading order', () => {
    const document = layOutBlocks(
      heading(1, 'Beam'),
      group('section', [
        paragraph([
          text('See '),
          link('part', 'this'),
          text(' and '),
          math(letter('M')),
        ]),
        list(['one', [paragraph('two'), list(['nested'], true)]]),
      ]),
      table(
        ['left', 'right'],
        { head: [headRow('A', 'B')], body: [row('1', '2')] },
        {
          caption: [text('Caption')],
        },
      ),
    );
    expect(treeOf(document)).toBe(
      [
        'Document',
        '  Part',
        '    H1',
        '    Sect',
        '      P',
        '        Link',
        '        Formula',
        '      L',
        '        LI',
        '          Lbl',
        '          LBody',
        '            P',
        '        LI',
        '          Lbl',
        '          LBody',
        '            P',
        '            L',
        '              LI',
        '                Lbl',
        '                LBody',
        '                  P',
        '    Table',
        '      Caption',
        '      THead',
        '        TR',
        '          TH',
        '          TH',
        '      TBody',
        '        TR',
        '          TD',
        '          TD',
      ].join('\n'),
    );
  });

  test('draws every run of text in the element that it belongs to', () => {
    const document = layOutBlocks(
      heading(1, 'Beam'),
      paragraph([text('See '), link('part', 'this'), text('.')]),
      list(['item']),
    );
    const types = runsOf(document.pages[0]!)
      .filter(({ artifact }) => artifact === undefined)
      .map(({ text: words_, element }) => [
        words_.trim(),
        document.elements[element!]!.type,
      ]);
    expect(types).toEqual([
      ['Beam', 'H1'],
      ['See', 'P'],
      ['this', 'Link'],
      ['.', 'P'],
      ['•', 'Lbl'],
      ['item', 'P'],
    ]);
  });

  test('goes on with one element where a paragraph goes on to the next page', () => {
    const document = layOutBlocks(paragraph(words(1200)));
    const elements = document.pages.map(
      (page) => new Set(runsOf(page).flatMap(({ element }) => element ?? [])),
    );
    const shared = [...elements[0]!].filter((element) => elements[1]!.has(element));
    expect(shared).toHaveLength(1);
    expect(document.elements[shared[0]!]!.type).toBe('P');
  });

  test('gives the same document for the same input', () => {
    const of = report([
      part('One', [...long(7), list(['a', 'b'])]),
      part('Two', long(3)),
    ]);
    expect(layOutReport(of)).toEqual(layOutReport(of));
  });

  test('keeps equal blocks apart though they are one object', () => {
    const same = paragraph('Twice.');
    const document = layOutBlocks(same, same);
    expect(document.elements.filter(({ type }) => type === 'P')).toHaveLength(2);
    const elements = runsOf(document.pages[0]!)
      .filter(({ artifact }) => artifact === undefined)
      .map(({ element }) => element);
    expect(new Set(elements).size).toBe(2);
  });
});
