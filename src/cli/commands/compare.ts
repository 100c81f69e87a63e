import type { Diagnostic } from '../../diagnostics/index.ts';
import type { ComparedSide, OpenedPackage, WorkedProject } from '../../index.ts';
import type { Call, Command } from '../command.ts';
import { comparisonLines } from '../comparison-lines.ts';
import { good, usersMistake } from '../exit-codes.ts';
import { paintFor, printable } from '../paint.ts';
import { startProgress } from '../progress.ts';
import { projectErrors } from '../project-errors.ts';
import { showDiagnostics, type Showing } from '../show-diagnostic.ts';
import { sourceReader } from '../source-reader.ts';
import type { UsageFault } from '../usage-fault.ts';

/** Tells what changed between two revisions of a package, and whose check is open again. Writes no file. */
export const compare: Command = {
  name: 'compare',
  takes: 'A B',
  summary: 'tell what changed between two revisions',
  about: [
    'Compares an earlier package A with a later B, each a project folder, a bag or a bound PDF. Inputs compare by meaning: loads, points, cases and members are matched, so that comments, order and another spelling of the same number are no change, and what was moved or renamed is told as that. Results of both are worked by this version.',
    'Checks that fail now and did not before come first; then inputs, results with the change in per cent, other checks, and the members whose check is open again, through carried reactions too.',
    'Ends with 0 where nothing differs and with 1 where something does, or where A or B cannot be read.',
  ],
  options: {
    json: { type: 'boolean', about: 'print the comparison as JSON' },
  },
  examples: [
    {
      line: 'sumzero compare shelter-A.zip shelter',
      does: 'tell what changed since revision A',
    },
    {
      line: 'sumzero compare old/package.pdf new/package.pdf --json',
      does: 'print the comparison for another program',
    },
  ],
  run: runCompare,
};

async function runCompare(call: Call): Promise<number | UsageFault> {
  const [first, second, ...more] = call.given.positionals;
  if (first === undefined || second === undefined || more.length > 0)
    return {
      message: 'compare needs two packages, the earlier and the later',
      hints: ['write sumzero compare A B, each a project folder, a bag or a PDF'],
    };
  const sides = [await openSide(first, call), await openSide(second, call)] as const;
  const isJson = call.given.has('json');
  for (const { found, showing } of sides)
    call.streams.err(showDiagnostics(found, showing));
  const [earlier, later] = [sides[0].side, sides[1].side];
  if (earlier === undefined || later === undefined)
    return await unreadable(call, sides, isJson);
  const {
    compare: compared,
    comparisonJson,
    isAlike,
    formatNumber,
    formatRatio,
  } = await import('../../index.ts');
  const comparison = compared(earlier, later);
  const paint = paintFor(call.streams.coloured.out);
  call.streams.out(
    isJson
      ? comparisonJson(comparison)
      : comparisonLines(comparison, {
          paint,
          writeRatio: formatRatio,
          writeFigure: (value) =>
            formatNumber(value, { kind: 'figures', count: 4 }).text,
        }),
  );
  if (!isJson) call.streams.out(unworkedLines(earlier, later));
  return isAlike(comparison) ? good : usersMistake;
}

/** One of the two packages, worked, or what keeps it from that. */
interface Side {
  readonly side?: ComparedSide;
  /** Errors alone: remarks are the business of who binds it. */
  readonly found: readonly Diagnostic[];
  readonly showing: Showing;
}

async function openSide(given: string, { world, streams }: Call): Promise<Side> {
  const { openPackage, readResults, resultsOf, workProject } =
    await import('../../index.ts');
  const path = given === '/' ? given : given.replace(/\/+$/u, '');
  const paint = paintFor(streams.coloured.err);
  const opened = await openPackage(world, path);
  if (opened.value === undefined) {
    const showing: Showing = { folder: path, source: () => undefined, paint };
    return { found: opened.diagnostics, showing };
  }
  const progress = startProgress(streams, false);
  const worked = workProject(opened.value.world, opened.value.folder, progress.onStage);
  progress.end();
  const showing: Showing = {
    folder: path,
    source: sourceReader(opened.value.world, opened.value.folder),
    paint,
  };
  const found = errorsIn(opened.value, worked);
  const { project } = worked;
  if (project === undefined) return { found, showing };
  const reading = readResults(resultsOf(worked));
  if (reading.kind !== 'results') throw new Error('results.json does not read back');
  return { side: { project, results: reading.results }, found, showing };
}

function errorsIn(
  { kind, path }: OpenedPackage,
  { diagnostics }: WorkedProject,
): readonly Diagnostic[] {
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  if (kind === 'folder') return errors;
  // Inside a bag or a PDF nothing can be mended.
  return errors.map((error) => ({
    ...error,
    hints: [`this stands inside ${path}, which is not to be changed`],
  }));
}

async function unreadable(
  { streams }: Call,
  sides: readonly Side[],
  isJson: boolean,
): Promise<number> {
  const { writeResults } = await import('../../index.ts');
  const [bad] = sides.filter(({ side }) => side === undefined);
  if (isJson && bad !== undefined)
    streams.out(writeResults(projectErrors(bad.found, bad.showing.source)));
  return usersMistake;
}

/** Members that have no results on either side, so that nothing of theirs could be compared but inputs. */
function unworkedLines(earlier: ComparedSide, later: ComparedSide): string {
  const without = new Set(
    earlier.results.members.flatMap((one) => ('error' in one ? [one.mark] : [])),
  );
  return later.results.members
    .flatMap((one) =>
      'error' in one && without.has(one.mark)
        ? [
            `${printable(one.mark)} has no results on either side: ${printable(one.error.message)}\n`,
          ]
        : [],
    )
    .join('');
}
