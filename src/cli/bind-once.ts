import { hasErrors, type Diagnostic } from '../diagnostics/index.ts';
import type * as face from '../index.ts';
import type { Bound, Results, Stage } from '../index.ts';
import type { Call } from './command.ts';
import { good, usersMistake } from './exit-codes.ts';
import { memberLines } from './member-lines.ts';
import {
  checkPrintsBeside,
  outputProblem,
  writeOutputs,
  type OutputPaths,
} from './output-files.ts';
import { paintFor } from './paint.ts';
import { startProgress } from './progress.ts';
import { countDiagnostics, showDiagnostics } from './show-diagnostic.ts';
import { sourceReader } from './source-reader.ts';
import { startTimings } from './timings.ts';

/** What is to be bound, and where it goes. */
export interface BindRequest {
  readonly folder: string;
  readonly paths: OutputPaths;
  /** Marks of the members to bind; undefined for all. */
  readonly only: readonly string[] | undefined;
  readonly keepGoing: boolean;
  readonly isQuiet: boolean;
  readonly stations?: number;
  /** Whether to tell how long each stage took. */
  readonly isTimed: boolean;
  /** False for the later rounds of a watch. */
  readonly isFirst: boolean;
}

type Face = typeof face;

/** Binds a project once, writes what it gives and tells how it went. Answers the exit code. */
export async function bindOnce(call: Call, request: BindRequest): Promise<number> {
  const { world } = call;
  const problem = outputProblem(world, request.folder, request.paths);
  if (problem !== undefined) return tellErrors(call, request, [problem]);
  const { streams, program } = call;
  const progress = startProgress(streams, request.isQuiet);
  const timings = startTimings(streams, request.isFirst);
  const face = await import('../index.ts');
  const before = resultsAt(call, face, request.paths.json);
  const bound = await face.bindProject(world, request.folder, {
    program,
    keepGoing: request.keepGoing,
    ...(request.only === undefined ? {} : { only: request.only }),
    ...(request.stations === undefined ? {} : { stations: request.stations }),
    onStage: (stage: Stage) => {
      progress.onStage(stage);
      timings.onStage(stage);
    },
  });
  progress.end();
  if (request.isTimed) streams.err(timings.lines());
  const { pdf, json, checkPrints } = bound;
  if (pdf === undefined || json === undefined)
    return tellErrors(call, request, bound.diagnostics);
  const { failed, isHalfWritten } = writeOutputs(world, request.paths, {
    pdf,
    json,
    ...(checkPrints === undefined ? {} : { checkPrints }),
  });
  if (failed.length > 0)
    return tellErrors(call, request, [...bound.diagnostics, ...failed], isHalfWritten);
  tellDiagnostics(call, request, bound.diagnostics);
  if (!request.isQuiet) tellOutcome(call, request, { face, bound, before, json });
  return hasErrors(bound.diagnostics) ? usersMistake : good;
}

/** The figures that the last run left; undefined where there are none that can be read. */
function resultsAt({ world }: Call, face: Face, path: string): Results | undefined {
  const answer = world.read(path);
  if (!('bytes' in answer)) return undefined;
  const reading = face.readResults(new TextDecoder().decode(answer.bytes));
  return reading.kind === 'results' ? reading.results : undefined;
}

function tellDiagnostics(
  { world, streams }: Call,
  { folder, isQuiet }: BindRequest,
  diagnostics: readonly Diagnostic[],
): void {
  const told = isQuiet
    ? diagnostics.filter(({ severity }) => severity === 'error')
    : diagnostics;
  const paint = paintFor(streams.coloured.err);
  streams.err(
    showDiagnostics(told, { folder, source: sourceReader(world, folder), paint }),
  );
}

function tellErrors(
  call: Call,
  request: BindRequest,
  diagnostics: readonly Diagnostic[],
  isHalfWritten: boolean = false,
): number {
  tellDiagnostics(call, request, diagnostics);
  const [first] = diagnostics.filter(({ severity }) => severity === 'error');
  // The package is written first; where the figures fail after it, the message says which file it was.
  const wrote = isHalfWritten ? '' : ' Nothing was written.';
  const more = first === undefined ? '' : ` sumzero explain ${first.code} tells more.`;
  call.streams.err(`${countDiagnostics(diagnostics)}.${wrote}${more}\n`);
  return usersMistake;
}

interface Told {
  readonly face: Face;
  readonly bound: Bound;
  readonly before: Results | undefined;
  readonly json: string;
}

function tellOutcome(
  { streams }: Call,
  { paths, only }: BindRequest,
  told: Told,
): void {
  const { face, bound, before, json } = told;
  const reading = face.readResults(json);
  if (reading.kind !== 'results')
    throw new TypeError('the figures just written cannot be read back');
  const lines = memberLines({
    members: bound.worked.members,
    now: reading.results,
    before: only === undefined ? before : withOnly(before, only),
    writeRatio: face.formatRatio,
  });
  const paint = paintFor(streams.coloured.out);
  const sheets = `${bound.sheetCount ?? 0} sheets`;
  streams.out(lines.map((line) => `${line}\n`).join(''));
  streams.out(
    `${paint('good', `Bound ${sheets}:`)} ${paths.pdf}\nEvery figure of them: ${paths.json}\n`,
  );
  if (bound.checkPrints !== undefined)
    streams.out(`Check prints of worked steps: ${checkPrintsBeside(paths.pdf)}\n`);
}

/** The members of a run that are among some marks: the others were not asked for and are not missed. */
function withOnly(
  before: Results | undefined,
  only: readonly string[],
): Results | undefined {
  if (before === undefined) return undefined;
  return {
    ...before,
    members: before.members.filter(({ mark }) => only.includes(mark)),
  };
}
