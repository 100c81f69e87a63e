import type { Combination } from '../standards/index.ts';
import { isIdle, type BeamStructure } from '../statics/index.ts';

/** What tells an entry from others: its mark, and the factors of a combination. */
export interface EntryName {
  readonly mark: string;
  /** Absent for a case. */
  readonly factors?: Combination['factors'];
}

/** Entries that give a member the same: the first stands for all of them. */
export interface EntryGroup<T> {
  readonly first: T;
  /** Marks of all, in their order. */
  readonly marks: readonly string[];
}

/**
 * Puts entries together that differ only in cases that the member does not feel: nothing acts on it there,
 * no support moves, nothing bends it. Cases that it does not feel are one group, combinations of such cases another.
 */
export function groupEntries<T>(
  structure: BeamStructure,
  entries: readonly T[],
  nameOf: (entry: T) => EntryName,
): readonly EntryGroup<T>[] {
  const felt = new Set(structure.cases.filter((mark) => !isIdle(structure, mark)));
  const groups = new Map<string, { readonly first: T; readonly marks: string[] }>();
  for (const entry of entries) {
    const { mark, factors } = nameOf(entry);
    const key = factors === undefined ? keyOfCase(mark, felt) : keyOf(factors, felt);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { first: entry, marks: [mark] });
    else known.marks.push(mark);
  }
  return [...groups.values()];
}

function keyOfCase(mark: string, felt: ReadonlySet<string>): string {
  return felt.has(mark) ? `case ${mark}` : 'case';
}

function keyOf(factors: Combination['factors'], felt: ReadonlySet<string>): string {
  const terms = factors
    .filter((term) => term.factor !== 0 && felt.has(term.case))
    .map((term) => `${term.factor} ${term.case}`);
  return `sum ${terms.sort().join(' + ')}`;
}
