import { describe, expect, test } from 'vitest';
import { readDestinations, readPages, readPdf } from '../../src/pdf/index.ts';
import { documentOf, of, page, words, write } from '../support/paged-documents.ts';

const anchor = (name: string, y: number = 0) => ({ kind: 'anchor', y, name }) as const;

describe('named places', () => {
  test('stand where their anchors do, however deep in groups', async () => {
    const inner = {
      kind: 'group',
      x: 5,
      y: 30,
      marks: [anchor('deep', 2), ...words('a')],
    } as const;
    const document = documentOf(
      ['Document', {}, [['P']]],
      [page('1', [of(1, 72, 100, [inner])])],
    );
    const file = readPdf(await write(document));
    if ('problem' in file) throw new Error(file.problem);
    expect(readDestinations(file)).toEqual(
      new Map([['deep', { page: readPages(file)[0]!.number, y: 792 - 132 }]]),
    );
  });

  test('are the first of their name: what is repeated on later pages does not move them', async () => {
    const sheet = (label: string) =>
      page(label, [of(1, 72, 100, [anchor('table'), ...words('Case')])]);
    const document = documentOf(['Document', {}, [['P']]], [sheet('1'), sheet('2')]);
    const file = readPdf(await write(document));
    if ('problem' in file) throw new Error(file.problem);
    expect(readDestinations(file).get('table')!.page).toBe(readPages(file)[0]!.number);
  });
});
