import type { Diagnostic } from '../../diagnostics/index.ts';
import { readProject, type ProjectDefinition } from '../../project/index.ts';
import type { Results } from '../../results/index.ts';
import { rememberReads, type RememberedFile, type World } from '../../world/index.ts';
import { areEqual } from '../are-equal.ts';
import { below } from '../bag-place.ts';
import { belongsToFolder } from '../carried-folder.ts';
import type { BoundState, ReadRow } from './register-row.ts';
import { figuresIn, rowOfDefinition } from './row-of-definition.ts';

/** The row of a project folder: what its files say, and what was last bound into it. */
export async function readFolderRow(
  world: World,
  folder: string,
): Promise<ReadRow | { readonly problem: string }> {
  const { world: asked, within } = rememberReads(world);
  const { value: project, diagnostics } = readProject(asked, folder);
  if (project === undefined) return { problem: firstError(diagnostics) };
  const files = within(folder);
  const results = figuresIn(textAt(world, below(folder, 'results.json')));
  const pdf = await boundPdf(world, below(folder, 'package.pdf'));
  const bound = stateOf(project.definition, { results, pdf, files });
  return rowOfDefinition(project.definition, {
    path: folder,
    kind: 'folder',
    bound,
    sheets: bound === 'not bound' ? null : (pdf?.sheets ?? null),
    results: bound === 'not bound' ? undefined : results,
    sha256: null,
  });
}

/** What is known of a bound PDF: its sheets, and the files that it was made from. */
interface BoundPdf {
  readonly sheets: number;
  readonly files: readonly RememberedFile[];
}

async function boundPdf(world: World, path: string): Promise<BoundPdf | undefined> {
  const answer = world.read(path);
  if (!('bytes' in answer)) return undefined;
  const { readAttachments, readPages, readPdf } = await import('../../pdf/index.ts');
  const file = readPdf(answer.bytes);
  if ('problem' in file) return undefined;
  const files = readAttachments(file)
    .map(({ name, bytes }) => ({ path: name, bytes }))
    .filter((one) => belongsToFolder(one.path));
  return { sheets: readPages(file).length, files };
}

function stateOf(
  { revisions }: ProjectDefinition,
  {
    results,
    pdf,
    files,
  }: {
    readonly results: Results | undefined;
    readonly pdf: BoundPdf | undefined;
    readonly files: readonly RememberedFile[];
  },
): BoundState {
  if (results === undefined || pdf === undefined) return 'not bound';
  const mark = revisions.at(-1)?.mark ?? null;
  if (results.project.revision !== mark) return 'another revision';
  return areAlike(files, pdf.files) ? 'bound' : 'changed since';
}

function areAlike(
  ours: readonly RememberedFile[],
  theirs: readonly RememberedFile[],
): boolean {
  const byPath = new Map(theirs.map(({ path, bytes }) => [path, bytes]));
  return (
    ours.length === theirs.length &&
    ours.every(({ path, bytes }) => {
      const other = byPath.get(path);
      return other !== undefined && areEqual(bytes, other);
    })
  );
}

function textAt(world: World, path: string): string | undefined {
  const answer = world.read(path);
  return 'bytes' in answer ? new TextDecoder().decode(answer.bytes) : undefined;
}

/** The first error of several, as a phrase. */
export function firstError(diagnostics: readonly Diagnostic[]): string {
  const error = diagnostics.find(({ severity }) => severity === 'error');
  const place = error?.span === undefined ? '' : `${error.span.file}: `;
  return `${place}${error?.message ?? 'it cannot be read'}`;
}
