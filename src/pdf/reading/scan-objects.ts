import type { PdfObject } from './pdf-object.ts';
import { scanHexString, scanString } from './scan-strings.ts';
import { isKeyword, scanName, scanWord, skipSpace } from './scan-words.ts';
import type { Keyword, Scanned } from './scan-words.ts';

/** Reads objects one after the other from some bytes. */
export interface Scanner {
  /** Where it stands. */
  readonly at: () => number;
  /** The next object or keyword; undefined at the end. Throws RangeError where the syntax is broken. */
  readonly next: () => PdfObject | Keyword | undefined;
}

/** A reader of the syntax of ISO 32000-1, 7.2 and 7.3, that begins at an offset. */
export function scanObjects(bytes: Uint8Array, from: number = 0): Scanner {
  let at = from;
  return {
    at: () => at,
    next: () => {
      const scanned = scanItem(bytes, at, 0);
      at = scanned?.end ?? bytes.length;
      return scanned?.item;
    },
  };
}

const deepest = 100;

function scanItem(bytes: Uint8Array, from: number, depth: number): Scanned | undefined {
  const at = skipSpace(bytes, from);
  const byte = bytes[at];
  if (byte === undefined) return undefined;
  if (depth > deepest) throw new RangeError('objects are nested too deep');
  switch (String.fromCharCode(byte)) {
    case '/':
      return scanName(bytes, at);
    case '(':
      return asString(scanString(bytes, at));
    case '<':
      return bytes[at + 1] === byte
        ? scanDictionary(bytes, at, depth)
        : asString(scanHexString(bytes, at));
    case '[': {
      const { items, end } = scanUntil(']', bytes, { at: at + 1, depth });
      return { item: { kind: 'array', items }, end };
    }
    default:
      return scanWord(bytes, at);
  }
}

function asString({ bytes, end }: { bytes: Uint8Array; end: number }): Scanned {
  return { item: { kind: 'string', bytes }, end };
}

function scanDictionary(bytes: Uint8Array, from: number, depth: number): Scanned {
  const { items, end } = scanUntil('>>', bytes, { at: from + 2, depth });
  const entries = new Map<string, PdfObject>();
  for (let index = 0; index + 1 < items.length; index += 2) {
    const key = items[index] ?? null;
    if (key === null || typeof key !== 'object' || key.kind !== 'name')
      throw new RangeError('a dictionary has a key that is no name');
    entries.set(key.name, items[index + 1] ?? null);
  }
  return { item: { kind: 'dictionary', entries }, end };
}

/** The objects up to a closing bracket. */
function scanUntil(
  closing: ']' | '>>',
  bytes: Uint8Array,
  from: { readonly at: number; readonly depth: number },
): { readonly items: readonly PdfObject[]; readonly end: number } {
  const items: PdfObject[] = [];
  let { at } = from;
  for (;;) {
    const scanned = scanItem(bytes, at, from.depth + 1);
    if (scanned === undefined)
      throw new RangeError(`the end comes before a ${closing}`);
    const { item, end } = scanned;
    at = end;
    if (!isKeyword(item)) items.push(item);
    else if (item.word === closing) return { items, end };
    else if (item.word === 'R') items.push(takeReference(items));
    else throw new RangeError(`${item.word} stands where an object should`);
  }
}

/** `12 0 R` in an array or a dictionary: the two numbers before the R make a reference. */
function takeReference(items: PdfObject[]): PdfObject {
  const generation = items.pop();
  const number = items.pop();
  if (typeof number !== 'number' || typeof generation !== 'number')
    throw new RangeError('an R stands behind no two numbers');
  return { kind: 'reference', number };
}
