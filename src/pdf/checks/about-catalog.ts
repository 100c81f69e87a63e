import type { PdfObject } from '../reading/pdf-object.ts';
import {
  entriesOf,
  isKind,
  itemsOf,
  nameOf,
  numberOf,
  textOf,
} from '../reading/pdf-object.ts';
import type { PdfFile } from '../reading/read-pdf.ts';
import type { Check } from './opened-pdf.ts';

/** Entries by which a file acts by itself, or asks for what an archive cannot give (ISO 19005-3, 6.4 to 6.6). */
const forbidden = [
  'AA',
  'OpenAction',
  'Requirements',
  'NeedsRendering',
  'AcroForm',
  'OCProperties',
  'Perms',
] as const;

/** The catalog: language, tags, title in sight, output intent, and nothing that acts. */
export const aboutCatalog: Check = {
  about: 'catalog',
  find: ({ file }) => {
    const { catalog } = file;
    const entry = (of: PdfObject, key: string): PdfObject => file.entry(of, key);
    const language = textOf(entry(catalog, 'Lang')) ?? '';
    const wanted: readonly (readonly [isThere: boolean, message: string])[] = [
      [
        /^[A-Za-z]{2,3}(?:-[A-Za-z0-9]+)*$/u.test(language),
        'the language is not stated',
      ],
      [
        entry(entry(catalog, 'MarkInfo'), 'Marked') === true,
        'the file is not marked as tagged',
      ],
      [
        isKind(entry(catalog, 'StructTreeRoot'), 'dictionary'),
        'the file has no structure tree',
      ],
      [
        entry(entry(catalog, 'ViewerPreferences'), 'DisplayDocTitle') === true,
        'the title is not shown instead of the file name',
      ],
      [hasOutputIntent(file), 'the output intent is not an RGB profile for PDF/A'],
      [
        !entriesOf(entry(catalog, 'Names')).has('JavaScript'),
        'the file carries a script',
      ],
    ];
    return [
      ...wanted.flatMap(([isThere, message]) => (isThere ? [] : [message])),
      ...forbidden
        .filter((key) => entriesOf(catalog).has(key))
        .map((key) => `the catalog has the entry ${key}`),
    ];
  },
};

function hasOutputIntent(file: PdfFile): boolean {
  const [intent = null, second] = itemsOf(file.entry(file.catalog, 'OutputIntents'));
  const profile = file.entry(intent, 'DestOutputProfile');
  const head = file.decode(profile).subarray(12, 20);
  return (
    second === undefined &&
    nameOf(file.entry(intent, 'S')) === 'GTS_PDFA1' &&
    numberOf(file.entry(profile, 'N')) === 3 &&
    String.fromCharCode(...head) === 'mntrRGB '
  );
}
