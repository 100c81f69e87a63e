import type { Atom } from './atoms.ts';
import { isSame } from './closeness.ts';
import type { WorkerTerm } from './worker-terms.ts';

/** What a line may be multiplied by, and what it costs to take it so. */
export interface Scale {
  readonly scale: number;
  readonly cost: number;
}

/** So many scales of one line are tried, the likeliest first. */
const mostScales = 24;

/**
 * What a line may be multiplied by: what makes an unknown stand as it belongs, or one over an arm
 * (`R = … / 15 ft`). Turned against the stated convention costs next to nothing, so that where one
 * of two terms is wrong the convention says which. `sense` is 1 where the worker's positive sense is the solver's.
 */
export function scalesOf(
  terms: readonly WorkerTerm[],
  atoms: readonly Atom[],
  sense: 1 | -1,
): readonly Scale[] {
  const found: Scale[] = [];
  const add = (scale: number, cost: number): void => {
    const isNew = found.every((one) => !isSame(one.scale, scale));
    if (Number.isFinite(scale) && scale !== 0 && isNew) found.push({ scale, cost });
  };
  const turned = (scale: number): number => (Math.sign(scale) === sense ? 0 : 0.05);
  add(sense, 0);
  add(-sense, 0.05);
  for (const { unknown } of terms) {
    const atom = atoms.find(({ key }) => key !== undefined && key === unknown?.key);
    if (unknown === undefined || atom === undefined || atom.factor === 0) continue;
    const scale = unknown.share / atom.factor;
    add(scale, 0.01 + turned(scale));
    add(-scale, 0.01 + turned(-scale));
  }
  // `R = … / 15 ft`: the arm that divides everything is the unknown's.
  for (const { parts } of terms)
    for (const { size, dimension, power } of parts)
      if (power < 0 && dimension?.length === 1 && dimension.force === 0)
        for (const scale of [1 / size, -1 / size]) add(scale, 0.02 + turned(scale));
  return found.slice(0, mostScales);
}
