import type { EmbeddedFonts } from '../embedded-fonts.ts';
import type { EmbeddedImages } from '../images/embed-images.ts';
import type { Destinations } from '../destinations.ts';
import type { PageTags } from '../tags/open-tags.ts';
import type { Box } from './box.ts';
import type { ContentStream } from './content-stream.ts';
import type { MarkedContent, Owner } from './marked-content.ts';
import type { PageResources } from './page-resources.ts';
import type { PdfReference } from '../pdfkit-internals.ts';
import type { OpenPdf } from '../open-pdf.ts';

/** All that drawing the marks of one page needs. */
export interface PagePen {
  readonly pdf: OpenPdf;
  readonly page: PdfReference;
  /** Height of the page, points: marks are measured from the top, the page from its foot. */
  readonly height: number;
  readonly content: ContentStream;
  readonly owners: MarkedContent;
  readonly tags: PageTags;
  readonly fonts: EmbeddedFonts;
  readonly images: EmbeddedImages;
  readonly resources: PageResources;
  readonly destinations: Destinations;
  /** Links of the page so far. */
  readonly annotations: PdfReference[];
}

/** Where a mark stands and what it belongs to, from the groups around it. */
export interface Surroundings {
  /** Origin of the mark's coordinates, points from the page's top left. */
  readonly x: number;
  readonly y: number;
  /** Undefined outside every element and artifact, where only anchors may stand. */
  readonly owner: Owner | undefined;
  /** True inside a group whose actual text stands for all its marks. */
  readonly isSpoken: boolean;
  /** What is visible, in points from the page's top left; undefined for all. */
  readonly clip: Box | undefined;
}
