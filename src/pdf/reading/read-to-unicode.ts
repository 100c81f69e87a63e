import type { PdfObject } from './pdf-object.ts';
import { bytesOf, isKind, itemsOf } from './pdf-object.ts';
import { scanObjects } from './scan-objects.ts';
import { isKeyword } from './scan-words.ts';

/** The text of each code by a ToUnicode map (ISO 32000-1, 9.10.3). Throws RangeError where its syntax is broken. */
export function readToUnicode(bytes: Uint8Array): ReadonlyMap<number, string> {
  const texts = new Map<number, string>();
  const scanner = scanObjects(bytes);
  let operands: PdfObject[] = [];
  for (let item = scanner.next(); item !== undefined; item = scanner.next()) {
    if (!isKeyword(item)) {
      operands.push(item);
      continue;
    }
    if (item.word === 'endbfchar') addCharacters(operands, texts);
    if (item.word === 'endbfrange') addRanges(operands, texts);
    operands = [];
  }
  return texts;
}

const lastCode = 0xffff; // codes have two bytes

function addCharacters(
  operands: readonly PdfObject[],
  texts: Map<number, string>,
): void {
  for (let at = 0; at + 1 < operands.length; at += 2)
    texts.set(codeOf(operands[at]), textOf(operands[at + 1]));
}

function addRanges(operands: readonly PdfObject[], texts: Map<number, string>): void {
  for (let at = 0; at + 2 < operands.length; at += 3) {
    const first = codeOf(operands[at]);
    const last = Math.min(codeOf(operands[at + 1]), lastCode);
    const target = operands[at + 2] ?? null;
    const listed = itemsOf(target);
    for (let code = first; code <= last; code += 1) {
      const text = isKind(target, 'array')
        ? textOf(listed[code - first])
        : countedOn(textOf(target), code - first);
      texts.set(code, text);
    }
  }
}

function codeOf(object: PdfObject | undefined): number {
  let code = 0;
  for (const byte of bytesOf(object ?? null) ?? []) code = code * 256 + byte;
  return code;
}

function textOf(object: PdfObject | undefined): string {
  return new TextDecoder('utf-16be').decode(
    bytesOf(object ?? null) ?? new Uint8Array(),
  );
}

/** A text whose last letter is so many places on. */
function countedOn(text: string, by: number): string {
  const letters = Array.from(text);
  const last = letters.pop()?.codePointAt(0) ?? 0;
  return letters.join('') + String.fromCodePoint(last + by);
}
