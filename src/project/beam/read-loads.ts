import type { BeamLoad, CarriedReaction } from '../definitions.ts';
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
  const loads: BeamLoad[] = [];
  const carried: CarriedReaction[] = [];
  for (const line of lines) {
    if (line.kind === 'reaction') carried.push(...readCarried(line, context));
    else loads.push(...readLine(line, context));
  }
  remarkOn(loads, context.reading);
  return { loads, carried };
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
