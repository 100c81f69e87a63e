import type { PdfText } from './pdfkit-internals.ts';

// A control character that XML 1.0 (2.2, Char) refuses, or half of a surrogate pair.
const unprintable =
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

/**
 * A text without what neither XMP nor UTF-16 can hold: such characters become U+FFFD. The same
 * words stand in the title of the window, in the metadata and in the tags.
 */
export function cleanText(text: string): string {
  return text.replace(unprintable, '\uFFFD');
}

/** A text as an object that PDFKit prints as a text string and not as a name. */
export function pdfText(text: string): PdfText {
  return Object(cleanText(text)) as PdfText;
}

/** The bytes of a text string: ASCII as it is, all else UTF-16BE behind a byte order mark (ISO 32000-1, 7.9.2.2). */
export function textBytes(text: string): Uint8Array {
  const clean = cleanText(text);
  if (isAscii(clean)) return Uint8Array.from(clean, (letter) => letter.charCodeAt(0));
  const bytes = new Uint8Array(2 + 2 * clean.length);
  const view = new DataView(bytes.buffer);
  view.setUint16(0, 0xfeff);
  for (let index = 0; index < clean.length; index += 1)
    view.setUint16(2 + 2 * index, clean.charCodeAt(index));
  return bytes;
}

/** A text string as it stands in a content stream: ASCII in parentheses, all else in hexadecimal. */
export function printText(text: string): string {
  const clean = cleanText(text);
  if (isAscii(clean)) return `(${clean.replace(/[\\()\r]/gu, escape)})`;
  return `<${Array.from(textBytes(clean), twoDigits).join('')}>`;
}

/** A name as it stands after its slash: what is no plain letter in hexadecimal (ISO 32000-1, 7.3.5). */
export function printName(name: string): string {
  return name.replace(
    /[^A-Za-z0-9.+_-]/gu,
    (letter) => `#${twoDigits(letter.charCodeAt(0))}`,
  );
}

const escape = (letter: string): string => (letter === '\r' ? '\\r' : `\\${letter}`);

const twoDigits = (byte: number): string =>
  byte.toString(16).toUpperCase().padStart(2, '0');

function isAscii(text: string): boolean {
  for (let index = 0; index < text.length; index += 1)
    if (text.charCodeAt(index) > 0x7f) return false;
  return true;
}
