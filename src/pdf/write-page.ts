import type { Page } from '../layout/index.ts';
import type { Destinations } from './destinations.ts';
import type { EmbeddedFonts } from './embedded-fonts.ts';
import type { EmbeddedImages } from './images/embed-images.ts';
import { openContent } from './marks/content-stream.ts';
import { drawMark } from './marks/draw-mark.ts';
import { openMarkedContent } from './marks/marked-content.ts';
import { openResources } from './marks/page-resources.ts';
import type { OpenPdf } from './open-pdf.ts';
import type { PdfReference } from './pdfkit-internals.ts';
import type { Tags } from './tags/open-tags.ts';

/** What the pages of a document share. */
export interface PageTools {
  readonly pdf: OpenPdf;
  readonly fonts: EmbeddedFonts;
  readonly images: EmbeddedImages;
  readonly tags: Tags;
  readonly destinations: Destinations;
}

/** Draws a page and writes it: its content in one stream, its resources, its links. */
export function writePage({ drawing }: Page, tools: PageTools): void {
  const { pdf } = tools;
  const { width, height } = drawing;
  const page = pdf.reserve();
  const tags = tools.tags.openPage(page, height);
  const content = openContent();
  const owners = openMarkedContent(content, tags);
  const resources = openResources();
  const annotations: PdfReference[] = [];
  const pen = { ...tools, page, height, content, owners, tags, resources, annotations };
  const around = { x: 0, y: 0, owner: undefined, isSpoken: false, clip: undefined };
  for (const mark of drawing.marks) drawMark(mark, around, pen);
  owners.close();
  page.data = {
    Type: 'Page',
    Parent: pdf.pages,
    MediaBox: [0, 0, roundLength(width), roundLength(height)],
    Contents: pdf.addStream({}, content.bytes()),
    Resources: resources.dictionary(),
    StructParents: tags.key(),
    // Links are visited in the order of the structure (PDF/UA-1, 7.18.3).
    Tabs: 'S',
    Annots: annotations.length === 0 ? undefined : annotations,
  };
  page.end();
  pdf.addPage(page);
}

const roundLength = (length: number): number => Math.round(length * 1000) / 1000;
