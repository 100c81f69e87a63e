import { hasErrors, placeIn, type Diagnostic } from '../../diagnostics/index.ts';
import type { MarkedFile, WorkedProject, WorkSummary } from '../../index.ts';
import type { Call, Command } from '../command.ts';
import { good, usersMistake } from '../exit-codes.ts';
import { markedLines, summaryLines } from '../marked-lines.ts';
import { paintFor } from '../paint.ts';
import { startProgress } from '../progress.ts';
import { folderIn } from '../project-folder.ts';
import { projectErrors } from '../project-errors.ts';
import { showDiagnostics, type Showing } from '../show-diagnostic.ts';
import { sourceReader } from '../source-reader.ts';
import { unknownWord, type UsageFault } from '../usage-fault.ts';

/** Marks somebody's worked steps against the members that they are for. Writes no file. */
export const check: Command = {
  name: 'check',
  takes: 'FOLDER [FILE…]',
  summary: 'mark worked steps, one by one',
  about: [
    'Reads the files in worked/, marks each step as right, wrong, following from an earlier slip, or not readable, and says what went wrong and what belongs there. Name files to mark some only. No file is written.',
    'Premises (loads, supports, spans) are taken from the member and are not judged. Marks stand for no signature.',
  ],
  options: {
    json: { type: 'boolean', about: 'print marks and findings as JSON' },
  },
  examples: [
    { line: 'sumzero check shelter', does: 'mark all worked steps of a project' },
    { line: 'sumzero check shelter worked/b1.yaml', does: 'mark one file' },
    {
      line: 'sumzero check shelter --json',
      does: 'print the marks for another program',
    },
  ],
  run: runCheck,
};

async function runCheck(call: Call): Promise<number | UsageFault> {
  const { given, world, streams } = call;
  const place = folderIn(given, 'check');
  if ('fault' in place) return place.fault;
  const { workProject, checkWorked, summarise } = await import('../../index.ts');
  const progress = startProgress(streams, false);
  const worked = workProject(world, place.folder, progress.onStage);
  progress.end();
  const showing: Showing = {
    folder: place.folder,
    source: sourceReader(world, place.folder),
    paint: paintFor(streams.coloured.err),
  };
  if (worked.project === undefined) return await unreadable(call, worked, showing);
  const wanted = given.positionals.slice(1);
  const known = worked.project.worked.map(({ file }) => file);
  const stranger = wanted.find((name) => fileNamed(name, known) === undefined);
  if (stranger !== undefined) return unknownWord('worked file', stranger, known);
  const chosen = new Set(wanted.map((name) => fileNamed(name, known)));
  const files = checkWorked(worked.project, worked.members).filter(
    ({ file }) => chosen.size === 0 || chosen.has(file),
  );
  return given.has('json')
    ? await printJson(call, files, showing)
    : printMarks(call, files, { worked, showing, summary: summarise(files) });
}

/** A file by its path or by its name alone. */
function fileNamed(name: string, known: readonly string[]): string | undefined {
  const path = name.replace(/^\.\//u, '');
  return known.find(
    (file) => file === path || file === `worked/${path}` || path.endsWith(`/${file}`),
  );
}

async function unreadable(
  { given, streams }: Call,
  { diagnostics }: WorkedProject,
  showing: Showing,
): Promise<number> {
  const { writeResults } = await import('../../index.ts');
  streams.err(showDiagnostics(diagnostics, showing));
  if (given.has('json'))
    streams.out(writeResults(projectErrors(diagnostics, showing.source)));
  return usersMistake;
}

async function printJson(
  { streams }: Call,
  files: readonly MarkedFile[],
  { source }: Showing,
): Promise<number> {
  const { checkJson } = await import('../../index.ts');
  const lineOf = ({ fault }: MarkedFile): number | undefined =>
    lineIn(fault?.span, source);
  streams.out(checkJson(files, lineOf));
  return exitFor(files);
}

function printMarks(
  { streams }: Call,
  files: readonly MarkedFile[],
  {
    worked,
    showing,
    summary,
  }: {
    readonly worked: WorkedProject;
    readonly showing: Showing;
    readonly summary: WorkSummary;
  },
): number {
  const paint = paintFor(streams.coloured.out);
  if (files.length === 0)
    streams.out('There are no worked steps: worked/ holds no .yaml file.\n');
  for (const file of files) streams.out(markedLines(file, paint));
  if (files.length > 0) streams.out(summaryLines(summary, paint));
  const found: readonly Diagnostic[] = [
    ...worked.diagnostics.filter((one) => hasErrors([one])),
    ...files.flatMap(({ fault, remarks }) => [
      ...(fault === undefined ? [] : [fault]),
      ...remarks,
    ]),
  ];
  streams.err(showDiagnostics(found, showing));
  return exitFor(files);
}

function lineIn(
  span: Diagnostic['span'],
  source: Showing['source'],
): number | undefined {
  const lines = span === undefined ? undefined : source(span.file);
  return span === undefined || lines === undefined
    ? undefined
    : placeIn(lines, span.start).line;
}

/** Good only where every step is right. */
function exitFor(files: readonly MarkedFile[]): number {
  const isRight = files.every(
    ({ fault, summary }) =>
      fault === undefined && summary.wrong + summary.follows + summary.unread === 0,
  );
  return isRight ? good : usersMistake;
}
