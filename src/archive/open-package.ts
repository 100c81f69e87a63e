import type { Diagnostic, Outcome } from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';
import { openBagPackage } from './open-bag-package.ts';
import { openPdfPackage } from './open-pdf-package.ts';
import type { OpenedPackage } from './opened-package.ts';
import { startOf } from './start-of.ts';

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
  if ('problem' in start)
    return refused(
      notAPackage(
        `${path} cannot be opened: ${start.problem}`,
        'look at the spelling of the path',
      ),
    );
  if (start.letters.startsWith('PK')) return await openBagPackage(world, path);
  if (start.letters.startsWith('%PDF-')) return await openPdfPackage(world, path);
  return refused(
    notAPackage(
      `${path} is neither a bag nor a PDF`,
      'name a project folder, a bag made by sumzero archive, or a bound package.pdf',
    ),
  );
}

function notAPackage(message: string, hint: string): Diagnostic {
  return { severity: 'error', code: 'not-a-package', message, hints: [hint] };
}

function refused(diagnostic: Diagnostic): Outcome<OpenedPackage> {
  return { diagnostics: [diagnostic] };
}
