import type { PdfObject } from './pdf-object.ts';
import { entriesOf, isKind, itemsOf, nameOf, numberOr } from './pdf-object.ts';
import type { PdfFile } from './read-pdf.ts';
import { readToUnicode } from './read-to-unicode.ts';

/** A composite font of a file: what its two-byte codes mean and how wide they are. */
export interface ReadFont {
  /** Its name with the tag of the subset: `BZZZZZ+SourceSerif4-Regular`. */
  readonly name: string;
  /** The text of each code. */
  readonly texts: ReadonlyMap<number, string>;
  /** The advance of a code, thousandths of an em. */
  readonly widthOf: (code: number) => number;
  /** The embedded TrueType file; empty where the font is not embedded. */
  readonly program: Uint8Array;
  /** What the reader expects of a font and does not find. */
  readonly lacks: readonly string[];
}

/** Reads a Type 0 font (ISO 32000-1, 9.7). */
export function readFont(file: PdfFile, font: PdfObject): ReadFont {
  const descendant = itemsOf(file.entry(font, 'DescendantFonts'))[0] ?? null;
  const descriptor = file.entry(descendant, 'FontDescriptor');
  const toUnicode = file.entry(font, 'ToUnicode');
  const program = file.decode(file.entry(descriptor, 'FontFile2'));
  const texts = attemptToUnicode(file.decode(toUnicode));
  const lacks = [
    nameOf(file.entry(font, 'Subtype')) === 'Type0' ? '' : 'is no composite font',
    nameOf(file.entry(font, 'Encoding')) === 'Identity-H'
      ? ''
      : 'is not coded by glyph',
    isKind(toUnicode, 'stream') ? '' : 'does not say what its codes mean',
    texts === undefined ? 'says unreadably what its codes mean' : '',
    program.length > 0 ? '' : 'is not embedded',
  ];
  return {
    name: nameOf(file.entry(font, 'BaseFont')) ?? '',
    texts: texts ?? new Map<number, string>(),
    widthOf: readWidths(file, descendant),
    program,
    lacks: lacks.filter((lack) => lack !== ''),
  };
}

function attemptToUnicode(bytes: Uint8Array): ReadonlyMap<number, string> | undefined {
  try {
    return readToUnicode(bytes);
  } catch (fault) {
    if (fault instanceof RangeError) return undefined;
    throw fault;
  }
}

const lastCode = 0xffff; // codes have two bytes

/** The widths of a descendant font, listed or by ranges (ISO 32000-1, 9.7.4.3). */
function readWidths(file: PdfFile, descendant: PdfObject): (code: number) => number {
  const fallback = numberOr(file.entry(descendant, 'DW'), 1000);
  const widths = new Map<number, number>();
  const items = itemsOf(file.entry(descendant, 'W')).map(file.resolve);
  let at = 0;
  while (at + 1 < items.length) {
    const first = Math.max(0, numberOr(items[at], 0));
    const second = items[at + 1] ?? null;
    const isListed = isKind(second, 'array');
    const last = isListed ? first + second.items.length - 1 : numberOr(second, first);
    for (let code = first; code <= Math.min(last, lastCode); code += 1) {
      const width = isListed ? second.items[code - first] : items[at + 2];
      widths.set(code, numberOr(width, fallback));
    }
    at += isListed ? 2 : 3;
  }
  return (code) => widths.get(code) ?? fallback;
}

/** The fonts that a page's resources name. */
export function fontsOf(
  file: PdfFile,
  page: PdfObject,
): ReadonlyMap<string, PdfObject> {
  return entriesOf(file.entry(file.entry(page, 'Resources'), 'Font'));
}
