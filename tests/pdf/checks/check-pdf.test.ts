import { describe, expect, test } from 'vitest';
import type { PagedDocument } from '../../../src/layout/index.ts';
import { checkPdf, readPages, readPdf } from '../../../src/pdf/index.ts';
import { pointerOf, entriesOf } from '../../../src/pdf/reading/pdf-object.ts';
import { amendPdf, objectTexts, rewriteObjects } from '../../support/amend-pdf.ts';
import { documentOf, of, page, words, write } from '../../support/paged-documents.ts';
import type { Tree } from '../../support/paged-documents.ts';
import { sampleDocument, sampleOptions } from '../../support/sample-document.ts';

const good = await write(sampleDocument, sampleOptions);

/** The findings of a file as lines. */
const findings = (bytes: Uint8Array): readonly string[] =>
  checkPdf(bytes).map(({ about, message }) => `${about}: ${message}`);

/** The findings of the sample with a pattern in its objects replaced. */
const afterRewriting = (pattern: RegExp, replacement: string): readonly string[] =>
  findings(rewriteObjects(good, pattern, replacement));

/** The sample with the content of its first page rewritten. */
function withContent(rewrite: (content: string) => string): Uint8Array {
  const file = readPdf(good);
  if ('problem' in file) throw new Error(file.problem);
  const [first] = readPages(file);
  const number = pointerOf(entriesOf(first!.dictionary).get('Contents')!)!;
  const content = Buffer.from(file.decode({ kind: 'reference', number })).toString(
    'latin1',
  );
  const data = rewrite(content);
  if (data === content) throw new Error('The content is as before.');
  return amendPdf(good, { [number]: { entries: '', data } });
}

const afterContent = (rewrite: (content: string) => string): readonly string[] =>
  findings(withContent(rewrite));

describe('a file as the program writes it', () => {
  test('has no findings', () => {
    expect(findings(good)).toEqual([]);
  });

  test('has none either when its objects are written anew unchanged', () => {
    const texts = [...objectTexts(good)].filter(([, text]) =>
      text.includes('/StructElem'),
    );
    expect(texts.length).toBeGreaterThan(30);
    expect(findings(amendPdf(good, Object.fromEntries(texts)))).toEqual([]);
  });
});

describe('a damaged file', () => {
  test.each([
    ['is empty', new Uint8Array(), 'file: the file does not begin as a PDF does'],
    [
      'is cut short',
      good.subarray(0, 9000),
      'file: the file has no startxref at its end',
    ],
  ])('that %s is told to be none', (_, bytes, finding) => {
    expect(findings(bytes)).toEqual([finding]);
  });

  test('that has something behind its end is found', () => {
    expect(findings(Uint8Array.from([...good, 65, 66, 67, 68]))).toContain(
      'file: something stands behind the end of the file',
    );
  });

  test('that has lost a byte in a stream is found', () => {
    const bytes = Uint8Array.from(good);
    const at = Buffer.from(good).indexOf('stream\n') + 60;
    bytes[at] = (bytes[at]! + 1) % 256;
    expect(findings(bytes).length).toBeGreaterThan(0);
  });

  test('that refers to an object that is missing is found', () => {
    expect(
      afterRewriting(/\/ParentTreeNextKey \d+/u, '/ParentTreeNextKey 5 /X 999 0 R'),
    ).toContain('references: object 999 is referred to and missing');
  });
});

