import { longestPath } from './limits.ts';

/** A path that a bag must not have, and why: a phrase that ends a sentence about the path. */
export interface PathFault {
  readonly path: string;
  readonly reason: string;
}

const segment = (path: string, name: string): boolean => path.split('/').includes(name);

/** What makes a path unsafe by itself, in the order in which it is looked for. */
const rules: readonly (readonly [(path: string) => boolean, string])[] = [
  [(path) => path === '', 'is empty'],
  [(path) => path.startsWith('/'), 'is absolute'],
  [(path) => /^[A-Za-z]:/.test(path), 'begins with the letter of a drive'],
  [
    (path) => path.includes('\\'),
    'holds a backslash, which some systems read as a folder',
  ],
  [(path) => segment(path, '..'), 'leads out of the bag by “..”'],
  [(path) => segment(path, '.') || segment(path, ''), 'holds an empty step or “.”'],
  // U+FFFD stands where bytes were no UTF-8. Line breaks alone have a way to be written (RFC 8493, 2.1.3).
  [
    (path) => /(?![\r\n])\p{Cc}|\ufffd/u.test(path),
    'holds a character that cannot be shown',
  ],
  [
    (path) => new TextEncoder().encode(path).length > longestPath,
    `is longer than ${longestPath} bytes`,
  ],
];

/** Why a path must not stand in a bag, by itself; undefined for a path that may. */
export function pathFault(path: string): string | undefined {
  return rules.find(([isBroken]) => isBroken(path))?.[1];
}

/**
 * Every path that must not stand in a bag, and why: unsafe by itself, twice, the same as another on a disk
 * that ignores case or the form of accents, or a file where another path needs a folder.
 */
export function pathFaults(paths: readonly string[]): readonly PathFault[] {
  const alone = paths.flatMap((path) => {
    const reason = pathFault(path);
    return reason === undefined ? [] : [{ path, reason }];
  });
  return alone.length > 0 ? alone : clashes(paths);
}

function clashes(paths: readonly string[]): readonly PathFault[] {
  const taken = new Map<string, string>();
  const faults: PathFault[] = [];
  for (const path of paths) {
    const other = taken.get(folded(path));
    if (other === undefined) taken.set(folded(path), path);
    else faults.push({ path, reason: clashReason(path, other) });
  }
  for (const path of paths)
    for (const folder of foldersAbove(folded(path))) {
      const file = taken.get(folder);
      if (file !== undefined)
        faults.push({
          path: file,
          reason: `is a file and the folder of ${shown(path)}`,
        });
    }
  return faults;
}

function clashReason(path: string, other: string): string {
  return path === other
    ? 'stands there twice'
    : `is the same as ${shown(other)} on a disk that ignores case or the form of accents`;
}

/** One spelling for all paths that a disk may take for one (Unicode Standard Annex 15, form C). */
const folded = (path: string): string =>
  path.normalize('NFC').toUpperCase().toLowerCase().normalize('NFC');

const foldersAbove = (path: string): readonly string[] =>
  path
    .split('/')
    .slice(0, -1)
    .map((_, depth, steps) => steps.slice(0, depth + 1).join('/'));

/** A path as a message may show it: control characters as escapes, so that a terminal obeys none. */
export function shown(path: string): string {
  return path.replace(
    /\p{Cc}|[\u202a-\u202e\u2066-\u2069]/gu,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
