import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import {
  readAttachments,
  readDestinations,
  readMetadata,
  readOutline,
  readPageText,
  readPages,
  readPdf,
} from '../../src/pdf/index.ts';
import type { PdfFile } from '../../src/pdf/index.ts';
import { itemsOf, nameOf, textOf } from '../../src/pdf/reading/pdf-object.ts';
import { digest } from '../../src/world/index.ts';
import {
  artifact,
  documentOf,
  documentWith,
  of,
  page,
  words,
  write,
} from '../support/paged-documents.ts';
import { sampleDocument, sampleOptions } from '../support/sample-document.ts';

/** Opens a file that must be one. */
function open(bytes: Uint8Array): PdfFile {
  const file = readPdf(bytes);
  if ('problem' in file) throw new Error(file.problem);
  return file;
}

describe('writing a document', () => {
  test('puts every word of the text where its mark stands, and reads back the same letters', async () => {
    const file = open(await write(sampleDocument, sampleOptions));
    const [first] = readPages(file);
    const { painted } = readPageText(file, first!);
    const heading = painted.find((piece) => piece.kind === 'text' && piece.size === 19);
    expect(heading).toMatchObject({
      text: 'Deck beam B1 & <its> loads',
      x: 72,
      y: 792 - 72 - 19,
    });
    const notes = painted.flatMap((piece) =>
      piece.kind === 'text' ? [piece.text] : [],
    );
    expect(notes).toContain('Small displacements — ‘first order’ only.');
    expect(notes).toContain('fl ffi: 0.5 ≤ α');
  });

  test('gives every sheet its size, its label and links in the order of the structure', async () => {
    const file = open(await write(sampleDocument, sampleOptions));
    const pages = readPages(file);
    expect(pages.map(({ label, width, height }) => [label, width, height])).toEqual([
      ['1', 612, 792],
      ['2', 612, 792],
      ['3', 612, 792],
    ]);
    for (const { dictionary } of pages)
      expect(nameOf(file.entry(dictionary, 'Tabs'))).toBe('S');
  });

  test('says the same in the information dictionary and in the metadata, odd letters and all', async () => {
    const { information, xmp } = readMetadata(
      open(await write(sampleDocument, sampleOptions)),
    );
    if ('problem' in xmp) throw new Error('the metadata cannot be read');
    expect(information.get('Title')).toBe('Brücke <A> & “B”');
    expect(xmp.get('dc:title')).toEqual(['Brücke <A> & “B”']);
    expect(xmp.get('dc:creator')).toEqual(['Office of I. Pellworm']);
    expect(information.get('CreationDate')).toBe('D:20260314000000Z');
    expect(xmp.get('xmp:CreateDate')).toEqual(['2026-03-14T00:00:00Z']);
  });

  test('bears no date at all where none is given', async () => {
    const bytes = await write(sampleDocument, {
      ...sampleOptions,
      date: undefined,
    } as never);
    const { information, xmp } = readMetadata(open(bytes));
    expect([...information.keys()].filter((key) => key.includes('Date'))).toEqual([]);
    expect(
      [...(xmp as ReadonlyMap<string, unknown>).keys()].filter((key) =>
        key.includes('Date'),
      ),
    ).toEqual([]);
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/\(D:\d/u);
  });

  test('leads bookmarks and links to the places that they name', async () => {
    const file = open(await write(sampleDocument, sampleOptions));
    const pages = readPages(file);
    const places = readDestinations(file);
    expect(places.get('B1')).toEqual({ page: pages[0]!.number, y: 720 });
    expect(places.get('Säule ½')).toEqual({ page: pages[2]!.number, y: 696 });
    const { count, bookmarks } = readOutline(file);
    expect(count).toBe(2);
    expect(bookmarks[1]).toMatchObject({
      title: 'Säule ½ & more',
      destination: 'Säule ½',
      count: -1,
      children: [{ title: 'Loads (from above)' }],
    });
    const [toSheet, toWeb] = itemsOf(file.entry(pages[0]!.dictionary, 'Annots'));
    expect(textOf(file.entry(toSheet!, 'Dest'))).toBe('Säule ½');
    expect(textOf(file.entry(toSheet!, 'Contents'))).toBe('Column, sheet 3');
    expect(textOf(file.entry(file.entry(toWeb!, 'A'), 'URI'))).toBe(
      'https://loads.example/snow?zone=2&h%C3%B6he=3',
    );
  });

  test('carries its attachments whole', async () => {
    const file = open(await write(sampleDocument, sampleOptions));
    expect(
      readAttachments(file).map(({ name, mime, relationship, bytes }) => ({
        name,
        mime,
        relationship,
        text: new TextDecoder().decode(bytes),
      })),
    ).toEqual([
      {
        name: 'members/B1.yaml',
        mime: 'application/yaml',
        relationship: 'Source',
        text: 'mark: B1\ntitle: Deck beam\n',
      },
      {
        name: 'results.json',
        mime: 'application/json',
        relationship: 'Data',
        text: '{"format":1}',
      },
    ]);
  });

  test('gives the same bytes twice, and another identifier for other inputs', async () => {
    const once = await write(sampleDocument, sampleOptions);
    const again = await write(sampleDocument, sampleOptions);
    expect(Buffer.compare(once, again)).toBe(0);
    const other = await write(sampleDocument, { ...sampleOptions, inputs: 'others' });
    const identifier = (bytes: Uint8Array): string =>
      /\/ID \[<([0-9a-f]{32})>/u.exec(Buffer.from(bytes).toString('latin1'))?.[1] ?? '';
    expect(identifier(once)).toHaveLength(32);
    expect(identifier(other)).not.toBe(identifier(once));
  });

  test('gives the same bytes in another zone and language', async () => {
    const elsewhere = execFileSync(
      process.execPath,
      [
        'node_modules/vitest/vitest.mjs',
        'run',
        '--config',
        '.config/vitest.config.ts',
        'tests/pdf/digest-of-sample.test.ts',
      ],
      {
        env: {
          ...process.env,
          TZ: 'Asia/Tokyo',
          LANG: 'cs_CZ.UTF-8',
          LC_ALL: 'cs_CZ.UTF-8',
          SHOW_DIGEST: '1',
        },
        encoding: 'utf8',
      },
    );
    const here = digest(await write(sampleDocument, sampleOptions));
    expect(/sample ([0-9a-f]{64})/u.exec(elsewhere)?.[1]).toBe(here);
  }, 60_000);

  test('embeds a face once, however many pages use it, and only faces that are used', async () => {
    const text = Buffer.from(await write(sampleDocument, sampleOptions)).toString(
      'latin1',
    );
    const names = Array.from(
      text.matchAll(/\/FontName \/([A-Z]{6}\+\S+)/gu),
      ([, name]) => name,
    );
    expect(names).toEqual([
      'BZZZZZ+SourceSerif4-Regular',
      'CZZZZZ+KaTeX_Math-Italic',
      'DZZZZZ+SourceSerif4-It',
      'EZZZZZ+KaTeX_Main-Regular',
    ]);
  });

  test('writes a document of many pages and places as trees of leaves', async () => {
    const count = 150;
    const pages = Array.from({ length: count }, (_, index) =>
      page(String(index + 1), [
        of(1, 72, 72, [
          { kind: 'anchor', y: 0, name: `part-${index}` },
          ...words(`Sheet ${index + 1}`),
        ]),
      ]),
    );
    const file = open(await write(documentOf(['Document', {}, [['P']]], pages)));
    expect(readPages(file)).toHaveLength(count);
    const places = [...readDestinations(file).keys()];
    expect(places).toHaveLength(count);
    expect(places).toEqual([...places].sort());
    const dests = file.entry(file.entry(file.catalog, 'Names'), 'Dests');
    expect(itemsOf(file.entry(dests, 'Kids'))).toHaveLength(3);
  });

  test('writes a document without pages worth a mention: one empty sheet', async () => {
    const file = open(await write(documentOf(['Document'], [page('1', [])])));
    expect(readPages(file)).toHaveLength(1);
    expect(file.faults()).toEqual([]);
  });
});

describe('a document that contradicts itself', () => {
  test('is refused where a mark belongs to nobody', async () => {
    const document = documentOf(['Document', {}, [['P']]], [page('1', words('stray'))]);
    await expect(write(document)).rejects.toThrow('belongs to no element');
  });

  test('is refused where an element is not there, or out of place', async () => {
    await expect(
      write(documentOf(['Document'], [page('1', [of(7, 0, 0, words('a'))])])),
    ).rejects.toThrow('There is no element 7');
    const document = documentWith(...words('a'));
    const elements = [...document.elements].reverse();
    await expect(write({ ...document, elements })).rejects.toThrow('stands at place');
  });

  test('is refused where a link or a bookmark leads nowhere', async () => {
    const link = {
      kind: 'link',
      x: 0,
      y: 0,
      width: 9,
      height: 9,
      to: { anchor: 'gone' },
      says: 'Gone',
    } as const;
    const document = documentOf(
      ['Document', {}, [['P', {}, [['Link']]]]],
      [page('1', [of(2, 0, 20, [...words('a'), link])])],
    );
    await expect(write(document)).rejects.toThrow('Nothing is called “gone”');
    const bookmarks = [{ title: 'Lost', anchor: 'lost', children: [] }];
    await expect(write({ ...documentWith(...words('a')), bookmarks })).rejects.toThrow(
      'lost',
    );
  });

  test('is refused where a link stands outside a Link element', async () => {
    const link = {
      kind: 'link',
      x: 0,
      y: 0,
      width: 9,
      height: 9,
      to: { address: 'https://a.example' },
      says: 'A',
    } as const;
    await expect(write(documentWith(...words('a'), link))).rejects.toThrow(
      'which is a P',
    );
    const document = documentOf(['Document'], [page('1', [artifact([link])])]);
    await expect(write(document)).rejects.toThrow('belongs to no element');
  });

  test('is refused where a picture is missing or cannot be read', async () => {
    const image = {
      kind: 'image',
      x: 0,
      y: 0,
      width: 9,
      height: 9,
      source: 'images/a.png',
    } as const;
    await expect(write(documentWith(image))).rejects.toThrow(
      'There is no picture images/a.png',
    );
    const images = { 'images/a.png': new Uint8Array([1, 2, 3]) };
    await expect(write(documentWith(image), { images })).rejects.toThrow(
      'no PNG or JPEG',
    );
  });

  test('is refused where its date is no day', async () => {
    await expect(
      write(documentWith(...words('a')), { date: '14 March' }),
    ).rejects.toThrow('14 March');
  });
});
