import type { Diagnostic } from '../diagnostics/index.ts';
import { memoryWorld, type RememberedFile, type World } from '../world/index.ts';

/** The folders of a project whose files are read; of the files beside them only three are. */
const readFolders = /^(?:members|worked|sheets|images|report-templates)\/[^/]+$/u;
const readFiles: readonly string[] = ['project.yaml', 'loads.yaml', 'theme.yaml'];

/** True for the path of a file that belongs to a project folder, and so for none that leads out of it. */
export function belongsToFolder(path: string): boolean {
  return readFiles.includes(path) || readFolders.test(path);
}

/** The files of a project that something carries, as a folder of a world in memory; its own files are those of the program that runs. */
export function carriedFolder(
  world: World,
  folder: string,
  files: readonly RememberedFile[],
): World {
  const placed = files
    .filter(({ path }) => belongsToFolder(path))
    .map(({ path, bytes }) => [`${folder}/${path}`, bytes] as const);
  return { ...memoryWorld(Object.fromEntries(placed)), ownFile: world.ownFile };
}

/** A bag or a PDF whose members cannot be worked again. */
export function withoutInputs(path: string): Diagnostic {
  return {
    severity: 'error',
    code: 'package-without-inputs',
    message: `${path} carries no project.yaml, so that nothing in it can be worked again`,
    hints: ['use the project folder, or a bag or PDF that sumzero made of it'],
  };
}

/** A bag or a PDF that cannot be read. */
export function unreadable(path: string, why: string): Diagnostic {
  return {
    severity: 'error',
    code: 'package-unreadable',
    message: `${path} cannot be read: ${why}`,
    hints: ['get an undamaged copy of the file'],
  };
}
