import type { PdfObject } from '../reading/pdf-object.ts';
import { entriesOf, isKind, itemsOf, nameOf } from '../reading/pdf-object.ts';
import type { PdfFile } from '../reading/read-pdf.ts';
import type { Check } from './opened-pdf.ts';

/** Pictures: in grey or RGB, without what an archive cannot show (ISO 19005-3, 6.2.8). */
export const aboutImages: Check = {
  about: 'images',
  find: ({ file, pages }) =>
    pages.flatMap(({ dictionary, label }) => {
      const named = entriesOf(
        file.entry(file.entry(dictionary, 'Resources'), 'XObject'),
      );
      return [...named].flatMap(([name, object]) =>
        imageFindings(file, file.resolve(object)).map(
          (finding) => `${name} on page ${label} ${finding}`,
        ),
      );
    }),
};

function imageFindings(file: PdfFile, image: PdfObject): readonly string[] {
  const space = file.entry(image, 'ColorSpace');
  const base = isKind(space, 'array') ? file.resolve(itemsOf(space)[1] ?? null) : space;
  const colours = nameOf(base) ?? '';
  return [
    ...(nameOf(file.entry(image, 'Subtype')) === 'Image' ? [] : ['is no picture']),
    ...(colours === 'DeviceGray' || colours === 'DeviceRGB'
      ? []
      : [`has the colours ${colours}`]),
    ...['Alternates', 'OPI']
      .filter((key) => entriesOf(image).has(key))
      .map((key) => `has the entry ${key}`),
    ...(file.entry(image, 'Interpolate') === true ? ['is smoothed by the viewer'] : []),
    ...(file.decode(image).length === 0 ? ['holds nothing'] : []),
  ];
}
