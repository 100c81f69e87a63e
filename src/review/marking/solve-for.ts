import type { WorkerTerm } from '../matching/worker-terms.ts';

/** A line of a worker as an equation: a constant and so much of each unknown make 0. */
export interface OwnEquation {
  readonly constant: number;
  readonly shares: ReadonlyMap<string, number>;
}

/** The terms of a line gathered by their unknowns. */
export function ownEquation(terms: readonly WorkerTerm[]): OwnEquation {
  let constant = 0;
  const shares = new Map<string, number>();
  for (const term of terms) {
    constant += term.constant;
    if (term.unknown === undefined) continue;
    const { key, share } = term.unknown;
    shares.set(key, (shares.get(key) ?? 0) + share);
  }
  return { constant, shares };
}

/**
 * What an unknown comes to by the worker's own equations, with what was concluded before put in:
 * by the last equation alone where it has no other unknown, else by solving all of them together.
 * Undefined where they do not determine it.
 */
export function solveFor(
  key: string,
  equations: readonly OwnEquation[],
  concluded: ReadonlyMap<string, number>,
): number | undefined {
  const last = equations.at(-1);
  if (last === undefined) return undefined;
  const alone = solveOne(key, last, concluded);
  if (alone !== undefined) return alone;
  const others = new Map([...concluded].filter(([known]) => known !== key));
  const rows = equations.map((equation) => putIn(equation, others));
  const unknowns = [...new Set(rows.flatMap(({ shares }) => [...shares.keys()]))];
  return eliminate(rows, [...unknowns.filter((one) => one !== key), key]);
}

function solveOne(
  key: string,
  equation: OwnEquation,
  concluded: ReadonlyMap<string, number>,
): number | undefined {
  const others = new Map([...concluded].filter(([known]) => known !== key));
  const { constant, shares } = putIn(equation, others);
  const share = shares.get(key);
  return shares.size === 1 && share !== undefined && share !== 0
    ? -constant / share + 0
    : undefined;
}

function putIn(
  { constant, shares }: OwnEquation,
  known: ReadonlyMap<string, number>,
): OwnEquation {
  let sum = constant;
  const left = new Map<string, number>();
  for (const [key, share] of shares) {
    const value = known.get(key);
    if (value === undefined) left.set(key, share);
    else sum += share * value;
  }
  return { constant: sum, shares: left };
}

/** Gauss elimination; the value of the last unknown where the equations determine it. */
function eliminate(
  equations: readonly OwnEquation[],
  unknowns: readonly string[],
): number | undefined {
  const rows = equations.map(({ constant, shares }) => [
    ...unknowns.map((key) => shares.get(key) ?? 0),
    constant,
  ]);
  const size = Math.max(0, ...rows.flatMap((row) => row.slice(0, -1).map(Math.abs)));
  let done = 0;
  for (let column = 0; column < unknowns.length; column += 1) {
    const pivot = rows.findIndex(
      (row, index) => index >= done && Math.abs(row[column] ?? 0) > 1e-9 * size,
    );
    const found = rows[pivot];
    if (found === undefined) {
      if (column === unknowns.length - 1) return undefined;
      continue;
    }
    rows[pivot] = rows[done] ?? found;
    rows[done] = found;
    for (const [index, row] of rows.entries()) {
      if (index === done) continue;
      const factor = (row[column] ?? 0) / (found[column] ?? 1);
      if (factor !== 0)
        for (const [at] of row.entries())
          row[at] = (row[at] ?? 0) - factor * (found[at] ?? 0);
    }
    if (column === unknowns.length - 1) {
      const isAlone = found
        .slice(0, -2)
        .every((value) => Math.abs(value) <= 1e-9 * size);
      return isAlone ? -(found.at(-1) ?? 0) / (found[column] ?? 1) + 0 : undefined;
    }
    done += 1;
  }
  return undefined;
}
