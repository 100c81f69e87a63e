import type { PdfObject } from './pdf-object.ts';
import {
  entriesOf,
  isKind,
  nameOf,
  numberOr,
  pointerOf,
  textOf,
} from './pdf-object.ts';
import type { PdfFile } from './read-pdf.ts';

/** A kid of a structure element. */
export type ReadKid =
  | { readonly kind: 'element'; readonly element: ReadElement }
  /** A marked sequence of the page whose object has the number. */
  | {
      readonly kind: 'content';
      readonly page: number | undefined;
      readonly mcid: number;
    }
  /** An annotation, both by the numbers of their objects. */
  | {
      readonly kind: 'object';
      readonly page: number | undefined;
      readonly object: number;
    };

/** A structure element as the file has it. */
export interface ReadElement {
  /** The number of its object. */
  readonly number: number;
  readonly type: string;
  /** The number of the object that it names as its parent. */
  readonly parent: number | undefined;
  readonly title: string | undefined;
  readonly alternate: string | undefined;
  readonly actualText: string | undefined;
  readonly id: string | undefined;
  /** Its attributes of all owners together. */
  readonly attributes: ReadonlyMap<string, PdfObject>;
  readonly kids: readonly ReadKid[];
}

/** The structure tree of a file: the elements at its root. */
export function readStructure(file: PdfFile): readonly ReadElement[] {
  const root = file.entry(file.catalog, 'StructTreeRoot');
  const seen = new Set<number>();
  return kidsOf(file, root, undefined, seen).flatMap((kid) =>
    kid.kind === 'element' ? [kid.element] : [],
  );
}

function kidsOf(
  file: PdfFile,
  node: PdfObject,
  page: number | undefined,
  seen: Set<number>,
): readonly ReadKid[] {
  const kids = entriesOf(node).get('K') ?? null;
  const listed = file.resolve(kids);
  const items = isKind(listed, 'array') ? listed.items : [kids];
  return items.flatMap((item): readonly ReadKid[] => {
    const found = file.resolve(item);
    if (found === null) return [];
    if (typeof found === 'number') return [{ kind: 'content', page, mcid: found }];
    return readKid(file, item, page, seen);
  });
}

function readKid(
  file: PdfFile,
  item: PdfObject,
  page: number | undefined,
  seen: Set<number>,
): readonly ReadKid[] {
  const entries = entriesOf(file.resolve(item));
  const pointer = (key: string): number | undefined =>
    pointerOf(entries.get(key) ?? null);
  const type = nameOf(file.entry(item, 'Type'));
  const onPage = pointer('Pg') ?? page;
  if (type === 'MCR') {
    const mcid = numberOr(file.entry(item, 'MCID'), -1);
    return [{ kind: 'content', page: onPage, mcid }];
  }
  if (type === 'OBJR')
    return [{ kind: 'object', page: onPage, object: pointer('Obj') ?? -1 }];
  const number = pointerOf(item);
  if (number === undefined || seen.has(number)) return [];
  seen.add(number);
  return [{ kind: 'element', element: readElement(file, item, number, seen) }];
}

function readElement(
  file: PdfFile,
  item: PdfObject,
  number: number,
  seen: Set<number>,
): ReadElement {
  const entries = entriesOf(file.resolve(item));
  const pointer = (key: string): number | undefined =>
    pointerOf(entries.get(key) ?? null);
  const text = (key: string): string | undefined => textOf(file.entry(item, key));
  return {
    number,
    type: nameOf(file.entry(item, 'S')) ?? '',
    parent: pointer('P'),
    title: text('T'),
    alternate: text('Alt'),
    actualText: text('ActualText'),
    id: text('ID'),
    attributes: attributesOf(file, file.entry(item, 'A')),
    kids: kidsOf(file, file.resolve(item), pointer('Pg'), seen),
  };
}

function attributesOf(
  file: PdfFile,
  object: PdfObject,
): ReadonlyMap<string, PdfObject> {
  const owners = isKind(object, 'array') ? object.items.map(file.resolve) : [object];
  return new Map(owners.flatMap((owner) => [...entriesOf(owner)]));
}

/** An element and all below it, a parent before its children. */
export function elementsWithin(element: ReadElement): readonly ReadElement[] {
  const found: ReadElement[] = [];
  const visit = (one: ReadElement): void => {
    found.push(one);
    for (const kid of one.kids) if (kid.kind === 'element') visit(kid.element);
  };
  visit(element);
  return found;
}
