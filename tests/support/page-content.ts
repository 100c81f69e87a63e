import { readPages, readPdf } from '../../src/pdf/index.ts';
import type { Mark } from '../../src/drawing/index.ts';
import { documentOf, of, page, write } from './paged-documents.ts';

/** The operators of a file's page, a line each as they were written. */
export function contentOf(bytes: Uint8Array, index: number = 0): readonly string[] {
  const file = readPdf(bytes);
  if ('problem' in file) throw new Error(file.problem);
  const { dictionary } = readPages(file)[index]!;
  const content = file.decode(file.entry(dictionary, 'Contents'));
  return new TextDecoder().decode(content).split('\n');
}

/** The operators that draw some marks in a paragraph whose group stands at (100, 200) on a sheet of 792 pt. */
export async function drawn(
  marks: readonly Mark[],
  images: Readonly<Record<string, Uint8Array>> = {},
): Promise<readonly string[]> {
  const document = documentOf(
    ['Document', {}, [['P', {}, [['Span'], ['Link']]]]],
    [page('1', [of(1, 100, 200, marks)])],
  );
  return contentOf(await write(document, { images }));
}
