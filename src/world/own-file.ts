import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const packageRoot = new URL('../../', import.meta.url);
const require = createRequire(import.meta.url);

/**
 * A file that belongs to the program: `fonts/…` or `report-templates/…` beside `src` (or `dist`),
 * or a KaTeX face by its file name (`KaTeX_Main-Regular.ttf`), found in the installed package.
 * Throws where there is none: the program is then installed wrongly.
 */
export function readOwnFile(name: string): Uint8Array {
  if (/^KaTeX_[A-Za-z0-9]+-[A-Za-z]+\.ttf$/.test(name))
    return bytesOf(readFileSync(require.resolve(`katex/dist/fonts/${name}`)));
  if (!/^(fonts|report-templates)\//.test(name) || name.includes('..'))
    throw new RangeError(`no file of the program's own is called ${name}`);
  return bytesOf(readFileSync(new URL(name, packageRoot)));
}

// A plain Uint8Array, so that values compare alike whatever world they come from.
const bytesOf = (buffer: Buffer): Uint8Array => new Uint8Array(buffer);
