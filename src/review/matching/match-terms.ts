import type { Sum } from '../../statics/index.ts';
import { worthOf, type Atom } from './atoms.ts';
import { closestCovers, type Cover, type Puzzle } from './closest-covers.ts';
import { spend, type Effort } from './effort.ts';
import { groupsOf, mostAtoms } from './groups.ts';
import { pairUnknowns } from './pair-unknowns.ts';
import { settlePairs } from './settle-pairs.ts';
import { costs, type Slip } from './slips.ts';
import { priceOf, waysOf, type WrittenNumber } from './ways.ts';
import type { WorkerTerm } from './worker-terms.ts';

/** An explanation of a line: the slips in it, none for a right one. */
export type Match = Cover<Slip>;

/** A line and the sum that it is to be, brought to one scale. */
export interface Matching {
  readonly terms: readonly WorkerTerm[];
  readonly atoms: readonly Atom[];
  readonly sum: Sum;
  /** What the line is multiplied by: −1 where every sign is turned, one over an arm for `R = …`. */
  readonly scale: number;
  /** What the worker found for unknowns before, by key. */
  readonly concluded: ReadonlyMap<string, number>;
}

/** A line made ready to be searched; undefined where its numbers, or the things of its sum, are too many. */
export interface PreparedLine {
  /** The slips in how its unknowns stand. */
  readonly named: readonly Slip[];
  readonly puzzle: Puzzle<Slip> | undefined;
}

/** Numbers of a line, or things of a sum, beyond these are settled by plain pairs first. */
const mostAtOnce = 12;

/**
 * Makes a line ready: the unknowns are paired by name; each number gets what it may stand for:
 * things that add just that (costing nothing, whole, split or lumped), the same with a slip, or
 * nothing at all. Undefined where the unknowns alone cost more than `bound`.
 */
export function prepareLine(
  matching: Matching,
  effort: Effort,
  bound: number = Infinity,
): PreparedLine | undefined {
  const { terms, sum } = matching;
  spend(effort, 1 + terms.length);
  const named = pairUnknowns(terms, matching.atoms, matching);
  if (priceOf(named.slips) > bound) return undefined;
  const { numbers, atoms } = openOf(matching, named.used);
  const isLong = numbers.length > mostAtOnce || atoms.length > mostAtOnce;
  spend(effort, isLong ? numbers.length * atoms.length : 0);
  const open = isLong ? settlePairs(numbers, atoms) : { numbers, atoms };
  if (open.numbers.length > mostAtoms || open.atoms.length > mostAtoms)
    return { named: named.slips, puzzle: undefined };
  const groups = groupsOf(open.atoms, open.atoms.map(worthOf));
  spend(effort, groups.length);
  const puzzle = {
    ways: waysOf(open.numbers, { atoms: open.atoms, groups, sum, effort }),
    needs: needsOf(open.atoms, atoms),
    missing: costs.missing,
    used: 0,
    signature: signatureOf,
  };
  return { named: named.slips, puzzle };
}

/** The numbers of a line, and the things that they may stand for. */
function openOf(
  { terms, atoms, scale, sum, concluded }: Matching,
  used: ReadonlySet<string>,
): { readonly numbers: readonly WrittenNumber[]; readonly atoms: readonly Atom[] } {
  const numbers = terms
    .filter(({ unknown }) => unknown === undefined)
    .map((term): WrittenNumber => ({ term, value: term.constant / scale }))
    .sort((a, b) => Math.abs(b.value) - Math.abs(a.value));
  const open = atoms.filter(({ id, factor }) => {
    // Square to a sum of forces nothing stands in it; a moment of nothing is a slip that happens.
    const isSquare = sum.kind === 'forces' && Math.abs(factor) <= 1e-12;
    return !used.has(id) && !isSquare;
  });
  // A number that stands for an unknown is what the worker found for it, else what it truly is.
  return { numbers, atoms: open.map((atom) => asConcluded(atom, concluded)) };
}

/** The cheapest explanations of a line, all of those that cost the same, at most three, none that costs more than `bound`. */
export function matchTerms(
  { named, puzzle }: PreparedLine,
  effort: Effort,
  bound: number = Infinity,
): readonly Match[] {
  const before = priceOf(named);
  if (puzzle === undefined || before > bound) return [];
  return closestCovers(puzzle, effort, bound - before).map(({ slips, cost }) => ({
    slips: [...named, ...slips],
    cost: cost + before,
  }));
}

function asConcluded(atom: Atom, concluded: Matching['concluded']): Atom {
  const own = atom.key === undefined ? undefined : concluded.get(atom.key);
  return own === undefined ? atom : { ...atom, size: own };
}

/** What has to stand in a line: every force and couple that adds something; the shapes of one load are one thing. */
function needsOf(
  open: readonly Atom[],
  all: readonly Atom[],
): readonly { readonly atoms: number; readonly slip: Slip }[] {
  const size = Math.max(0, ...all.map((atom) => Math.abs(worthOf(atom))));
  const byThing = new Map<string, number[]>();
  for (const [index, atom] of open.entries()) {
    const isNothing = Math.abs(worthOf(atom)) <= 1e-9 * size;
    if (isNothing || Math.abs(atom.factor) <= 1e-12) continue;
    const thing = atom.what.kind === 'load' ? `load ${atom.what.id}` : atom.id;
    byThing.set(thing, [...(byThing.get(thing) ?? []), index]);
  }
  return [...byThing.values()].map((indices) => ({
    atoms: indices.reduce((mask, index) => mask | (1 << index), 0),
    slip: {
      kind: 'missing-term',
      cost: costs.missing,
      atoms: indices.flatMap((index) => open[index] ?? []),
    },
  }));
}

/** One text for one slip. */
function signatureOf({ kind, term, atoms }: Slip): string {
  return `${kind} ${term?.start ?? ''} ${atoms.map(({ id }) => id).join(' ')}`;
}
