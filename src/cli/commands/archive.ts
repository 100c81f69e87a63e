import { hasErrors, type Diagnostic } from '../../diagnostics/index.ts';
import { archiveLines } from '../archive-lines.ts';
import type { Call, Command } from '../command.ts';
import { good, usersMistake } from '../exit-codes.ts';
import { paintFor } from '../paint.ts';
import { startProgress } from '../progress.ts';
import { folderIn } from '../project-folder.ts';
import { countDiagnostics, showDiagnostics } from '../show-diagnostic.ts';
import { sourceReader } from '../source-reader.ts';
import type { UsageFault } from '../usage-fault.ts';

/** Keeps what is issued in a bag that is never touched again. */
export const archive: Command = {
  name: 'archive',
  takes: 'FOLDER',
  summary: 'keep an issued package in a bag that is never changed',
  about: [
    'Binds the package and lays it into one zip, a BagIt bag (RFC 8493) with a SHA-256 for every file: the PDF, results.json, all files of the project that were read, the licences of the fonts, and record.json with revision, people, dates, status, what it supersedes, totals and closure. The zip goes to issued/NUMBER-REVISION.zip in the folder unless told otherwise; a first issue marked - is named 0. Equal folders give equal bytes.',
    'A bag is never overwritten: a new issue is a new revision. A package that does not bind cleanly, or whose record of revisions leaves something open (date, note, reason, prepared, checked, sheets), is refused, unless --as-is is said; the reasons then stand on its cover and in its record.',
    'A signed and sealed PDF is kept beside the bound one. Signing that only adds to the end of the file leaves its start as it was bound, and the record says so; any other copy is marked as not compared.',
  ],
  options: {
    output: { type: 'string', short: 'o', value: 'FILE', about: 'write the bag there' },
    signed: {
      type: 'string',
      value: 'FILE',
      about: 'keep the signed PDF beside the bound one',
    },
    'as-is': {
      type: 'boolean',
      about: 'archive what is not in order, and say so on the cover',
    },
  },
  examples: [
    { line: 'sumzero archive shelter', does: 'keep the present revision' },
    {
      line: 'sumzero archive shelter --signed package-signed.pdf',
      does: 'keep the signed copy too',
    },
    {
      line: 'sumzero archive shelter -o vault/shelter-A.zip',
      does: 'choose the place',
    },
  ],
  run: runArchive,
};

async function runArchive(call: Call): Promise<number | UsageFault> {
  const { given, world, streams, program } = call;
  const place = folderIn(given, 'archive');
  if ('fault' in place) return place.fault;
  const [, second] = given.positionals;
  if (second !== undefined)
    return {
      message: `archive takes one folder, and ${second} is a second`,
      hints: ['write -o before the file that the bag goes to'],
    };
  const { folder } = place;
  const [output, signed] = [given.value('output'), given.value('signed')];
  const progress = startProgress(streams, false);
  const { archiveProject, keepBag } = await import('../../index.ts');
  const { value, diagnostics } = await archiveProject(world, folder, {
    program,
    isAsIs: given.has('as-is'),
    ...(output === undefined ? {} : { output }),
    ...(signed === undefined ? {} : { signed }),
    onStage: progress.onStage,
  });
  progress.end();
  if (value === undefined) return tellErrors(call, folder, diagnostics);
  const failed = keepBag(world, value.path, value.bytes);
  if (failed !== undefined) return tellErrors(call, folder, [...diagnostics, failed]);
  tell(call, folder, diagnostics);
  const paint = paintFor(streams.coloured.out);
  streams.out(`${paint('good', 'Archived:')} ${value.path}\n`);
  streams.out(
    archiveLines(value)
      .map((line) => `${line}\n`)
      .join(''),
  );
  return hasErrors(diagnostics) ? usersMistake : good;
}

function tell(
  { world, streams }: Call,
  folder: string,
  diagnostics: readonly Diagnostic[],
): void {
  const paint = paintFor(streams.coloured.err);
  streams.err(
    showDiagnostics(diagnostics, {
      folder,
      source: sourceReader(world, folder),
      paint,
    }),
  );
}

function tellErrors(
  call: Call,
  folder: string,
  diagnostics: readonly Diagnostic[],
): number {
  tell(call, folder, diagnostics);
  const [first] = diagnostics.filter(({ severity }) => severity === 'error');
  const more = first === undefined ? '' : ` sumzero explain ${first.code} tells more.`;
  call.streams.err(`${countDiagnostics(diagnostics)}. Nothing was written.${more}\n`);
  return usersMistake;
}
