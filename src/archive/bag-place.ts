import type { Diagnostic } from '../diagnostics/index.ts';
import type { ProjectDefinition } from '../project/index.ts';
import type { World } from '../world/index.ts';

/** The folder of a project that its bags go into. */
export const issuedFolder = 'issued';

/**
 * The name of a bag without `.zip`: number and revision, `2031-014-A`. What file systems and web
 * addresses take amiss becomes a dash. A first issue marked `-` is named `0`, a package without a
 * record of revisions `unrevised`, and a project without a number goes by its title.
 */
export function bagName({ number, title, revisions }: ProjectDefinition): string {
  const revision = revisions.at(-1);
  const mark = revision === undefined ? 'unrevised' : plain(revision.mark) || '0';
  return `${plain(number ?? '') || plain(title) || 'package'}-${mark}`;
}

function plain(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}._]+/gu, '-')
    .slice(0, 80)
    .replace(/^[-.]+|[-.]+$/gu, '');
}

/** Where a bag goes unless it is told otherwise: `FOLDER/issued/NUMBER-REVISION.zip`. */
export function bagPlace(folder: string, definition: ProjectDefinition): string {
  return below(folder, `${issuedFolder}/${bagName(definition)}.zip`);
}

/** A path below a folder as the user would write it. */
export function below(folder: string, path: string): string {
  if (folder === '' || folder === '.' || folder === './') return path;
  return folder.endsWith('/') ? folder + path : `${folder}/${path}`;
}

/** Why no bag can be written to a place, seen before anything is bound; undefined where it seems that one can. */
export function placeProblem(
  world: World,
  path: string,
  isChosen: boolean,
): Diagnostic | undefined {
  if (world.list(path) !== undefined)
    return writeFailed(path, 'there is a folder of that name');
  if (world.sizeOf(path) !== undefined) return alreadyThere(path);
  const folder = folderOf(path);
  return isChosen && world.list(folder) === undefined
    ? writeFailed(path, `there is no folder ${folder}`)
    : undefined;
}

/** Writes a bag where there is none yet, into the folder `issued` that is made where it is missing; answers what went wrong. */
export function keepBag(
  world: World,
  path: string,
  bytes: Uint8Array,
): Diagnostic | undefined {
  const folder = folderOf(path);
  if (world.list(folder) === undefined) {
    const made = world.makeFolder(folder);
    if ('refused' in made) return writeFailed(path, made.refused);
  }
  const answer = world.writeNew(path, bytes);
  if ('written' in answer) return undefined;
  return world.sizeOf(path) === undefined
    ? writeFailed(path, answer.refused)
    : alreadyThere(path);
}

function folderOf(path: string): string {
  const end = path.lastIndexOf('/');
  return end < 0 ? '.' : path.slice(0, end) || '/';
}

function alreadyThere(path: string): Diagnostic {
  return {
    severity: 'error',
    code: 'archive-exists',
    message: `${path} is there already, and an issued bag is never overwritten: a new issue is a new revision`,
    hints: [
      'give the new issue a row with a mark of its own under revisions in project.yaml',
    ],
  };
}

function writeFailed(path: string, why: string): Diagnostic {
  return {
    severity: 'error',
    code: 'write-failed',
    message: `${path} cannot be written: ${why}`,
    hints: ['choose another place with -o FILE, or mend what the message names'],
  };
}
