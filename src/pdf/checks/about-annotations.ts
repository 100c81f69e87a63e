import type { PdfObject } from '../reading/pdf-object.ts';
import {
  entriesOf,
  itemsOf,
  nameOf,
  numberOf,
  numberOr,
  pointerOf,
  textOf,
} from '../reading/pdf-object.ts';
import { readParentTree } from '../reading/read-parent-tree.ts';
import { readDestinations } from '../reading/read-outline.ts';
import type { PdfFile } from '../reading/read-pdf.ts';
import type { ReadElement } from '../reading/read-structure.ts';
import type { Check, OpenedPage, OpenedPdf } from './opened-pdf.ts';

/** Links: printed, described, tagged as links, and leading somewhere (PDF/UA-1, 7.18; ISO 19005-3, 6.3 and 6.5). */
export const aboutAnnotations: Check = {
  about: 'links',
  find: (opened) => {
    const tools = {
      ...opened,
      places: readDestinations(opened.file),
      owners: ownersOf(opened),
      parents: readParentTree(opened.file),
    };
    return opened.pages.flatMap((page) => {
      const { file } = opened;
      const listed = itemsOf(file.entry(page.dictionary, 'Annots'));
      const isInOrder = nameOf(file.entry(page.dictionary, 'Tabs')) === 'S';
      return [
        ...(isInOrder
          ? []
          : [`page ${page.label} does not visit links in their order`]),
        ...listed.flatMap((annotation) =>
          linkFindings(annotation, page, tools).map(
            (finding) => `a link on page ${page.label} ${finding}`,
          ),
        ),
      ];
    });
  },
};

interface Owner {
  readonly element: ReadElement;
  /** The page that the element says the annotation is on. */
  readonly page: number | undefined;
}

interface Tools extends OpenedPdf {
  readonly places: ReturnType<typeof readDestinations>;
  readonly owners: ReadonlyMap<number, Owner>;
  readonly parents: ReadonlyMap<number, PdfObject>;
}

function ownersOf({ elements }: OpenedPdf): ReadonlyMap<number, Owner> {
  return new Map(
    elements.flatMap((element) =>
      element.kids.flatMap((kid) =>
        kid.kind === 'object'
          ? [[kid.object, { element, page: kid.page }] as const]
          : [],
      ),
    ),
  );
}

const hidden = 0b100011; // Invisible, Hidden, NoView (ISO 32000-1, table 165)
const printed = 4;

function linkFindings(
  annotation: PdfObject,
  page: OpenedPage,
  { file, places, owners, parents }: Tools,
): readonly string[] {
  const key = numberOf(file.entry(annotation, 'StructParent'));
  const flags = numberOr(file.entry(annotation, 'F'), 0);
  const owner = owners.get(pointerOf(annotation) ?? -1);
  const contents = textOf(file.entry(annotation, 'Contents')) ?? '';
  const isLink = nameOf(file.entry(annotation, 'Subtype')) === 'Link';
  const wanted: readonly (readonly [isRight: boolean, finding: string])[] = [
    [isLink, 'is an annotation of another kind'],
    [(flags & printed) !== 0 && (flags & hidden) === 0, 'is not printed as it is seen'],
    [contents.trim() !== '', 'does not say where it leads'],
    [owner?.element.type === 'Link', 'belongs to no Link element'],
    [
      owner === undefined || owner.page === page.number,
      'is said to be on another page',
    ],
    [isParent(key, owner, parents), 'has another parent in the parent tree'],
    [leadsSomewhere(file, annotation, places), 'leads nowhere'],
  ];
  return wanted.flatMap(([isRight, finding]) => (isRight ? [] : [finding]));
}

function isParent(
  key: number | undefined,
  owner: Owner | undefined,
  parents: Tools['parents'],
): boolean {
  const parent = pointerOf(parents.get(key ?? -1) ?? null);
  return parent !== undefined && parent === owner?.element.number;
}

function leadsSomewhere(
  file: PdfFile,
  annotation: PdfObject,
  places: Tools['places'],
): boolean {
  const name = textOf(file.entry(annotation, 'Dest'));
  if (name !== undefined) return places.has(name);
  const action = file.entry(annotation, 'A');
  const address = textOf(file.entry(action, 'URI')) ?? '';
  return (
    entriesOf(action).size > 0 &&
    nameOf(file.entry(action, 'S')) === 'URI' &&
    address !== ''
  );
}
