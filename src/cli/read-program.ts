import { readFileSync } from 'node:fs';

/** Name and version of the program, from its package.json. */
export function readProgram(): { readonly name: string; readonly version: string } {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  const { name, version } = JSON.parse(text) as {
    readonly name: string;
    readonly version: string;
  };
  return { name, version };
}
