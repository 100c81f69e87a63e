import type { PdfObject } from './pdf-object.ts';

/** A word of the file that is no object: `obj`, `endobj`, `stream`, an operator, a closing bracket. */
export interface Keyword {
  readonly kind: 'keyword';
  readonly word: string;
}

/** An object or keyword, and where the file goes on behind it. */
export interface Scanned {
  readonly item: PdfObject | Keyword;
  readonly end: number;
}

/** True where what was read is no object. */
export function isKeyword(item: PdfObject | Keyword | undefined): item is Keyword {
  return typeof item === 'object' && item !== null && item.kind === 'keyword';
}

const spaces: ReadonlySet<number> = new Set([0, 9, 10, 12, 13, 32]);
const delimiters: ReadonlySet<number> = new Set(
  Array.from('()<>[]{}/%', (letter) => letter.charCodeAt(0)),
);
const percent = 0x25;

/** The first place from an offset on that is neither space nor comment. */
export function skipSpace(bytes: Uint8Array, from: number): number {
  let at = from;
  let isComment = false;
  for (let byte = bytes[at]; byte !== undefined; byte = bytes[at]) {
    if (byte === percent) isComment = true;
    if (byte === 10 || byte === 13) isComment = false;
    if (!isComment && !spaces.has(byte)) break;
    at += 1;
  }
  return at;
}

/** Reads a name that begins with its slash at an offset (ISO 32000-1, 7.3.5). */
export function scanName(bytes: Uint8Array, from: number): Scanned {
  const end = endOfWord(bytes, from + 1);
  const name = ascii(bytes, from + 1, end).replace(
    /#([0-9A-Fa-f]{2})/gu,
    (_, digits: string) => String.fromCharCode(parseInt(digits, 16)),
  );
  return { item: { kind: 'name', name }, end };
}

/** Reads a number, `true`, `false`, `null` or a keyword; a bracket that closes is a keyword too. */
export function scanWord(bytes: Uint8Array, from: number): Scanned {
  const end = endOfWord(bytes, from);
  if (end === from) return scanClosing(bytes, from);
  const word = ascii(bytes, from, end);
  return { item: meaningOf(word), end };
}

function meaningOf(word: string): PdfObject | Keyword {
  if (word === 'true' || word === 'false') return word === 'true';
  if (word === 'null') return null;
  const isNumber = /^[+-]?(?:\d+\.?\d*|\.\d+)$/u.test(word);
  return isNumber ? Number(word) : { kind: 'keyword', word };
}

function scanClosing(bytes: Uint8Array, from: number): Scanned {
  const isDouble = bytes[from] === 0x3e && bytes[from + 1] === 0x3e;
  const end = from + (isDouble ? 2 : 1);
  return { item: { kind: 'keyword', word: ascii(bytes, from, end) }, end };
}

function endOfWord(bytes: Uint8Array, from: number): number {
  let at = from;
  for (let byte = bytes[at]; byte !== undefined; byte = bytes[at]) {
    if (spaces.has(byte) || delimiters.has(byte)) break;
    at += 1;
  }
  return at;
}

function ascii(bytes: Uint8Array, from: number, to: number): string {
  let text = '';
  for (let at = from; at < to; at += 1) text += String.fromCharCode(bytes[at] ?? 0);
  return text;
}
