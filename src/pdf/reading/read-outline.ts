import type { PdfObject } from './pdf-object.ts';
import {
  bytesOf,
  entriesOf,
  itemsOf,
  numberOf,
  pointerOf,
  textOf,
} from './pdf-object.ts';
import { readKeyTree } from './read-key-tree.ts';
import type { PdfFile } from './read-pdf.ts';

/** A place in a file: the number of its page's object, and a height above the page's foot in points. */
export interface ReadDestination {
  readonly page: number | undefined;
  readonly y: number | undefined;
}

/** A bookmark as the file has it. */
export interface ReadBookmark {
  readonly title: string;
  /** The name of the place that it leads to; undefined where it has none. */
  readonly destination: string | undefined;
  /** As stated: how many bookmarks below it are in sight, or would be, negative, were it open. */
  readonly count: number | undefined;
  readonly children: readonly ReadBookmark[];
}

/** The bookmarks of a file, and the count that their root states. */
export function readOutline(file: PdfFile): {
  readonly count: number | undefined;
  readonly bookmarks: readonly ReadBookmark[];
} {
  const root = file.entry(file.catalog, 'Outlines');
  const count = numberOf(file.entry(root, 'Count'));
  return { count, bookmarks: readRow(file, root, new Set()) };
}

function readRow(
  file: PdfFile,
  parent: PdfObject,
  seen: Set<number>,
): readonly ReadBookmark[] {
  const row: ReadBookmark[] = [];
  let next = entriesOf(parent).get('First') ?? null;
  for (let number = pointerOf(next); number !== undefined; number = pointerOf(next)) {
    if (seen.has(number)) break;
    seen.add(number);
    const item = file.resolve(next);
    row.push({
      title: textOf(file.entry(item, 'Title')) ?? '',
      destination: textOf(file.entry(item, 'Dest')),
      count: numberOf(file.entry(item, 'Count')),
      children: readRow(file, item, seen),
    });
    next = entriesOf(item).get('Next') ?? null;
  }
  return row;
}

/** The named places of a file, in the order of their tree. */
export function readDestinations(file: PdfFile): ReadonlyMap<string, ReadDestination> {
  const tree = file.entry(file.entry(file.catalog, 'Names'), 'Dests');
  return new Map(
    readKeyTree(file, tree, 'Names').flatMap(([key, value]) => {
      if (bytesOf(key) === undefined) return [];
      const [page = null, , , y = null] = itemsOf(file.resolve(value));
      return [[textOf(key) ?? '', { page: pointerOf(page), y: numberOf(y) }] as const];
    }),
  );
}
