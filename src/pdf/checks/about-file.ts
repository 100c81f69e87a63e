import { bytesOf, itemsOf } from '../reading/pdf-object.ts';
import type { Check } from './opened-pdf.ts';

/** First and last lines, trailer and pages (ISO 19005-3, 6.1). */
export const aboutFile: Check = {
  about: 'file',
  find: ({ file, pages }) => [
    ...headFindings(file.bytes, file.version),
    ...tailFindings(file.bytes),
    ...(file.entry(file.trailer, 'Encrypt') === null ? [] : ['the file is encrypted']),
    ...identifierFindings(itemsOf(file.entry(file.trailer, 'ID')).map(bytesOf)),
    ...(pages.length === 0 ? ['the file has no pages'] : []),
    ...pages
      .filter(({ width, height }) => !isPaper(width) || !isPaper(height))
      .map(({ label }) => `page ${label} is no sheet of paper`),
  ],
};

function headFindings(bytes: Uint8Array, version: string): readonly string[] {
  const comment = bytes.subarray(bytes.indexOf(10) + 1).subarray(0, 5);
  const isBinary =
    comment[0] === 0x25 && comment.subarray(1).every((byte) => byte > 127);
  return [
    ...(version === '1.7' ? [] : [`the file is of PDF ${version}, not 1.7`]),
    ...(isBinary ? [] : ['the second line does not tell that the file is binary']),
  ];
}

function tailFindings(bytes: Uint8Array): readonly string[] {
  const tail = String.fromCharCode(...bytes.subarray(-8));
  return /%%EOF(?:\r\n|\n|\r)?$/u.test(tail)
    ? []
    : ['something stands behind the end of the file'];
}

function identifierFindings(
  parts: readonly (Uint8Array | undefined)[],
): readonly string[] {
  const isWhole = parts.length === 2 && parts.every((part) => part?.length === 16);
  return isWhole ? [] : ['the file has no identifier of two times 16 bytes'];
}

/** A side that ISO 19005-3, 6.1.13, allows: 3 to 14 400 pt. */
const isPaper = (side: number): boolean => side >= 3 && side <= 14400;
