import { hasErrors } from '../../diagnostics/index.ts';
import type { Call, Command } from '../command.ts';
import { good, usersMistake } from '../exit-codes.ts';
import { paintFor } from '../paint.ts';
import { startProgress } from '../progress.ts';
import { registerLines } from '../register-lines.ts';
import { showDiagnostics } from '../show-diagnostic.ts';
import type { UsageFault } from '../usage-fault.ts';

/** Indexes projects and bags. Writes no file. */
export const register: Command = {
  name: 'register',
  takes: 'PATH…',
  summary: 'index projects and bags with their status',
  about: [
    'Lists project folders, bags and bound PDFs, by number and then revision by revision: title, status, date, people, sheets, the check that governs, and the SHA-256 of each bag. A folder that is no project is searched for such, four levels deep, hidden folders left out. No file is written.',
    'What a package supersedes stands in its own record; the register turns that round and says of each package what supersedes it. Two bags of one number and revision that differ are pointed out.',
    'The table shows the first 12 digits of a checksum; --csv and --json give all, and every figure at full precision. Ends with 1 where something that was named cannot be read, or where two bags of one revision differ.',
  ],
  options: {
    csv: { type: 'boolean', about: 'print a table for a spreadsheet (RFC 4180)' },
    json: { type: 'boolean', about: 'print the register for another program' },
  },
  examples: [
    { line: 'sumzero register shelter', does: 'a project and the bags that it issued' },
    { line: 'sumzero register ~/projects', does: 'all that lies below a folder' },
    {
      line: 'sumzero register ~/projects --csv > register.csv',
      does: 'the same for a spreadsheet',
    },
  ],
  run: runRegister,
};

async function runRegister(call: Call): Promise<number | UsageFault> {
  const { given, world, streams } = call;
  const paths = given.positionals.map((path) =>
    path === '/' ? path : path.replace(/\/+$/u, ''),
  );
  if (paths.length === 0)
    return {
      message: 'register needs a folder, a bag or a bound PDF',
      hints: ['write sumzero register PATH'],
    };
  if (given.has('csv') && given.has('json'))
    return {
      message: '--csv and --json cannot both be printed',
      hints: ['choose one of them'],
    };
  const progress = startProgress(streams, false);
  const face = await import('../../index.ts');
  const { rows, diagnostics } = await face.register(world, paths, (path) =>
    progress.onWords(`reading ${path}`),
  );
  progress.end();
  streams.err(
    showDiagnostics(diagnostics, {
      folder: '.',
      source: () => undefined,
      paint: paintFor(streams.coloured.err),
    }),
  );
  const lines = (): string =>
    registerLines(rows, {
      paint: paintFor(streams.coloured.out),
      writeRatio: face.formatRatio,
    })
      .map((line) => `${line}\n`)
      .join('');
  streams.out(
    given.has('csv')
      ? face.registerCsv(rows)
      : given.has('json')
        ? face.registerJson(rows)
        : lines(),
  );
  const isDoubtful = rows.some(({ hasTwin }) => hasTwin);
  return hasErrors(diagnostics) || isDoubtful ? usersMistake : good;
}
