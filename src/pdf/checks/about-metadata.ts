import { entriesOf } from '../reading/pdf-object.ts';
import { readMetadata } from '../reading/read-metadata.ts';
import type { Check } from './opened-pdf.ts';

/** What must stand in the XMP packet: which parts of which standards the file keeps. */
const stated: readonly (readonly [name: string, value: string])[] = [
  ['pdfaid:part', '3'],
  ['pdfaid:conformance', 'A'],
  ['pdfuaid:part', '1'],
  // PDF/A does not know the namespace of the line above, so the packet describes it.
  ['pdfaSchema:namespaceURI', 'http://www.aiim.org/pdfua/ns/id/'],
];

/** Entries of the information dictionary and the XMP properties that must say the same. */
const pairs = [
  ['Title', 'dc:title'],
  ['Author', 'dc:creator'],
  ['Subject', 'dc:description'],
  ['Creator', 'xmp:CreatorTool'],
  ['Producer', 'pdf:Producer'],
  ['CreationDate', 'xmp:CreateDate'],
  ['ModDate', 'xmp:ModifyDate'],
] as const;

/** Metadata: readable as they are, well formed, and the same twice. */
export const aboutMetadata: Check = {
  about: 'metadata',
  find: ({ file }) => {
    const packet = file.entry(file.catalog, 'Metadata');
    const packed = entriesOf(packet).has('Filter') ? ['the metadata are packed'] : [];
    const { information, xmp } = readMetadata(file);
    if ('problem' in xmp) return [...packed, xmp.problem];
    const first = (name: string): string | undefined => xmp.get(name)?.[0];
    return [
      ...packed,
      ...stated
        .filter(([name, value]) => xmp.get(name)?.includes(value) !== true)
        .map(([name, value]) => `the metadata do not state ${name} ${value}`),
      ...(first('dc:title') === undefined ? ['the metadata have no title'] : []),
      ...pairs
        .filter(
          ([key, name]) => plainDate(information.get(key)) !== plainDate(first(name)),
        )
        .map(([key, name]) => `${key} and ${name} differ`),
    ];
  },
};

/** A date of either kind as digits; any other text as it is. */
function plainDate(text: string | undefined): string | undefined {
  const isDate = /^(?:D:)?\d{4}-?\d\d-?\d\dT?[\d:]+Z$/u.test(text ?? '');
  return isDate ? text?.replace(/\D/gu, '') : text;
}
