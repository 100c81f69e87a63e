import { bindAgain } from '../bind-again.ts';
import { bindOnce, type BindRequest } from '../bind-once.ts';
import type { Call, Command } from '../command.ts';
import { folderIn } from '../project-folder.ts';
import type { Given } from '../read-arguments.ts';
import { pathIn } from '../source-reader.ts';
import { stationsIn } from '../stations.ts';
import type { UsageFault } from '../usage-fault.ts';

/** Binds the package: the PDF, and every figure of it as JSON. */
export const bind: Command = {
  name: 'bind',
  takes: 'FOLDER',
  summary: 'make the package: PDF and results.json',
  about: [
    'Works the members of a project and binds their sheets into package.pdf and every figure into results.json, both in the folder unless told otherwise. Then it tells the governing moment and reaction of each member, and what changed since the last run.',
    'Where there are errors they are shown all at once and nothing is written; --keep-going binds the other members all the same, says on the cover that the package is incomplete, and still ends with exit code 1.',
  ],
  options: {
    output: { type: 'string', short: 'o', value: 'FILE', about: 'write the PDF there' },
    json: { type: 'string', value: 'FILE', about: 'write the figures there' },
    only: {
      type: 'string',
      multiple: true,
      value: 'MARK…',
      about: 'bind these members alone',
    },
    watch: { type: 'boolean', about: 'bind again on every save, until Ctrl-C' },
    'keep-going': {
      type: 'boolean',
      about: 'bind the good members although others fail',
    },
    quiet: { type: 'boolean', about: 'say nothing but errors' },
    stations: {
      type: 'string',
      value: 'N',
      about: 'figures at the ends of N equal stretches as well',
    },
    timings: { type: 'boolean', about: 'tell how long each stage took' },
  },
  examples: [
    { line: 'sumzero bind shelter', does: 'bind the package of a folder' },
    { line: 'sumzero bind shelter --watch', does: 'bind again on every save' },
    { line: 'sumzero bind shelter --only B1 B2', does: 'bind two members alone' },
    {
      line: 'sumzero bind shelter -o issue/A.pdf --json issue/A.json',
      does: 'write into another folder',
    },
  ],
  run: runBind,
};

async function runBind(call: Call): Promise<number | UsageFault> {
  const { given } = call;
  const place = folderIn(given, 'bind');
  if ('fault' in place) return place.fault;
  const stations = stationsIn(given);
  if ('fault' in stations) return stations.fault;
  const marks = marksIn(given);
  if ('fault' in marks) return marks.fault;
  const { folder } = place;
  const request: BindRequest = {
    folder,
    paths: {
      pdf: given.value('output') ?? pathIn(folder, 'package.pdf'),
      json: given.value('json') ?? pathIn(folder, 'results.json'),
    },
    only: marks.only,
    keepGoing: given.has('keep-going'),
    isQuiet: given.has('quiet'),
    ...stations,
    isTimed: given.has('timings'),
    isFirst: true,
  };
  return given.has('watch')
    ? await bindAgain(call, request)
    : await bindOnce(call, request);
}

/** Marks after `--only`, each with an option of its own, joined by commas, or simply one after another. */
function marksIn(
  given: Given,
): { readonly only: readonly string[] | undefined } | { readonly fault: UsageFault } {
  const [, ...others] = given.positionals;
  if (!given.has('only')) {
    const [other] = others;
    return other === undefined
      ? { only: undefined }
      : {
          fault: {
            message: `bind takes one folder, and ${other} is a second`,
            hints: ['write --only before the marks of members'],
          },
        };
  }
  const only = [...given.all('only'), ...others].flatMap((text) => text.split(','));
  return { only: [...new Set(only.filter((mark) => mark !== ''))] };
}
