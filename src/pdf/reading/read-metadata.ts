import { entriesOf, textOf } from './pdf-object.ts';
import type { PdfFile } from './read-pdf.ts';
import { readXml } from './read-xml.ts';
import type { XmlElement } from './read-xml.ts';

/** What a file says about itself. */
export interface ReadMetadata {
  /** The information dictionary: Title, Creator and so on. */
  readonly information: ReadonlyMap<string, string>;
  /** The elements of the XMP packet that hold a text, by their names with prefixes; or what is wrong with it. */
  readonly xmp: ReadonlyMap<string, readonly string[]> | { readonly problem: string };
}

/** Reads the information dictionary and the XMP packet. */
export function readMetadata(file: PdfFile): ReadMetadata {
  const information = file.entry(file.trailer, 'Info');
  const texts = [...entriesOf(information).keys()].map(
    (key) => [key, textOf(file.entry(information, key)) ?? ''] as const,
  );
  const packet = new TextDecoder().decode(
    file.decode(file.entry(file.catalog, 'Metadata')),
  );
  const xml = readXml(packet);
  return {
    information: new Map(texts),
    xmp: 'problem' in xml ? xml : textsOf(xml),
  };
}

/** The texts of each element by its name; the text of a list belongs to the element around it. */
function textsOf(root: XmlElement): ReadonlyMap<string, readonly string[]> {
  const texts = new Map<string, string[]>();
  const visit = (element: XmlElement, owner: string): void => {
    const name = element.name.startsWith('rdf:') ? owner : element.name;
    if (element.children.length === 0) {
      const known = texts.get(name) ?? [];
      texts.set(name, [...known, element.text]);
    }
    for (const child of element.children) visit(child, name);
  };
  visit(root, root.name);
  return texts;
}
