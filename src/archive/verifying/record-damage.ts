import { payload } from '../payload-paths.ts';
import type { ArchiveRecord } from '../record.ts';
import type { Damage } from '../verification.ts';
import { keyOf, textOf, type Json } from './json.ts';

/** Where record.json does not agree with the results beside it, or names a file that is not there. */
export function recordDamage(
  record: ArchiveRecord,
  results: Json,
  files: readonly { readonly path: string }[],
): readonly Damage[] {
  const project = keyOf(results, 'project');
  const pairs = [
    ['number', record.project.number, textOf(project, 'number')],
    ['title', record.project.title, textOf(project, 'title')],
    ['revision', record.revision?.mark, textOf(project, 'revision')],
  ] as const;
  const disagreements = pairs
    .filter(([, recorded, written]) => (recorded ?? undefined) !== written)
    .map(([what, recorded, written]) => ({
      path: payload.record,
      message: `it gives the ${what} ${inWords(recorded)}, and results.json ${inWords(written)}`,
    }));
  const signed =
    record.signed === null ? undefined : `data/${bare(record.signed.path)}`;
  const isGone = signed !== undefined && !files.some(({ path }) => path === signed);
  return isGone
    ? [
        ...disagreements,
        { path: payload.record, message: `it names ${signed}, which is missing` },
      ]
    : disagreements;
}

/** The path within the payload, whether or not it is written with `data/`. */
const bare = (path: string): string => path.replace(/^data\//u, '');

function inWords(text: string | null | undefined): string {
  return text === null || text === undefined ? 'none' : `“${text}”`;
}
