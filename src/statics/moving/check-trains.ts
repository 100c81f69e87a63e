import type { BeamStructure } from '../structure.ts';

/**
 * Refuses trains that no reader of definitions would build.
 *
 * @throws RangeError where two share an id, one is of no case listed, has no axle, an axle or lane load
 *   that does not press down, or spacings that do not fit.
 */
export function checkTrains({ trains = [], cases }: BeamStructure): void {
  const seen = new Set<string>();
  for (const { id, case: mark, axles, spacings, lane = 0 } of trains) {
    refuse(seen.has(id), `two trains are called ${id}`);
    seen.add(id);
    refuse(!cases.includes(mark), `train ${id} is of no case listed`);
    refuse(axles.length === 0, `train ${id} has no axle`);
    refuse(!axles.every(isPositive), `an axle of train ${id} does not press down`);
    refuse(!(lane >= 0 && lane < Infinity), `the lane load of train ${id} is ${lane}`);
    refuse(
      spacings.length !== axles.length - 1,
      `train ${id} has ${axles.length} axles and ${spacings.length} spacings`,
    );
    for (const { least, greatest } of spacings)
      refuse(
        !(isPositive(least) && least <= greatest && greatest < Infinity),
        `train ${id} has a spacing from ${least} to ${greatest}`,
      );
  }
}

function isPositive(value: number): boolean {
  return value > 0 && value < Infinity;
}

function refuse(isWrong: boolean, what: string): void {
  if (isWrong) throw new RangeError(what);
}
