import type { World } from '../../world/index.ts';
import { below } from '../bag-place.ts';

/** Something that may be a package. */
export interface Candidate {
  readonly path: string;
  /** True for what the user named, false for what a search came upon. */
  readonly isNamed: boolean;
}

/** Folders below the one that was named are searched so deep. */
const deepest = 4;

/** Folders of a project that hold what it is made from, and so no package. */
const ownFolders: readonly string[] = [
  'members/',
  'worked/',
  'sheets/',
  'images/',
  'report-templates/',
];

/**
 * What the paths lead to: files as they are named, folders searched for projects, and in them and beside them for
 * zips and PDFs. Hidden folders are left out, and so is the package.pdf of a project, which its folder stands for.
 */
export function findPackages(
  world: World,
  paths: readonly string[],
): readonly Candidate[] {
  const found = new Map<string, Candidate>();
  const add = (path: string, isNamed: boolean): void => {
    const before = found.get(path)?.isNamed ?? false;
    found.set(path, { path, isNamed: isNamed || before });
  };
  const search = (folder: string, depth: number): void => {
    const names = (world.list(folder) ?? []).filter(isLookedAt);
    const isProject = names.includes('project.yaml');
    if (isProject) add(folder, depth === 0);
    for (const name of names)
      if (isKeptFile(name, isProject)) add(below(folder, name), false);
    if (depth === deepest) return;
    for (const name of names)
      if (name.endsWith('/') && !(isProject && ownFolders.includes(name)))
        search(below(folder, name.slice(0, -1)), depth + 1);
  };
  for (const path of paths) {
    if (world.list(path) === undefined) add(path, true);
    else search(path, 0);
  }
  return [...found.values()];
}

function isLookedAt(name: string): boolean {
  return !name.startsWith('.') && name !== 'node_modules/';
}

/** A file that may be a bag or a PDF of its own. */
function isKeptFile(name: string, isInProject: boolean): boolean {
  return /\.(?:zip|pdf)$/iu.test(name) && !(isInProject && name === 'package.pdf');
}
