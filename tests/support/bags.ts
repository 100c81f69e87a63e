import { openBag, proveBag, writeBag } from '../../src/bag/index.ts';
import type { BagContents, BagFinding, OpenBag } from '../../src/bag/index.ts';
import type { Diagnostic } from '../../src/diagnostics/index.ts';
import { memoryWorld } from '../../src/world/index.ts';

/** Bytes of a text in UTF-8. */
export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Contents of a small bag, as an issued package has them. */
export const smallContents: BagContents = {
  payload: [
    { path: 'results.json', bytes: bytesOf('{ "format": 1 }\n') },
    { path: 'package.pdf', bytes: bytesOf('%PDF-1.7 of a footbridge\n') },
    {
      path: 'definition/project.yaml',
      bytes: bytesOf('project: { title: Weir footbridge }\nunits: us\n'),
    },
    { path: 'definition/members/b1.yaml', bytes: bytesOf('mark: B1\nkind: beam\n') },
    { path: 'licences/Schrift für alle.txt', bytes: new Uint8Array() },
  ],
  info: [
    { label: 'Source-Organization', value: 'Aldous & Penn' },
    { label: 'Bagging-Date', value: '2031-04-02' },
  ],
};

/** The zip of that bag. */
export const smallBag = (): Promise<Uint8Array> => writeBag(smallContents);

/** What opening a zip that lies in memory gave. */
export async function opened(
  zip: Uint8Array,
): Promise<{ readonly bag?: OpenBag; readonly diagnostics: readonly Diagnostic[] }> {
  const { value, diagnostics } = await openBag(
    memoryWorld({ 'issued.zip': zip }),
    'issued.zip',
  );
  return value === undefined ? { diagnostics } : { bag: value, diagnostics };
}

/** What is told of a zip: why it was not opened, or what is wrong with it; nothing for a whole bag. */
export async function toldOf(
  zip: Uint8Array,
): Promise<readonly (BagFinding | Diagnostic)[]> {
  const { bag, diagnostics } = await opened(zip);
  return bag === undefined ? diagnostics : proveBag(bag);
}
