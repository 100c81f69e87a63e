import { readProject } from '../../project/index.ts';
import { digest, type World } from '../../world/index.ts';
import { openPdfPackage } from '../open-pdf-package.ts';
import { firstError } from './read-folder-row.ts';
import type { ReadRow } from './register-row.ts';
import { figuresIn, rowOfDefinition } from './row-of-definition.ts';

/** The row of a bound PDF, from the files that travel in it. */
export async function readPdfRow(
  world: World,
  path: string,
): Promise<ReadRow | { readonly problem: string }> {
  const { value: opened, diagnostics } = await openPdfPackage(world, path);
  if (opened?.pdf === undefined) return { problem: firstError(diagnostics) };
  const { value: project, diagnostics: found } = readProject(
    opened.world,
    opened.folder,
  );
  if (project === undefined) return { problem: firstError(found) };
  const { readPages, readPdf } = await import('../../pdf/index.ts');
  const file = readPdf(opened.pdf);
  return rowOfDefinition(project.definition, {
    path,
    kind: 'pdf',
    bound: 'bound',
    sheets: 'problem' in file ? null : readPages(file).length,
    results: figuresIn(opened.results),
    sha256: digest(opened.pdf),
  });
}
