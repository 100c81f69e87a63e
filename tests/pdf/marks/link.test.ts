import { describe, expect, test } from 'vitest';
import { readPages, readPdf } from '../../../src/pdf/index.ts';
import { itemsOf, numberOf, textOf } from '../../../src/pdf/reading/pdf-object.ts';
import { documentOf, of, page, words, write } from '../../support/paged-documents.ts';

/** The annotation of a link to an address, as it is read back. */
async function linkTo(
  address: string,
): Promise<{ rectangle: readonly (number | undefined)[]; uri: string | undefined }> {
  const link = {
    kind: 'link',
    x: 1,
    y: -8,
    width: 30,
    height: 11,
    to: { address },
    says: 'There',
  } as const;
  const document = documentOf(
    ['Document', {}, [['P', {}, [['Link']]]]],
    [page('1', [of(2, 72, 100, [...words('there'), link])])],
  );
  const file = readPdf(await write(document));
  if ('problem' in file) throw new Error(file.problem);
  const [annotation] = itemsOf(file.entry(readPages(file)[0]!.dictionary, 'Annots'));
  return {
    rectangle: itemsOf(file.entry(annotation!, 'Rect')).map(numberOf),
    uri: textOf(file.entry(file.entry(annotation!, 'A'), 'URI')),
  };
}

describe('a link', () => {
  test('covers its rectangle, foot first', async () => {
    expect((await linkTo('https://a.example')).rectangle).toEqual([73, 689, 103, 700]);
  });

  test.each([
    ['https://a.example/x?y=1&z=(2)', 'https://a.example/x?y=1&z=(2)'],
    ['https://a.example/Höhe über NN', 'https://a.example/H%C3%B6he%20%C3%BCber%20NN'],
    ['https://a.example/𝜎', 'https://a.example/%F0%9D%9C%8E'],
    ['https://a.example/a%20b', 'https://a.example/a%20b'],
    ['https://a.example/\uD800', 'https://a.example/%EF%BF%BD'],
  ])('to %s is written in ASCII', async (address, uri) => {
    expect((await linkTo(address)).uri).toBe(uri);
  });
});
