import { worthOf, type Atom } from './atoms.ts';
import { standsFor } from './closeness.ts';
import type { WrittenNumber } from './ways.ts';

/** What is left of a long line once the plain pairs are out of it. */
export interface Unsettled {
  readonly numbers: readonly WrittenNumber[];
  readonly atoms: readonly Atom[];
}

/** One thing, or all shapes of one load. */
interface Unit {
  readonly indices: readonly number[];
  readonly worth: number;
}

/**
 * Takes out of a long line what nobody can doubt: numbers that stand for just these things, or for
 * all shapes of a load, as many as there are of them. Where the counts differ one of each kind stays,
 * for the search to ask why.
 */
export function settlePairs(
  numbers: readonly WrittenNumber[],
  atoms: readonly Atom[],
): Unsettled {
  const units = unitsOf(atoms);
  const fits = numbers.map(({ value, term }) =>
    units.flatMap(({ worth }, index) =>
      standsFor(value, worth, term.spread) ? [index] : [],
    ),
  );
  const alike = new Map<string, number[]>();
  for (const [at, own] of fits.entries())
    if (own.length > 0)
      alike.set(own.join(' '), [...(alike.get(own.join(' ')) ?? []), at]);
  const goneNumbers = new Set<number>();
  const goneAtoms = new Set<number>();
  for (const [key, ats] of alike) {
    const own = key.split(' ').map(Number);
    const things = own.flatMap((index) => units[index] ?? []);
    const taken = new Set(things.flatMap(({ indices }) => indices));
    // Things that another number fits too, or that lie in one another, are not settled.
    const isShared = fits.some(
      (other) =>
        other.join(' ') !== key &&
        other.some((index) => units[index]?.indices.some((one) => taken.has(one))),
    );
    const isNested =
      taken.size < things.reduce((all, { indices }) => all + indices.length, 0);
    if (isShared || isNested) continue;
    const least = Math.min(ats.length, things.length);
    const count = ats.length === things.length ? least : least - 1;
    for (const at of ats.slice(0, count)) goneNumbers.add(at);
    for (const { indices } of things.slice(0, count))
      for (const index of indices) goneAtoms.add(index);
  }
  return {
    numbers: numbers.filter((_, at) => !goneNumbers.has(at)),
    atoms: atoms.filter((_, index) => !goneAtoms.has(index)),
  };
}

function unitsOf(atoms: readonly Atom[]): readonly Unit[] {
  const loads = new Map<string, number[]>();
  for (const [index, { what }] of atoms.entries())
    if (what.kind === 'load')
      loads.set(what.id, [...(loads.get(what.id) ?? []), index]);
  return [
    ...atoms.map((_, index) => [index]),
    ...[...loads.values()].filter((indices) => indices.length > 1),
  ].flatMap((indices) => {
    const worths = indices.map((index) => {
      const atom = atoms[index];
      return atom === undefined ? 0 : worthOf(atom);
    });
    const worth = worths.reduce((sum, one) => sum + one, 0);
    return worths.every((one) => one === 0) ? [] : [{ indices, worth }];
  });
}
