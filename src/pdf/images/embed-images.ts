import type { OpenPdf } from '../open-pdf.ts';
import type { PdfDictionary, PdfReference, PdfValue } from '../pdfkit-internals.ts';
import type { Picture } from './picture.ts';
import { readPicture } from './read-picture.ts';

/** A picture in the file, and what page resources call it: Im1, Im2, … in the order of first use. */
export interface EmbeddedImage {
  readonly id: string;
  readonly reference: PdfReference;
}

/** The pictures of a document by their `source`, each embedded once. */
export type EmbeddedImages = (source: string) => EmbeddedImage;

/** Embeds pictures as they are asked for. Throws RangeError on one that is missing or unreadable. */
export function embedImages(
  pdf: OpenPdf,
  images: Readonly<Record<string, Uint8Array>>,
): EmbeddedImages {
  const known = new Map<string, EmbeddedImage>();
  return (source) => {
    const before = known.get(source);
    if (before !== undefined) return before;
    const bytes = Object.hasOwn(images, source) ? images[source] : undefined;
    if (bytes === undefined) throw new RangeError(`There is no picture ${source}.`);
    const picture = readPicture(bytes);
    if ('problem' in picture) throw new RangeError(`${source} ${picture.problem}.`);
    const embedded = {
      id: `Im${known.size + 1}`,
      reference: embedPicture(pdf, picture),
    };
    known.set(source, embedded);
    return embedded;
  };
}

function embedPicture(pdf: OpenPdf, picture: Picture): PdfReference {
  const { width, height, opacity, clearColour } = picture;
  if (opacity !== undefined && pdf.conformance === 'PDF/A-1b')
    throw new RangeError('A file of PDF/A-1 holds no picture that is partly clear.');
  const mask =
    opacity === undefined
      ? undefined
      : pdf.addStream(
          { ...frame(width, height, 8), ColorSpace: 'DeviceGray' },
          opacity,
        );
  return pdf.addStream(
    {
      ...frame(width, height, picture.bits),
      ColorSpace: colourSpace(pdf, picture),
      ...packingOf(picture),
      SMask: mask,
      Mask: clearColour?.flatMap((value) => [value, value]),
    },
    picture.data,
  );
}

function frame(width: number, height: number, bits: number): PdfDictionary {
  return {
    Type: 'XObject',
    Subtype: 'Image',
    Width: width,
    Height: height,
    BitsPerComponent: bits,
  };
}

function colourSpace(pdf: OpenPdf, { colours }: Picture): PdfValue {
  if (typeof colours === 'string') return colours;
  const entries = Math.floor(colours.palette.length / 3);
  const palette = pdf.addStream({}, colours.palette.subarray(0, 3 * entries));
  return ['Indexed', 'DeviceRGB', entries - 1, palette];
}

function packingOf({ packing, width, bits }: Picture): PdfDictionary {
  switch (packing.kind) {
    case 'none':
      return {};
    case 'jpeg':
      return { Filter: 'DCTDecode' };
    case 'png':
      return {
        Filter: 'FlateDecode',
        DecodeParms: {
          Predictor: 15,
          Colors: packing.channels,
          BitsPerComponent: bits,
          Columns: width,
        },
      };
  }
}
