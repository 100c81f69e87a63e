import type { PdfObject } from '../reading/pdf-object.ts';
import { itemsOf, numberOf, pointerOf } from '../reading/pdf-object.ts';
import { readParentTree } from '../reading/read-parent-tree.ts';
import type { ReadElement } from '../reading/read-structure.ts';
import type { Check, OpenedPage, OpenedPdf } from './opened-pdf.ts';

/** The structure tree and the content know each other (ISO 32000-1, 14.7.4). */
export const aboutStructure: Check = {
  about: 'structure',
  find: (opened) => {
    const owners = contentOwners(opened.elements);
    const parents = readParentTree(opened.file);
    return [
      ...(opened.roots.length === 1 && opened.roots[0]?.type === 'Document'
        ? []
        : ['the root of the structure is not one Document']),
      ...opened.roots.flatMap(parentFindings),
      ...opened.pages.flatMap((page) =>
        pageFindings(page, owners, { opened, parents }),
      ),
      ...strayFindings(opened, owners),
    ];
  },
};

/** The element that each marked sequence is a kid of, by its page and number; several where the file is wrong. */
function contentOwners(
  elements: readonly ReadElement[],
): ReadonlyMap<string, readonly ReadElement[]> {
  const owners = new Map<string, readonly ReadElement[]>();
  for (const element of elements) {
    for (const kid of element.kids) {
      if (kid.kind !== 'content') continue;
      const key = `${kid.page} ${kid.mcid}`;
      owners.set(key, [...(owners.get(key) ?? []), element]);
    }
  }
  return owners;
}

function parentFindings(element: ReadElement): readonly string[] {
  return element.kids.flatMap((kid) => {
    if (kid.kind !== 'element') return [];
    const { element: child } = kid;
    const isParent = child.parent === element.number;
    const wrong = `${child.type} ${child.number} names another parent than it has`;
    return [...(isParent ? [] : [wrong]), ...parentFindings(child)];
  });
}

/** Each sequence of a page is a kid of one element, and the parent tree names that element. */
function pageFindings(
  page: OpenedPage,
  owners: ReadonlyMap<string, readonly ReadElement[]>,
  { opened, parents }: { opened: OpenedPdf; parents: ReadonlyMap<number, PdfObject> },
): readonly string[] {
  const { file } = opened;
  const key = numberOf(file.entry(page.dictionary, 'StructParents')) ?? -1;
  const listed = itemsOf(file.resolve(parents.get(key) ?? null)).map(pointerOf);
  const sequences = new Map(
    page.painted.flatMap(({ marking }) =>
      marking.content.map(({ mcid, tag }) => [mcid, tag] as const),
    ),
  );
  return [...sequences].flatMap(([mcid, tag]) => {
    const where = `sequence ${mcid} of page ${page.label}`;
    const [owner, second] = owners.get(`${page.number} ${mcid}`) ?? [];
    if (owner === undefined || second !== undefined)
      return [`${where} is not a kid of one element`];
    return [
      ...(owner.type === tag
        ? []
        : [`${where} is marked ${tag} and belongs to a ${owner.type}`]),
      ...(listed[mcid] === owner.number
        ? []
        : [`${where} has another parent in the parent tree`]),
    ];
  });
}

/** Sequences that elements name and that are on no page. */
function strayFindings(
  { pages }: OpenedPdf,
  owners: ReadonlyMap<string, readonly ReadElement[]>,
): readonly string[] {
  const found = new Set(
    pages.flatMap(({ number, painted }) =>
      painted.flatMap(({ marking }) =>
        marking.content.map(({ mcid }) => `${number} ${mcid}`),
      ),
    ),
  );
  return [...owners].flatMap(([key, elements]) =>
    found.has(key)
      ? []
      : elements.map(
          ({ type, number }) => `${type} ${number} names content that is on no page`,
        ),
  );
}
