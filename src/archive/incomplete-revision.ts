import type { Diagnostic } from '../diagnostics/index.ts';
import type { Project, Revision } from '../project/index.ts';

/** What every row of the record of revisions holds beside its mark, without which it is not read; as a sentence names it that misses it. */
const wanted: readonly (readonly [keyof Omit<Revision, 'span' | 'mark'>, string])[] = [
  ['date', 'its date'],
  ['note', 'a note of what was changed'],
  ['reason', 'the reason'],
  ['prepared', 'who prepared it'],
  ['checked', 'who checked it'],
  ['sheets', 'the sheets affected'],
];

/** What the record of revisions leaves open, an error a row that names every item; none for a complete record. */
export function incompleteRevision({
  definition,
}: Pick<Project, 'definition'>): readonly Diagnostic[] {
  const { revisions } = definition;
  return revisions.length === 0 ? [noRevision()] : revisions.flatMap(lacking);
}

function lacking(revision: Revision): readonly Diagnostic[] {
  const missing = wanted.filter(([key]) => revision[key] === undefined);
  if (missing.length === 0) return [];
  return [
    {
      severity: 'error',
      code: 'revision-incomplete',
      message: `revision ${revision.mark} lacks ${listed(missing.map(([, words]) => words))}`,
      ...(revision.span === undefined ? {} : { span: revision.span }),
      hints: [`write ${missing.map(([key]) => `${key}: …`).join(', ')}`],
    },
  ];
}

function noRevision(): Diagnostic {
  return {
    severity: 'error',
    code: 'revision-incomplete',
    message:
      'there is no record of revisions in project.yaml, and a package is archived as a revision',
    span: { file: 'project.yaml', start: 0, end: 0 },
    hints: [
      'write revisions: [ { mark: "-", date: …, note: First issue, reason: …, prepared: …, checked: …, sheets: all } ]',
    ],
  };
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
