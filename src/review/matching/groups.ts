import { worthOf, type Atom } from './atoms.ts';

/** Things that one number may stand for together. */
export interface Group {
  /** One bit an atom, by its place in the list. */
  readonly mask: number;
  readonly count: number;
  /** What they add together, in the sum's own units. */
  readonly worth: number;
}

/** More atoms than this are not combined freely. */
const mostFree = 12;

/**
 * The groups that a worker may lump into one number: each by itself, any two or three, all shapes
 * of one load, neighbours among the shapes, all loads. Atoms that add nothing stand in none.
 * `worths` are what the atoms add, where these are not their true worths.
 */
export function groupsOf(
  atoms: readonly Atom[],
  worths: readonly number[] = atoms.map(worthOf),
): readonly Group[] {
  const size = Math.max(0, ...worths.map(Math.abs));
  const live = atoms.flatMap((_, index) =>
    Math.abs(worths[index] ?? 0) > 1e-9 * size ? [index] : [],
  );
  const found = new Map<number, Group>();
  const add = (indices: readonly number[]): void => {
    const mask = indices.reduce((all, index) => all | (1 << index), 0);
    const worth = indices.reduce((all, index) => all + (worths[index] ?? 0), 0);
    if (indices.length > 0 && !found.has(mask))
      found.set(mask, { mask, count: indices.length, worth });
  };
  for (const index of live) add([index]);
  for (const run of runsOf(atoms, live)) add(run);
  if (live.length <= mostFree) for (const some of combinations(live)) add(some);
  add(live.filter((index) => atoms[index]?.key === undefined));
  add(live);
  return [...found.values()];
}

/** All shapes of one load that follow one another. */
function runsOf(
  atoms: readonly Atom[],
  live: readonly number[],
): readonly (readonly number[])[] {
  const loadOf = (index: number): string | undefined => {
    const what = atoms[index]?.what;
    return what?.kind === 'load' ? what.id : undefined;
  };
  return live.flatMap((from, at) => {
    const id = loadOf(from);
    if (id === undefined) return [];
    const own = live.slice(at).filter((index) => loadOf(index) === id);
    return own.map((_, length) => own.slice(0, length + 1));
  });
}

function combinations(live: readonly number[]): readonly (readonly number[])[] {
  return live.flatMap((a, i) =>
    live
      .slice(i + 1)
      .flatMap((b, j) => [[a, b], ...live.slice(i + j + 2).map((c) => [a, b, c])]),
  );
}
