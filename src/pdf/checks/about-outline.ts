import { readDestinations, readOutline } from '../reading/read-outline.ts';
import type { ReadBookmark } from '../reading/read-outline.ts';
import type { Check } from './opened-pdf.ts';

/** Bookmarks and named places: each leads to a page, and the counts are right (ISO 32000-1, 12.3.3). */
export const aboutOutline: Check = {
  about: 'bookmarks',
  find: ({ file, pages }) => {
    const { count, bookmarks } = readOutline(file);
    const places = readDestinations(file);
    const numbers = new Set(pages.map(({ number }) => number));
    const visible = sumOf(bookmarks.map(inSight));
    return [
      ...(bookmarks.length === 0 || count === visible
        ? []
        : [`${visible} bookmarks are in sight and ${count} are stated`]),
      ...bookmarks.flatMap((bookmark) => bookmarkFindings(bookmark, places)),
      ...[...places].flatMap(([name, { page }]) =>
        page !== undefined && numbers.has(page)
          ? []
          : [`the place ${name} is on no page`],
      ),
    ];
  },
};

function bookmarkFindings(
  { title, destination, count, children }: ReadBookmark,
  places: ReturnType<typeof readDestinations>,
): readonly string[] {
  const below = sumOf(children.map(inSight));
  const isCounted =
    children.length === 0 ? count === undefined : Math.abs(count ?? 0) === below;
  return [
    ...(title.trim() === '' ? ['a bookmark has no title'] : []),
    ...(destination !== undefined && places.has(destination)
      ? []
      : [`the bookmark ${title} leads nowhere`]),
    ...(isCounted ? [] : [`the bookmark ${title} counts those below it wrong`]),
    ...children.flatMap((child) => bookmarkFindings(child, places)),
  ];
}

/** A bookmark and those below it that can be seen without opening any. */
function inSight({ count, children }: ReadBookmark): number {
  return 1 + ((count ?? 0) > 0 ? sumOf(children.map(inSight)) : 0);
}

const sumOf = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0);
