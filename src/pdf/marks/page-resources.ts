import type { PdfDictionary, PdfReference } from '../pdfkit-internals.ts';

/** The fonts and pictures that a page uses, by the names that its content calls them. */
export interface PageResources {
  readonly useFont: (name: string, font: PdfReference) => void;
  readonly useImage: (name: string, image: PdfReference) => void;
  readonly dictionary: () => PdfDictionary;
}

/** No resources yet. */
export function openResources(): PageResources {
  const fonts: PdfDictionary = {};
  const images: PdfDictionary = {};
  return {
    useFont: (name, font) => {
      fonts[name] = font;
    },
    useImage: (name, image) => {
      images[name] = image;
    },
    dictionary: () => ({
      Font: Object.keys(fonts).length === 0 ? undefined : fonts,
      XObject: Object.keys(images).length === 0 ? undefined : images,
    }),
  };
}
