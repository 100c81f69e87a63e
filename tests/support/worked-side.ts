import type { ComparedSide } from '../../src/comparison/index.ts';
import { resultsOf, workProject } from '../../src/pipeline.ts';
import { readResults } from '../../src/results/index.ts';
import { memoryWorld } from '../../src/world/index.ts';
import type { Files } from './demo-edit.ts';

/** A project given as texts by path, worked to its results; throws where it cannot be read at all. */
export function workedSide(files: Files): ComparedSide {
  const world = memoryWorld(
    Object.fromEntries(
      Object.entries(files).map(([path, text]) => [`p/${path}`, text]),
    ),
  );
  const worked = workProject(world, 'p');
  const reading =
    worked.project === undefined ? undefined : readResults(resultsOf(worked));
  if (worked.project === undefined || reading?.kind !== 'results')
    throw new Error(worked.diagnostics.map(({ message }) => message).join('\n'));
  return { project: worked.project, results: reading.results };
}

/** A beam of 12 ft on two supports with a load at its middle; `rest` is added. */
export function plainBeam(mark: string, load: string, rest: string = ''): string {
  return [
    `mark: ${mark}`,
    'kind: beam',
    'points: { A: 0 ft, B: 12 ft }',
    'supports: { A: pin, B: roller }',
    `loads: [ ${load} ]`,
    rest,
    '',
  ].join('\n');
}
