import type { Diagnostic } from '../../diagnostics/index.ts';
import type { World } from '../../world/index.ts';
import { startOf } from '../start-of.ts';
import { findPackages, type Candidate } from './find-packages.ts';
import { readBagRow } from './read-bag-row.ts';
import { readFolderRow } from './read-folder-row.ts';
import { readPdfRow } from './read-pdf-row.ts';
import type { ReadRow, RegisterRow } from './register-row.ts';
import { relateRows } from './relate-rows.ts';

/** An index of packages, and what could not be taken up. */
export interface Register {
  /** By number, then in the order of their revisions. */
  readonly rows: readonly RegisterRow[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Registers what the paths lead to: project folders, bags and bound PDFs, and folders that are searched for these.
 * What was named and is none is an error; what a search came upon and could not read is a remark, and a PDF that
 * is somebody else's is passed over.
 */
export async function register(
  world: World,
  paths: readonly string[],
  onPackage: (path: string) => void = () => undefined,
): Promise<Register> {
  const candidates = findPackages(world, paths);
  const read: ReadRow[] = [];
  const diagnostics: Diagnostic[] = emptyFolders(world, paths, candidates);
  for (const candidate of candidates) {
    onPackage(candidate.path);
    const found = await readCandidate(world, candidate);
    if (found === undefined) continue;
    if ('row' in found) read.push(found);
    else diagnostics.push(notRegistered(candidate, found.problem));
  }
  return { rows: relateRows(read), diagnostics };
}

/** Undefined for what a search came upon and is no package at all. */
async function readCandidate(
  world: World,
  { path, isNamed }: Candidate,
): Promise<ReadRow | { readonly problem: string } | undefined> {
  if (world.list(path) !== undefined) return await readFolderRow(world, path);
  const start = startOf(world, path);
  if ('problem' in start) return { problem: start.problem };
  if (start.letters.startsWith('PK')) {
    const found = await readBagRow(world, path);
    return 'problem' in found && !isNamed && !holdsBag(start.letters)
      ? undefined
      : found;
  }
  if (start.letters.startsWith('%PDF-')) {
    const found = await readPdfRow(world, path);
    return 'problem' in found && !isNamed ? undefined : found;
  }
  return isNamed ? { problem: 'it is neither a bag nor a PDF' } : undefined;
}

/** The first file of a bag that this program wrote is `bagit.txt`, and its name stands at the very start of the zip (PKWARE APPNOTE 4.3.7). */
function holdsBag(letters: string): boolean {
  return letters.slice(30, 39) === 'bagit.txt';
}

function emptyFolders(
  world: World,
  paths: readonly string[],
  candidates: readonly Candidate[],
): Diagnostic[] {
  return paths
    .filter(
      (path) =>
        world.list(path) !== undefined &&
        !candidates.some((one) => one.path === path || isBelow(one.path, path)),
    )
    .map((path) => ({
      severity: 'error' as const,
      code: 'not-a-package' as const,
      message: `${path} holds no project, no bag and no bound PDF`,
      hints: ['name a project folder, or a folder that holds such or bags'],
    }));
}

function isBelow(path: string, folder: string): boolean {
  if (folder === '.' || folder === './' || folder === '') return true;
  return path.startsWith(folder.endsWith('/') ? folder : `${folder}/`);
}

function notRegistered({ path, isNamed }: Candidate, problem: string): Diagnostic {
  return {
    severity: isNamed ? 'error' : 'remark',
    code: 'not-registered',
    message: `${path} is not in the register: ${problem}`,
    hints: [],
  };
}
