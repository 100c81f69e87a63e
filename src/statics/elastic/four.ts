import { zero, type DoubleDouble } from '../linear/double-double.ts';

/** The four movements of a bar's ends, or what goes with them: up and turn at the left, up and turn at the right. */
export type Four = readonly [DoubleDouble, DoubleDouble, DoubleDouble, DoubleDouble];

/** Four times nothing. */
export const nothing: Four = [zero, zero, zero, zero];

/** Makes the four from their places. */
export function four(of: (end: number) => DoubleDouble): Four {
  return [of(0), of(1), of(2), of(3)];
}
