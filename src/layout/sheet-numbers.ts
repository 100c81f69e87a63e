import type { SetPart } from './set-part.ts';
import type { AnchorBook } from './setting.ts';

/** The sheet of every anchor, counted from 1 over the whole package, and how many sheets there are. */
export interface SheetCount {
  readonly sheets: ReadonlyMap<string, number>;
  readonly sheetCount: number;
}

/** Counts the sheets of parts; where two things share an anchor the first is meant. */
export function countSheets(parts: readonly SetPart[]): SheetCount {
  const sheets = new Map<string, number>();
  let sheetCount = 0;
  for (const { bands, pages } of parts) {
    for (const { from, to } of pages) {
      sheetCount += 1;
      for (const { anchors = [] } of bands.slice(from, to)) {
        for (const anchor of anchors)
          if (!sheets.has(anchor)) sheets.set(anchor, sheetCount);
      }
    }
  }
  return { sheets, sheetCount };
}

// Before the first count a number is taken to have two digits.
const unknownYet = '00';

/** What is known of anchors: their titles from the start, their sheets once they have been counted. */
export function openAnchors(
  counted: SheetCount | undefined,
  titles: ReadonlyMap<string, string>,
): AnchorBook {
  const sheetOf = (anchor: string): string => {
    if (!titles.has(anchor)) return '?';
    const sheet = counted?.sheets.get(anchor);
    if (sheet !== undefined) return String(sheet);
    return counted === undefined ? unknownYet : '?';
  };
  return {
    sheetOf,
    says: (anchor) => {
      const title = titles.get(anchor);
      return title === undefined ? undefined : `Sheet ${sheetOf(anchor)}: ${title}`;
    },
    sheetCount: () => (counted === undefined ? unknownYet : String(counted.sheetCount)),
  };
}
