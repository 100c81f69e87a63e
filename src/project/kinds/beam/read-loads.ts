import type { BeamLoad, CarriedReaction } from '../../definitions.ts';
import { readAreaLine } from './area-line.ts';
import { readCarried } from './carried-line.ts';
import { readCoupleLine } from './couple-line.ts';
import { readUniformLine, readVaryingLine } from './distributed-line.ts';
import type { LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readPointLine } from './point-line.ts';
import { remarkOn } from './load-remarks.ts';

/** The loads of a beam, spread out into single loads of single cases, and the reactions that it carries. */
export interface ReadLoads {
  readonly loads: readonly BeamLoad[];
  readonly carried: readonly CarriedReaction[];
}

/** Reads every load line in file order; lines at fault are reported and left out. */
export function readLoads(lines: readonly LoadLine[], context: LoadContext): ReadLoads {
  // In file order, so that ids count as the file reads.
  const read = lines.map((line) =>
    line.kind === 'reaction'
      ? { loads: [], carried: readCarried(line, context) }
      : { loads: readLine(line, context), carried: [] },
  );
  const loads = read.flatMap((one) => one.loads);
  remarkOn(loads, context.reading);
  return { loads, carried: read.flatMap((one) => one.carried) };
}

function readLine(
  line: Exclude<LoadLine, { kind: 'reaction' }>,
  context: LoadContext,
): readonly BeamLoad[] {
  switch (line.kind) {
    case 'point':
      return readPointLine(line, context);
    case 'uniform':
      return readUniformLine(line, context);
    case 'varying':
      return readVaryingLine(line, context);
    case 'couple':
      return readCoupleLine(line, context);
    case 'area':
      return readAreaLine(line, context);
  }
}
