import {
  add,
  divide,
  entryAt,
  exact,
  multiply,
  negative,
  sumOf,
  times,
  zero,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import type { Bar } from './elastic-model.ts';
import { equivalentForces } from './fixed-end-forces.ts';
import { four, type Four } from './four.ts';

/** The 4 × 4 stiffness matrix of a bar, row by row: exact for a bar of one stiffness. */
export function stiffnessOf({ EI, length }: Bar): readonly Four[] {
  const square = multiply(length, length);
  // Multiplied out with all digits: an EI rounded differently in two entries would hold a bar that turns freely.
  const turn = divide(times(2, exact(EI)), length);
  const mixed = divide(times(6, exact(EI)), square);
  const lift = divide(times(12, exact(EI)), multiply(square, length));
  const [down, against] = [negative(lift), negative(mixed)];
  return [
    [lift, mixed, down, mixed],
    [mixed, times(2, turn), against, turn],
    [down, against, lift, against],
    [mixed, turn, against, times(2, turn)],
  ];
}

/** The forces that go with the movements of a bar's ends. */
export function forcesFor(stiffness: readonly Four[], movements: Four): Four {
  const moved = [0, 1, 2, 3].filter((end) => entryAt(movements, end)[0] !== 0);
  return four((row) =>
    sumOf(
      moved.map((end) =>
        multiply(entryAt(stiffness[row], end), entryAt(movements, end)),
      ),
    ),
  );
}

/** The loads of a bar as forces on its ends. */
export function loadsOn(acting: Acting, place: number, bar: Bar): Four {
  const loads = (acting.bars[place] ?? []).map((load) => equivalentForces(load, bar));
  return four((end) =>
    loads.reduce((sum, forces) => add(sum, entryAt(forces, end)), zero),
  );
}
