import { describe, expect, test } from 'vitest';
import { openTemplates } from '../../src/report/template-set.ts';
import { fillToBlocks } from '../../src/report/fill-to-blocks.ts';

function blocksOf(xhtml: string): unknown {
  return fillToBlocks(openTemplates({ one: xhtml }), 'one', {});
}

function faultOf(xhtml: string): string {
  const filled = fillToBlocks(openTemplates({ one: xhtml }), 'one', {});
  return 'diagnostic' in filled ? filled.diagnostic.message : 'no fault';
}

describe('the templates’ HTML', () => {
  test('reads headings with their anchors and bookmarks', () => {
    expect(blocksOf('<h1 id="x" bookmark="1">Index</h1>')).toEqual({
      blocks: [
        {
          kind: 'heading',
          level: 1,
          anchor: 'x',
          bookmark: 1,
          content: [{ kind: 'text', text: 'Index', style: 'plain' }],
        },
      ],
    });
  });

  test('collapses the white space of the template but keeps no-break spaces', () => {
    expect(blocksOf('<p>\n  one\n  two\u00a0kip  </p>')).toMatchObject({
      blocks: [{ content: [{ text: 'one two\u00a0kip' }] }],
    });
  });

  test('puts what stands in an aside into the margin', () => {
    expect(blocksOf('<p>Text<aside>ASCE 7</aside></p>')).toMatchObject({
      blocks: [{ content: [{ text: 'Text' }], margin: [{ text: 'ASCE 7' }] }],
    });
  });

  test('reads tables with heads, columns and spans', () => {
    const table =
      '<table class="ruled small" columns="left decimal"><thead><tr><th colspan="2">A</th></tr></thead><tbody><tr class="ruled"><td>1</td><td>2</td></tr></tbody></table>';
    expect(blocksOf(table)).toMatchObject({
      blocks: [
        {
          columns: ['left', 'decimal'],
          style: 'ruled',
          size: 'small',
          head: [{ cells: [{ isHead: true, colSpan: 2 }] }],
          body: [{ isRuled: true, cells: [{ colSpan: 1 }, {}] }],
        },
      ],
    });
  });

  test('leaves out paragraphs and sections that came out empty', () => {
    expect(blocksOf('<p> </p><section class="box"></section>')).toEqual({ blocks: [] });
  });

  test('reports an unclosed tag with the line that it stands on, and repairs nothing', () => {
    expect(faultOf('<p>one</p>\n<p>two')).toBe(
      'report-templates/one.hbs gives markup that is not well formed: unexpected close tag while <p> was open, at “<p>two”',
    );
  });

  test('refuses an element that the subset does not have', () => {
    expect(faultOf('<marquee>no</marquee>')).toContain(
      '<marquee> is no element that can stand here',
    );
    expect(faultOf('<p><video/></p>')).toContain('<video>');
  });

  test('refuses text that stands in no paragraph', () => {
    expect(faultOf('stray')).toContain('“stray” stands outside any paragraph');
  });
});
