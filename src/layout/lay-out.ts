import type { FontBook } from '../font/index.ts';
import type { Report } from '../report/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Typesetter } from '../typeset/index.ts';
import { changeBars, isChangedPage } from './change-bars.ts';
import { elementNode } from './element-node.ts';
import type { ElementNode } from './element-node.ts';
import { openHyphenator } from './hyphenate.ts';
import { numberElements } from './number-elements.ts';
import { anchorPart } from './outline.ts';
import type { AnchoredPart } from './outline.ts';
import type { Page, PagedDocument } from './paged-document.ts';
import { placeBands } from './place-bands.ts';
import { sheetOf } from './paper.ts';
import { placePage } from './place-page.ts';
import { setFoot } from './running-foot.ts';
import { setPart } from './set-part.ts';
import type { PartTools, SetPart } from './set-part.ts';
import { countSheets, openAnchors } from './sheet-numbers.ts';
import type { SheetCount } from './sheet-numbers.ts';
import { setStamp } from './stamp.ts';
import { missingCharacter } from './remarks.ts';
import { openWords } from './words.ts';

/** What laying out takes besides the report. */
export interface LayoutTools {
  readonly theme: Theme;
  readonly fonts: FontBook;
  readonly typesetter: Typesetter;
  /** The pictures of the project folder by path; only whether one is there matters here. */
  readonly images: Readonly<Record<string, Uint8Array>>;
}

/**
 * Lays out a report: blocks become bands, bands become pages, and what says a sheet's number is
 * set again until the numbers no longer change, five rounds at most. Never throws on account of
 * the report's content: what could not be set as asked is told in the document's remarks.
 */
export function layOut(report: Report, tools: LayoutTools): PagedDocument {
  const remarks = new Set<string>();
  const words = openWords(tools.fonts, (character) => {
    remarks.add(missingCharacter(character));
  });
  const partTools: PartTools = {
    theme: tools.theme,
    fonts: tools.fonts,
    typesetter: tools.typesetter,
    words,
    hyphenate: openHyphenator(),
    remark: (remark) => remarks.add(remark),
    hasImage: (source) => Object.hasOwn(tools.images, source),
  };
  const anchored = report.parts.map(anchorPart);
  const settled = settle(report, anchored, partTools);
  const document = elementNode(
    'Document',
    settled.parts.map(({ node }) => node),
    { title: report.title },
  );
  const { elements, idOf } = numberElements(document);
  const pages = drawPages(report, settled, { partTools, idOf });
  return {
    title: report.title,
    ...(report.author === undefined ? {} : { author: report.author }),
    language: report.language,
    pages,
    bookmarks: anchored.map(({ bookmark }) => bookmark),
    elements,
    sheets: Object.fromEntries(settled.sheets),
    remarks: [...remarks],
  };
}

interface Settled extends SheetCount {
  readonly parts: readonly SetPart[];
}

const mostRounds = 5;

/** Sets the parts again and again until the sheets that they name are those that they stand on. */
function settle(
  report: Report,
  anchored: readonly AnchoredPart[],
  tools: PartTools,
): Settled {
  const titles = new Map(anchored.flatMap((part) => [...part.titles]));
  let anchors = openAnchors(undefined, titles);
  let parts: readonly SetPart[] = [];
  for (let round = 1; round <= mostRounds; round += 1) {
    const before = parts;
    parts = anchored.map(({ part }, index) => {
      const known = before[index];
      if (known?.stillHolds(anchors) === true) return known;
      const sheet = sheetOf(report.paper, part.look, tools.theme);
      const kept = known === undefined ? {} : { kept: known.kept };
      return setPart({ part, sheet, ...kept }, anchors, tools);
    });
    const counted = countSheets(parts);
    anchors = openAnchors(counted, titles);
    if (parts.every((part) => part.stillHolds(anchors))) return { parts, ...counted };
  }
  tools.remark(
    `Sheet numbers still changed after ${mostRounds} rounds of laying out; some that are printed may be off by one.`,
  );
  return { parts, ...countSheets(parts) };
}

interface DrawingTools {
  readonly partTools: PartTools;
  readonly idOf: ReadonlyMap<ElementNode, number>;
}

/** Puts the pages of all parts on paper: stamp, text, running foot. */
function drawPages(
  report: Report,
  { parts, sheetCount }: Settled,
  { partTools, idOf }: DrawingTools,
): readonly Page[] {
  const { theme } = partTools;
  const pages: Page[] = [];
  for (const { part, sheet, bands, pages: ranges } of parts) {
    const { stamp: word = '', changeMark } = report;
    const stamp = word === '' ? [] : [setStamp(word, sheet, partTools)];
    for (const range of ranges) {
      const label = String(pages.length + 1);
      const placed = placeBands(bands, range);
      const mark = isChangedPage(placed) ? changeMark : undefined;
      const foot = setFoot(
        {
          foot: part.foot,
          sheet: label,
          sheetCount: String(sheetCount),
          ...(mark === undefined ? {} : { changeMark: mark }),
        },
        sheet,
        partTools,
      );
      const marks = [
        ...stamp,
        ...changeBars(placed, mark, sheet, partTools),
        ...placePage(placed, { sheet, theme, idOf }),
        { kind: 'group', x: 0, y: 0, marks: foot, artifact: 'pagination' } as const,
      ];
      pages.push({
        label,
        drawing: { width: sheet.width, height: sheet.height, marks },
      });
    }
  }
  return pages;
}
