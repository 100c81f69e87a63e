import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { openFonts } from '../../src/font/index.ts';
import type { FontBook } from '../../src/font/index.ts';

/** A font file of the program, read from where it is installed. */
export function ownFontFile(name: string): Uint8Array {
  const path = name.startsWith('KaTeX_')
    ? fileURLToPath(import.meta.resolve(`katex/dist/fonts/${name}`))
    : fileURLToPath(new URL(`../../${name}`, import.meta.url));
  return readFileSync(path);
}

/** The program's own faces. */
export const ownFonts: FontBook = openFonts(ownFontFile);
