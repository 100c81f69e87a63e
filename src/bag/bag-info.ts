import type { BagLine } from './bag.ts';

/**
 * bag-info.txt (RFC 8493, 2.2.2), one `Label: value` a line. Blanks and line breaks within a value become
 * one blank, because a reader would take a broken line for the next label. Throws for a label that could
 * not be read back.
 */
export function writeInfo(lines: readonly BagLine[]): string {
  for (const { label } of lines)
    if (!/^[^\s:](?:[^\r\n:]*[^\s:])?$/.test(label))
      throw new RangeError(`not a label of bag-info.txt: ${JSON.stringify(label)}`);
  return lines
    .map(({ label, value }) => `${label}: ${value.replace(/\s+/g, ' ').trim()}\n`)
    .join('');
}

/** Reads bag-info.txt: a line that begins with a blank continues the one before; what has no colon is left out. */
export function readInfo(text: string): readonly BagLine[] {
  return text
    .replace(/(?:\r\n|\r|\n)[ \t]+/g, ' ')
    .split(/\r\n|\r|\n/)
    .flatMap((line) => {
      const colon = line.indexOf(':');
      return colon < 1
        ? []
        : [{ label: line.slice(0, colon).trim(), value: line.slice(colon + 1).trim() }];
    });
}
