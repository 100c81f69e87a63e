import type { Box } from '../geometry/box.ts';
import { growBox, overlaps } from '../geometry/box.ts';

/** A label to be placed: where it may stand, the most wanted place first. */
export interface LabelRequest {
  readonly candidates: readonly Box[];
}

/** Labels keep this far from each other, and farther side by side, where they would read on; points. */
const labelGap = 2;
const besideGap = 5;
/** How often the whole set is looked over for better places. */
const rounds = 4;

/**
 * Places labels so that none overlaps another or anything that `isFree` guards: the most
 * constrained first, each at its best free place; one that finds none may push a single
 * neighbour to another place; then every label moves up to a better place that has come free.
 * Undefined stands for a label that found no place at all. The same request always gives the
 * same answer.
 */
export function placeLabels(
  requests: readonly LabelRequest[],
  isFree: (box: Box) => boolean,
): readonly (Box | undefined)[] {
  const free = requests.map(({ candidates }) => candidates.filter(isFree));
  const placed: (Box | undefined)[] = requests.map(() => undefined);
  const clashes = (box: Box, self: number): readonly number[] =>
    placed.flatMap((other, index) =>
      other !== undefined && index !== self && areTooClose(box, other) ? [index] : [],
    );
  const bestFor = (index: number): Box | undefined =>
    free[index]?.find((box) => clashes(box, index).length === 0);

  for (const index of byChoice(free)) {
    placed[index] = bestFor(index) ?? pushNeighbour(index);
  }
  for (let round = 0; round < rounds; round += 1) {
    for (const index of placed.keys()) placed[index] = bestFor(index) ?? placed[index];
  }
  return placed;

  // Takes the place of one neighbour that can stand elsewhere.
  function pushNeighbour(index: number): Box | undefined {
    for (const box of free[index] ?? []) {
      const [neighbour, ...more] = clashes(box, index);
      if (neighbour === undefined || more.length > 0) continue;
      const elsewhere = free[neighbour]?.find(
        (other) => !areTooClose(other, box) && clashes(other, neighbour).length === 0,
      );
      if (elsewhere !== undefined) {
        placed[neighbour] = elsewhere;
        return box;
      }
    }
    return undefined;
  }
}

function areTooClose(a: Box, b: Box): boolean {
  const { left, right, top, bottom } = growBox(a, labelGap);
  const more = besideGap - labelGap;
  return overlaps({ left: left - more, right: right + more, top, bottom }, b);
}

/** Indices, those with the fewest choices first. */
function byChoice(free: readonly (readonly Box[])[]): readonly number[] {
  return free
    .map(({ length }, index) => ({ length, index }))
    .sort((a, b) => a.length - b.length || a.index - b.index)
    .map(({ index }) => index);
}
