import type { Diagnostic, Outcome } from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';
import { openBagPackage } from './open-bag-package.ts';
import { openPdfPackage } from './open-pdf-package.ts';
import type { OpenedPackage } from './opened-package.ts';

/**
 * Opens what a path leads to as a project: a folder, a bag or a bound PDF, told apart by their content. What a
 * bag or a PDF carries is taken as it stands there; whether it is whole is for `verify` to say.
 */
export async function openPackage(
  world: World,
  path: string,
): Promise<Outcome<OpenedPackage>> {
  if (world.list(path) !== undefined)
    return { value: { kind: 'folder', path, world, folder: path }, diagnostics: [] };
  const start = startOf(world, path);
  if ('problem' in start) return refused(start.problem);
  if (start.letters.startsWith('PK')) return await openBagPackage(world, path);
  if (start.letters.startsWith('%PDF-')) return await openPdfPackage(world, path);
  return refused(
    notAPackage(`${path} is neither a bag nor a PDF`, [
      'name a project folder, a bag made by sumzero archive, or a bound package.pdf',
    ]),
  );
}

/** The first bytes of a file as letters, or why there are none. */
function startOf(
  world: World,
  path: string,
): { readonly letters: string } | { readonly problem: Diagnostic } {
  const answer = world.open(path);
  if ('missing' in answer)
    return { problem: notAPackage(`there is nothing at ${path}`, []) };
  if ('refused' in answer)
    return {
      problem: notAPackage(`${path} cannot be opened: ${answer.refused}`, [
        'look at the permissions of the file',
      ]),
    };
  const { file } = answer;
  try {
    return { letters: String.fromCharCode(...file.readAt(0, 8)) };
  } finally {
    file.close();
  }
}

function notAPackage(message: string, hints: readonly string[]): Diagnostic {
  const otherwise = 'look at the spelling of the path';
  return {
    severity: 'error',
    code: 'not-a-package',
    message,
    hints: hints.length === 0 ? [otherwise] : hints,
  };
}

function refused(diagnostic: Diagnostic): Outcome<OpenedPackage> {
  return { diagnostics: [diagnostic] };
}
