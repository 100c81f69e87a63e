import type {
  BeamLoad,
  BeamTemperature,
  BeamTrain,
  CarriedReaction,
} from '../../definitions.ts';
import { readAreaLine } from './area-line.ts';
import { readCarried } from './carried-line.ts';
import { readCoupleLine } from './couple-line.ts';
import { readUniformLine, readVaryingLine } from './distributed-line.ts';
import type { LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readPointLine } from './point-line.ts';
import { remarkOn, remarkOnTemperatures } from './load-remarks.ts';
import { readAxlesLine } from './train-line.ts';
import { readTemperatureLine, type ThermalProperties } from './temperature-line.ts';

/** What `loads` of a beam holds, spread out into single entries of single cases. */
export interface ReadLoads {
  readonly loads: readonly BeamLoad[];
  readonly temperatures: readonly BeamTemperature[];
  readonly carried: readonly CarriedReaction[];
  readonly trains: readonly BeamTrain[];
}

/** Reads every load line in file order; lines at fault are reported and left out. */
export function readLoads(
  lines: readonly LoadLine[],
  properties: ThermalProperties,
  context: LoadContext,
): ReadLoads {
  // In file order, so that ids count as the file reads.
  const read = lines.map((line): Partial<ReadLoads> => {
    if (line.kind === 'reaction') return { carried: readCarried(line, context) };
    if (line.kind === 'temperature')
      return { temperatures: readTemperatureLine(line, properties, context) };
    if (line.kind === 'axles') return { trains: readAxlesLine(line, context) };
    return { loads: readLine(line, context) };
  });
  const loads = read.flatMap((one) => one.loads ?? []);
  const temperatures = read.flatMap((one) => one.temperatures ?? []);
  remarkOn(loads, context.reading);
  remarkOnTemperatures(temperatures, context.reading);
  const trains = read.flatMap((one) => one.trains ?? []);
  const carried = read.flatMap((one) => one.carried ?? []);
  return { loads, temperatures, carried, trains };
}

function readLine(
  line: Exclude<LoadLine, { kind: 'reaction' | 'temperature' | 'axles' }>,
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