describe('a broken twin of a good file', () => {
  test.each([
    ['without a language', /\/Lang \(en\)/u, '', 'catalog: the language is not stated'],
    [
      'not marked as tagged',
      /\/Marked true/u,
      '/Marked false',
      'catalog: the file is not marked as tagged',
    ],
    [
      'whose title stays hidden',
      /\/DisplayDocTitle true/u,
      '',
      'catalog: the title is not shown instead of the file name',
    ],
    [
      'without an output intent',
      /\/OutputIntents \[[^\]]*\]/u,
      '',
      'catalog: the output intent is not an RGB profile for PDF/A',
    ],
    [
      'that opens with an action',
      /\/Type \/Catalog/u,
      '/Type /Catalog /OpenAction [41 0 R /Fit]',
      'catalog: the catalog has the entry OpenAction',
    ],
    [
      'with another title',
      /^\(Office of I\. Pellworm\)$/u,
      '(Office of I. Amrum)',
      'metadata: Author and dc:creator differ',
    ],
    [
      'with another date',
      /^\(D:20260314000000Z\)$/u,
      '(D:20260315000000Z)',
      'metadata: CreationDate and xmp:CreateDate differ',
    ],
    [
      'with a font that is not embedded',
      /\/FontFile2 \d+ 0 R/u,
      '',
      'fonts: BZZZZZ+SourceSerif4-Regular is not embedded',
    ],
    [
      'with a font not named as a subset',
      /\/BaseFont \/BZZZZZ\+/gu,
      '/BaseFont /',
      'fonts: SourceSerif4-Regular is not named as a subset',
    ],
    [
      'with wrong widths',
      /\/W \[0 \[/u,
      '/W [1 [',
      'fonts: BZZZZZ+SourceSerif4-Regular states another width for code 1 than its file',
    ],
    [
      'whose codes mean nothing',
      /\/ToUnicode \d+ 0 R/u,
      '',
      'fonts: BZZZZZ+SourceSerif4-Regular does not say what its codes mean',
    ],
    [
      'with a figure that says nothing',
      /\/Alt \(A beam on two supports\)/u,
      '',
      'nesting: Figure 38 has no alternate text',
    ],
    [
      'with an equation that says nothing',
      /\/Alt \(R sub A\)/u,
      '/Alt ( )',
      'nesting: Formula 10 has no alternate text',
    ],
    [
      'with a type of its own',
      /\/S \/Caption/u,
      '/S /Legend',
      'nesting: Legend is no standard type',
    ],
    [
      'with a cell outside a row',
      /\/S \/TR/gu,
      '/S /Div',
      'nesting: a TH stands in a Div',
    ],
    [
      'with a header cell that heads nothing',
      /\/Scope \/Row/u,
      '',
      'tables: header cell 25 does not say what it heads',
    ],
    [
      'with uneven rows',
      /\/ColSpan 2/u,
      '',
      'tables: table 18 has rows of 2 and 3 columns',
    ],
    [
      'with notes alike',
      /\/ID \(note-27\)/u,
      '/ID (note-28)',
      'nesting: two notes have no identifiers of their own',
    ],
    [
      'with an element of another parent',
      /\/S \/Lbl\n\/P \d+ 0 R/u,
      '/S /Lbl\n/P 5 0 R',
      'structure: Lbl 15 names another parent than it has',
    ],
    [
      'with content that two elements name',
      /\/S \/Lbl([^]*)\/K 8/u,
      '/S /Lbl$1/K 9',
      'structure: sequence 9 of page 1 is not a kid of one element',
    ],
    [
      'with content on no page',
      /\/S \/Lbl([^]*)\/K 8/u,
      '/S /Lbl$1/K 80',
      'structure: Lbl 15 names content that is on no page',
    ],
    [
      'with another parent in the parent tree',
      /\/Nums \[0 \[7 0 R/u,
      '/Nums [0 [8 0 R',
      'structure: sequence 0 of page 1 has another parent in the parent tree',
    ],
    [
      'with a link said to be on another page',
      /(\/Type \/OBJR\n\/Obj 43 0 R\n\/Pg) 41/u,
      '$1 49',
      'links: a link on page 1 is said to be on another page',
    ],
    [
      'with a link that is not printed',
      /\/F 4/u,
      '/F 0',
      'links: a link on page 1 is not printed as it is seen',
    ],
    [
      'with a link that is hidden',
      /\/F 4/u,
      '/F 6',
      'links: a link on page 1 is not printed as it is seen',
    ],
    [
      'with a link that says nothing',
      /\/Contents \(Column, sheet 3\)/u,
      '',
      'links: a link on page 1 does not say where it leads',
    ],
    [
      'with a link to nowhere',
      /\/Dest \([^)]*\)\n\/StructParent/u,
      '/Dest (gone)\n/StructParent',
      'links: a link on page 1 leads nowhere',
    ],
    [
      'with a link unknown to the parent tree',
      /\/StructParent 1\b/u,
      '/StructParent 77',
      'links: a link on page 1 has another parent in the parent tree',
    ],
    [
      'with links in no order',
      /\/Tabs \/S/u,
      '',
      'links: page 1 does not visit links in their order',
    ],
    [
      'with a count too high',
      /\/Type \/Outlines\n\/Count 2/u,
      '/Type /Outlines\n/Count 3',
      'bookmarks: 2 bookmarks are in sight and 3 are stated',
    ],
    [
      'without a count',
      /\/Count -1/u,
      '',
      'bookmarks: the bookmark Säule ½ & more counts those below it wrong',
    ],
    [
      'with a bookmark to nowhere',
      /\/Dest \(B1\)/u,
      '/Dest (B2)',
      'bookmarks: the bookmark Deck beam leads nowhere',
    ],
    [
      'with a place on no page',
      /\(B1\) \[41 0 R/u,
      '(B1) [5 0 R',
      'bookmarks: the place B1 is on no page',
    ],
    [
      'with an attachment nobody is associated with',
      /\/AF \[[^\]]*\]/u,
      '',
      'attachments: the attachment members/B1.yaml is not associated with the document',
    ],
    [
      'with an attachment of no relationship',
      /\/AFRelationship \/Source/u,
      '/AFRelationship /Mine',
      'attachments: the attachment members/B1.yaml does not say what it is to the document',
    ],
    [
      'with an attachment not described',
      /\/Desc \(Every figure of the package\)/u,
      '',
      'attachments: the attachment results.json has no description',
    ],
    [
      'with a heading that skips a level',
      /\/S \/H2/u,
      '/S /H3',
      'headings: an H3 follows an H1',
    ],
    [
      'on no paper',
      /\/MediaBox \[0 0 612 792\]/u,
      '/MediaBox [0 0 612 2]',
      'file: page 1 is no sheet of paper',
    ],
  ])('%s is found', (_, pattern, replacement, finding) => {
    expect(afterRewriting(pattern, replacement)).toContain(finding);
  });
});

describe('content that is not as it must be', () => {
  test.each([
    [
      'painted outside every owner',
      (content: string) => `${content}\n0 0 m 9 9 l S`,
      'content: a path on page 1 belongs to nobody',
    ],
    [
      'an artifact inside the text',
      (content: string) => content.replace('BT', '/Artifact BMC 0 0 m 9 9 l S EMC BT'),
      'content: a marked sequence Artifact begins inside another on page 1',
    ],
    [
      'text inside an artifact',
      (content: string) =>
        content.replace(
          /(\/Artifact <<[^>]*>> BDC)/u,
          '$1\n/P <</MCID 90>> BDC 0 0 m 9 9 l S EMC',
        ),
      'content: a marked sequence P begins inside another on page 1',
    ],
    [
      'a sequence without an end',
      (content: string) => content.replace(/EMC$/u, ''),
      'content: 1 marked sequences never end on page 1',
    ],
    [
      'an end without a sequence',
      (content: string) => `${content} EMC`,
      'content: a marked sequence ends that never began on page 1',
    ],
    [
      'a state never restored',
      (content: string) => `q ${content}`,
      'content: 1 saved graphics states are never restored on page 1',
    ],
    [
      'states nested too deep',
      (content: string) => `${'q '.repeat(29)}${content}${' Q'.repeat(29)}`,
      'content: graphics states are saved 29 deep on page 1',
    ],
    [
      'colours of print',
      (content: string) => content.replace('BT', '0 0 0 1 k BT'),
      'content: page 1 uses the operator k',
    ],
    [
      'a font that is not there',
      (content: string) => content.replace('/F1 19 Tf', '/F9 19 Tf'),
      'content: text is shown in an unknown font F9 on page 1',
    ],
    [
      'the empty box',
      (content: string) => content.replace(/<0001/u, '<0000'),
      'fonts: BZZZZZ+SourceSerif4-Regular draws the empty box of a missing glyph',
    ],
    [
      'a code without a glyph',
      (content: string) => content.replace(/<0001/u, '<7fff'),
      'fonts: BZZZZZ+SourceSerif4-Regular has no glyph for code 32767',
    ],
    [
      'a tag of another type',
      (content: string) => content.replace('/H1 <<', '/P <<'),
      'structure: sequence 0 of page 1 is marked P and belongs to a H1',
    ],
    [
      'an operator cut off',
      (content: string) => `${content} 1 0 0`,
      'content: the content ends in the middle of an operator on page 1',
    ],
  ])('is found: %s', (_, rewrite, finding) => {
    expect(afterContent(rewrite)).toContain(finding);
  });

  test('letters of private use are found where no text stands for them', async () => {
    const glyph = { id: 1, x: 0, text: '\uE020' };
    const run = {
      kind: 'glyphs',
      x: 0,
      y: 0,
      face: 'KaTeX_Main-Regular',
      size: 10,
      colour: [0, 0, 0],
      glyphs: [glyph],
    } as const;
    const spoken = {
      kind: 'group',
      x: 0,
      y: 0,
      marks: [run],
      actualText: 'not',
    } as const;
    const tree: Tree = ['Document', {}, [['P']]];
    const silent = await write(documentOf(tree, [page('1', [of(1, 72, 72, [run])])]));
    expect(findings(silent)).toEqual([
      'texts: a letter of private use on page 1 has no text that stands for it',
    ]);
    expect(
      findings(await write(documentOf(tree, [page('1', [of(1, 72, 72, [spoken])])]))),
    ).toEqual([]);
  });
});

describe('a picture that is not as it must be', () => {
  const file = readPdf(good);
  if ('problem' in file) throw new Error(file.problem);
  const resources = file.entry(readPages(file)[2]!.dictionary, 'Resources');
  const number = pointerOf(entriesOf(file.entry(resources, 'XObject')).get('Im2')!)!;
  const size = '/Type /XObject /Subtype /Image /Width 1 /Height 1 /BitsPerComponent 8';

  test.each([
    [
      'in the colours of print',
      `${size} /ColorSpace /DeviceCMYK`,
      'has the colours DeviceCMYK',
    ],
    [
      'smoothed',
      `${size} /ColorSpace /DeviceGray /Interpolate true`,
      'is smoothed by the viewer',
    ],
    [
      'with others in its place',
      `${size} /ColorSpace /DeviceGray /Alternates []`,
      'has the entry Alternates',
    ],
    [
      'that is a drawing',
      '/Type /XObject /Subtype /Form /ColorSpace /DeviceGray',
      'is no picture',
    ],
  ])('is found: one %s', (_, entries, finding) => {
    expect(findings(amendPdf(good, { [number]: { entries, data: 'abcd' } }))).toContain(
      `images: Im2 on page 3 ${finding}`,
    );
  });
});

describe('metadata that are not as they must be', () => {
  const packet = (rewrite: (xmp: string) => string): readonly string[] => {
    const file = readPdf(good);
    if ('problem' in file) throw new Error(file.problem);
    const number = pointerOf(entriesOf(file.catalog).get('Metadata')!)!;
    const data = rewrite(
      Buffer.from(file.decode({ kind: 'reference', number })).toString('latin1'),
    );
    return findings(
      amendPdf(good, { [number]: { entries: '/Type /Metadata /Subtype /XML', data } }),
    );
  };

  test.each([
    ['packed', (xmp: string) => xmp, 'metadata: the metadata are packed'],
    [
      'with a bare ampersand',
      (xmp: string) => xmp.replace('&amp;', '&'),
      'metadata: an ampersand stands alone in rdf:li',
    ],
    [
      'with a tag left open',
      (xmp: string) => xmp.replace('</dc:title>', ''),
      'metadata: dc:title ends as rdf:Description',
    ],
    [
      'of another part',
      (xmp: string) => xmp.replace('<pdfaid:part>3', '<pdfaid:part>2'),
      'metadata: the metadata do not state pdfaid:part 3',
    ],
    [
      'without PDF/UA',
      (xmp: string) => xmp.replace(/<pdfuaid:part>1<\/pdfuaid:part>/u, ''),
      'metadata: the metadata do not state pdfuaid:part 1',
    ],
    [
      'without the schema of PDF/UA',
      (xmp: string) =>
        xmp.replace(/<pdfaSchema:namespaceURI>[^<]*/u, '<pdfaSchema:namespaceURI>'),
      'metadata: the metadata do not state pdfaSchema:namespaceURI http://www.aiim.org/pdfua/ns/id/',
    ],
    [
      'without a title',
      (xmp: string) => xmp.replace(/<dc:title>.*<\/dc:title>/u, ''),
      'metadata: the metadata have no title',
    ],
  ])('%s are found', (_, rewrite, finding) => {
    expect(packet(rewrite)).toContain(finding);
  });
});

describe('documents whose tags are not as they must be', () => {
  const written = async (
    tree: Tree,
    ids: readonly number[],
  ): Promise<readonly string[]> => {
    const marks = ids.map((id, index) =>
      of(id, 72, 72 + 20 * index, words(`text ${id}`)),
    );
    const document: PagedDocument = documentOf(tree, [page('1', marks)]);
    return findings(await write(document));
  };

  test('a table without header cells is found', async () => {
    const tree: Tree = [
      'Document',
      {},
      [['Table', {}, [['TR', {}, [['TD'], ['TD']]]]]],
    ];
    expect(await written(tree, [3, 4])).toEqual([
      'tables: table 6 has no header cells',
    ]);
  });

  test('a head without a body is found', async () => {
    const cell = ['TH', { scope: 'Column' }] as const;
    const tree: Tree = [
      'Document',
      {},
      [['Table', {}, [['THead', {}, [['TR', {}, [cell]]]]]]],
    ];
    expect(await written(tree, [4])).toEqual([
      'tables: table 6 has a head and no body',
    ]);
  });

  test('a list item outside a list is found', async () => {
    const tree: Tree = ['Document', {}, [['Div', {}, [['LI', {}, [['LBody']]]]]]];
    expect(await written(tree, [3])).toEqual(['nesting: a LI stands in a Div']);
  });

  test('a first heading that is no H1 is found', async () => {
    expect(await written(['Document', {}, [['H2']]], [1])).toEqual([
      'headings: an H2 follows an H0',
    ]);
  });

  test('two roots are found', async () => {
    const document = documentOf(
      ['Sect', {}, [['P']]],
      [page('1', [of(1, 72, 72, words('a'))])],
    );
    expect(findings(await write(document))).toEqual([
      'structure: the root of the structure is not one Document',
    ]);
  });
});
