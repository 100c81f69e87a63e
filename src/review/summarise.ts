import type { FindingKind } from './verdict.ts';
import type { MarkedFile, MarkSummary } from './marked.ts';

/** The slips of one person, for whoever looks after the work. */
export interface PersonSummary {
  /** As the files name the person; empty where they do not. */
  readonly person: string;
  readonly files: number;
  readonly marks: MarkSummary;
  /** How often each kind was found in steps that are not right, most first. */
  readonly kinds: readonly { readonly kind: FindingKind; readonly count: number }[];
}

/** The marks of a project by person, in the order in which people first come up. */
export function summarise(files: readonly MarkedFile[]): readonly PersonSummary[] {
  const people = new Map<string, MarkedFile[]>();
  for (const file of files) {
    const person = file.prepared?.name ?? file.prepared?.initials ?? '';
    people.set(person, [...(people.get(person) ?? []), file]);
  }
  return [...people].map(([person, own]) => ({
    person,
    files: own.length,
    marks: own.reduce<MarkSummary>((all, { summary }) => added(all, summary), nothing),
    kinds: kindsIn(own),
  }));
}

const nothing: MarkSummary = { right: 0, wrong: 0, follows: 0, unread: 0 };

function added(one: MarkSummary, other: MarkSummary): MarkSummary {
  return {
    right: one.right + other.right,
    wrong: one.wrong + other.wrong,
    follows: one.follows + other.follows,
    unread: one.unread + other.unread,
  };
}

function kindsIn(files: readonly MarkedFile[]): PersonSummary['kinds'] {
  const counts = new Map<FindingKind, number>();
  for (const { steps } of files)
    for (const { verdict, findings } of steps)
      if (verdict !== 'right')
        for (const { kind } of findings) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts]
    .map(([kind, count]) => ({ kind, count }))
    .sort((a, b) => b.count - a.count);
}
