import type { CaseKind } from '../combination-case.ts';
import type { Combination } from '../combination.ts';
import { findAsce7Edition, type Asce7Edition } from './asce7-edition.ts';
import { expandClause, type Clause } from './clause.ts';
import { collectCombinations } from './collect.ts';
import { excludesIn } from './compatible-terms.ts';
import type {
  CombinationContext,
  CombinationList,
  NamedSet,
  SetNote,
  UntakenCase,
} from './named-set.ts';

/** A set of ASCE 7 as data. */
export interface Asce7Set {
  readonly name: 'asce7-strength' | 'asce7-allowable';
  readonly for: 'strength' | 'service';
  /** The section that holds the clauses, per edition: `2.3.1`. */
  readonly section: Readonly<Record<Asce7Edition, string>>;
  readonly clauses: (edition: Asce7Edition) => readonly Clause[];
  /** Where the set sends loads that it does not take, per edition. */
  readonly elsewhere: (
    edition: Asce7Edition,
  ) => Readonly<Partial<Record<CaseKind, string>>>;
  /** Notes of the set's own, given the kinds that the project has. */
  readonly notes: (kinds: ReadonlySet<CaseKind>) => readonly SetNote[];
}

/** The named set that works such data out for a project. */
export function asce7NamedSet(set: Asce7Set): NamedSet {
  return {
    name: set.name,
    for: set.for,
    list: (_request, context) => listAsce7(set, context),
  };
}

function listAsce7(set: Asce7Set, context: CombinationContext): CombinationList {
  const choice = findAsce7Edition(context.standards, set.name);
  const { edition } = choice;
  if (edition === undefined) {
    return { combinations: [], notes: [], untaken: [], problems: choice.problems };
  }
  const section = `ASCE/SEI ${edition} ${set.section[edition]}`;
  const collected = collectCombinations(entriesOf(set, edition, context), set.name);
  return {
    ...collected,
    notes: [...choice.notes, ...notesOf(set, section, context)],
    untaken: untakenBy(set, edition, context),
  };
}

function* entriesOf(
  set: Asce7Set,
  edition: Asce7Edition,
  context: CombinationContext,
): Generator<Combination> {
  const excludes = excludesIn(context);
  for (const clause of set.clauses(edition)) {
    const clauses = [`ASCE/SEI ${edition} ${set.section[edition]} (${clause.number})`];
    for (const entry of expandClause(clause, context.cases, excludes)) {
      yield { ...entry, for: set.for, clauses };
    }
  }
}

function notesOf(
  set: Asce7Set,
  section: string,
  context: CombinationContext,
): readonly SetNote[] {
  const kinds = new Set(context.cases.flatMap((entry) => entry.kind ?? []));
  const texts = [
    `The factors of ${section} were written down from memory of the standard; compare them with it before use.`,
    `${section} asks that one or more loads not acting be considered; sums with a variable load left out are listed only where a clause gives them. Where a variable load relieves, a combination of the project's own is needed.`,
  ];
  const shared = texts.map((text) => ({ kind: 'caution', text }) as const);
  return [...shared, ...earthNotes(kinds, section), ...set.notes(kinds)];
}

// A stockpile comes and goes, a retained bank does not; the file does not say which it is. Left out where it relieves
// is safe for both.
function earthNotes(kinds: ReadonlySet<CaseKind>, section: string): readonly SetNote[] {
  if (!kinds.has('earth')) return [];
  const text = `Earth loads are factored where they add and left out where they relieve; the part that ${section} lets a permanent earth load relieve is not used.`;
  return [{ kind: 'assumption', text }];
}

function untakenBy(
  set: Asce7Set,
  edition: Asce7Edition,
  context: CombinationContext,
): readonly UntakenCase[] {
  const taken = new Set(
    set
      .clauses(edition)
      .flatMap((clause) => clause.terms)
      .flatMap((term) => term.oneOf)
      .map((option) => option.kind),
  );
  const elsewhere = set.elsewhere(edition);
  return context.cases.flatMap((entry) => {
    if (entry.kind === undefined) {
      return [{ case: entry.mark, why: `Case ${entry.mark} has no kind.` }];
    }
    if (taken.has(entry.kind)) return [];
    const where = elsewhere[entry.kind] ?? 'another section';
    const why = `A ${entry.kind} case is combined by ASCE/SEI ${edition} ${where}, which needs a list of the project's own.`;
    return [{ case: entry.mark, why }];
  });
}
