import type { ContinuousSpan } from './continuous-spans.ts';
import { mirrored, simpleReaction } from './span-loads.ts';

/** Shear just inside the ends of a span that rests on its two supports as a simple beam, N. */
export function simpleShears({
  loads,
  length,
}: Pick<ContinuousSpan, 'loads' | 'length'>): {
  readonly left: number;
  readonly right: number;
} {
  return {
    left: loads.reduce(
      (sum, load) => sum + simpleReaction(mirrored(load, length), length),
      0,
    ),
    right: loads.reduce((sum, load) => sum - simpleReaction(load, length), 0),
  };
}
