import type { Atom } from './atoms.ts';

/** Things that one number may stand for together. */
export interface Group {
  /** One bit an atom, by its place in the list. */
  readonly mask: number;
  readonly count: number;
  /** What they add together, in the sum's own units. */
  readonly worth: number;
  /** True where they are all that there is of a kind: all shapes of a load, all loads, all reactions, everything. */
  readonly isWhole: boolean;
}

/** More atoms than this are not combined freely. */
const mostFree = 12;

/** So many atoms have a bit each. */
export const mostAtoms = 30;

/**
 * The groups that a worker may lump into one number: each by itself, any two or three, all but one,
 * all shapes of one load, neighbours among the shapes, all loads, all reactions. Atoms that add
 * nothing stand in none. `worths` are what the atoms add, by their place.
 */
export function groupsOf(
  atoms: readonly Atom[],
  worths: readonly number[],
): readonly Group[] {
  const size = Math.max(0, ...worths.map(Math.abs));
  const live = atoms.flatMap((_, index) =>
    Math.abs(worths[index] ?? 0) > 1e-9 * size ? [index] : [],
  );
  const found = new Map<number, Group>();
  const add = (indices: readonly number[], isWhole: boolean): void => {
    const mask = indices.reduce((all, index) => all | (1 << index), 0);
    const worth = indices.reduce((all, index) => all + (worths[index] ?? 0), 0);
    if (indices.length > 0 && !found.has(mask))
      found.set(mask, { mask, count: indices.length, worth, isWhole });
  };
  for (const index of live) add([index], true);
  const isLoad = (index: number): boolean => atoms[index]?.key === undefined;
  const wholes = [live, live.filter(isLoad), live.filter((one) => !isLoad(one))];
  for (const all of wholes) add(all, true);
  for (const { run, isAll } of runsOf(atoms, live)) add(run, isAll);
  for (const all of wholes)
    for (const out of all)
      add(
        all.filter((index) => index !== out),
        false,
      );
  if (live.length <= mostFree) for (const some of combinations(live)) add(some, false);
  return [...found.values()];
}

/** All shapes of one load that follow one another. */
function runsOf(
  atoms: readonly Atom[],
  live: readonly number[],
): readonly { readonly run: readonly number[]; readonly isAll: boolean }[] {
  const loadOf = (index: number): string | undefined => {
    const what = atoms[index]?.what;
    return what?.kind === 'load' ? what.id : undefined;
  };
  return live.flatMap((from, at) => {
    const id = loadOf(from);
    if (id === undefined) return [];
    const own = live.slice(at).filter((index) => loadOf(index) === id);
    const isFirst = live.slice(0, at).every((index) => loadOf(index) !== id);
    return own.map((_, length) => ({
      run: own.slice(0, length + 1),
      isAll: isFirst && length === own.length - 1,
    }));
  });
}

function combinations(live: readonly number[]): readonly (readonly number[])[] {
  return live.flatMap((a, i) =>
    live
      .slice(i + 1)
      .flatMap((b, j) => [[a, b], ...live.slice(i + j + 2).map((c) => [a, b, c])]),
  );
}
