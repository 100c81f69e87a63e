import { hasErrors, type Diagnostic } from '../../diagnostics/index.ts';
import type { WorkedProject } from '../../index.ts';
import type { Call, Command } from '../command.ts';
import { good, usersMistake } from '../exit-codes.ts';
import { paintFor } from '../paint.ts';
import { startProgress } from '../progress.ts';
import { folderIn } from '../project-folder.ts';
import { projectErrors } from '../project-errors.ts';
import { showDiagnostics, type Showing } from '../show-diagnostic.ts';
import { sourceReader } from '../source-reader.ts';
import { stationsIn } from '../stations.ts';
import type { UsageFault } from '../usage-fault.ts';

/** Shows the worked steps of members on the terminal, or every figure as JSON. Writes no file. */
export const solve: Command = {
  name: 'solve',
  takes: 'FOLDER [MARK…]',
  summary: 'show the worked steps, or every figure as JSON',
  about: [
    'Works the members of a project and shows their steps as text: free bodies in words, equations with their figures, checks, results. Name marks to see some members only. No file is written.',
    'With --json every figure is printed at full precision in the form of results.json, also where members or the project have errors.',
  ],
  options: {
    json: { type: 'boolean', about: 'print every figure as JSON' },
    stations: {
      type: 'string',
      value: 'N',
      about: 'with --json: figures at the ends of N equal stretches',
    },
  },
  examples: [
    { line: 'sumzero solve shelter B1', does: 'show how one member is worked' },
    { line: 'sumzero solve shelter | less', does: 'page through all of them' },
    {
      line: 'sumzero solve shelter --json --stations 20',
      does: 'print figures for another program',
    },
  ],
  run: runSolve,
};

async function runSolve(call: Call): Promise<number | UsageFault> {
  const { given, world, streams } = call;
  const place = folderIn(given, 'solve');
  if ('fault' in place) return place.fault;
  const stations = stationsIn(given);
  if ('fault' in stations) return stations.fault;
  const isJson = given.has('json');
  if (!isJson && stations.stations !== undefined)
    return { message: '--stations belongs to --json', hints: ['add --json'] };
  const { workProject } = await import('../../index.ts');
  const progress = startProgress(streams, false);
  const worked = workProject(world, place.folder, progress.onStage);
  progress.end();
  const showing: Showing = {
    folder: place.folder,
    source: sourceReader(world, place.folder),
    paint: paintFor(streams.coloured.err),
  };
  const marks = given.positionals.length > 1 ? given.positionals.slice(1) : undefined;
  return isJson
    ? await printJson(call, { worked, showing, marks, ...stations })
    : await printSteps(call, { worked, showing, marks });
}

interface Work {
  readonly worked: WorkedProject;
  readonly showing: Showing;
  /** The members asked for; undefined for all. */
  readonly marks: readonly string[] | undefined;
  readonly stations?: number;
}

async function printJson({ streams }: Call, work: Work): Promise<number> {
  const { resultsOf, writeResults } = await import('../../index.ts');
  const { worked, showing, marks, stations } = work;
  const { found, unknown } = await findings(work);
  streams.err(showDiagnostics(found, showing));
  if (worked.project === undefined || unknown.length > 0) {
    streams.out(writeResults(projectErrors(found, showing.source)));
    return usersMistake;
  }
  streams.out(
    resultsOf(worked, {
      ...(marks === undefined ? {} : { marks }),
      ...(stations === undefined ? {} : { stations }),
    }),
  );
  return hasErrors(found) ? usersMistake : good;
}

async function printSteps(
  { world, streams, program }: Call,
  work: Work,
): Promise<number> {
  const { composePackage, writePlain } = await import('../../index.ts');
  const { worked, showing, marks } = work;
  const { found, unknown } = await findings(work);
  const composed =
    unknown.length > 0
      ? { diagnostics: [] }
      : composePackage(world, worked, {
          program,
          ...(marks === undefined ? {} : { only: marks }),
        });
  const { report, diagnostics } = composed;
  const blocks = (report?.parts ?? [])
    .filter(({ anchor }) => anchor.startsWith('member-'))
    .flatMap((part) => part.blocks);
  streams.out(writePlain(blocks));
  // After the steps, so that they are not scrolled away by them.
  streams.err(showDiagnostics([...found, ...diagnostics], showing));
  return hasErrors([...found, ...diagnostics]) ? usersMistake : good;
}

/** What concerns the members asked for, and which of them do not exist. */
async function findings({ worked, marks }: Work): Promise<{
  readonly found: readonly Diagnostic[];
  readonly unknown: readonly Diagnostic[];
}> {
  const { concerning, unknownMarks } = await import('../../index.ts');
  const unknown = unknownMarks(worked, marks ?? []);
  return { unknown, found: [...concerning(worked.diagnostics, marks), ...unknown] };
}
