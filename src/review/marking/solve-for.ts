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
  let rows: readonly Row[] = equations.map(({ constant, shares }) => [
    ...unknowns.map((key) => shares.get(key) ?? 0),
    constant,
  ]);
  const size = Math.max(0, ...rows.flatMap((row) => row.slice(0, -1).map(Math.abs)));
  const isSome = (value: number | undefined): boolean =>
    Math.abs(value ?? 0) > 1e-9 * size;
  for (const column of unknowns.keys()) {
    const pivot = rows.find(
      (row) => isSome(row[column]) && !row.slice(0, column).some(isSome),
    );
    if (pivot !== undefined) rows = rows.map((row) => clearedOf(row, pivot, column));
  }
  const last = unknowns.length - 1;
  const alone = rows.find(
    (row) => isSome(row[last]) && !row.slice(0, last).some(isSome),
  );
  return alone === undefined
    ? undefined
    : -(alone.at(-1) ?? 0) / (alone[last] ?? 1) + 0;
}

/** The shares of the unknowns, then the constant. */
type Row = readonly number[];

function clearedOf(row: Row, pivot: Row, column: number): Row {
  const factor = row === pivot ? 0 : (row[column] ?? 0) / (pivot[column] ?? 1);
  return factor === 0
    ? row
    : row.map((value, at) => (at === column ? 0 : value - factor * (pivot[at] ?? 0)));
}
