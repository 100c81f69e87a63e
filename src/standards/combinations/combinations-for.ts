import type { CombinationCase } from '../combination-case.ts';
import type { Combination } from '../combination.ts';
import {
  checkCustom,
  customCombination,
  type CustomRequest,
} from './custom-combination.ts';
import { sameTerms } from './factored-case.ts';
import { mergeCombinations } from './merge-combinations.ts';
import { namedCombinations } from './named-combinations.ts';
import type {
  CombinationContext,
  CombinationList,
  CombinationProblem,
  NamedSetRequest,
  SetNote,
  UntakenCase,
} from './named-set.ts';

/** One line of a project's list of combinations. */
export type CombinationRequest =
  | ({ readonly kind: 'named-set' } & NamedSetRequest)
  | ({ readonly kind: 'custom' } & CustomRequest);

/** A project's loads, as far as combinations look at them. */
export interface CombinationDefinition extends CombinationContext {
  readonly combinations: readonly CombinationRequest[];
}

/**
 * All combinations of a project: its named sets and its own, in the order of its list, equal
 * ones merged; the notes of every set, each sentence once; and the cases that no combination
 * takes, with the reasons (none where the project asks for no combinations at all).
 */
export function combinationsFor(definition: CombinationDefinition): CombinationList {
  const lists = definition.combinations.map((request) => listOf(request, definition));
  const all = lists.flatMap((list) => list.combinations);
  const merged = mergeCombinations(all);
  const notes = lists.flatMap((list) => list.notes);
  return {
    combinations: merged,
    notes: unique([...notes, ...lostMarks(all, merged)], (note) => note.text),
    untaken: untakenOf(definition, lists),
    problems: [
      ...lists.flatMap((list) => list.problems),
      ...markProblems(all, definition.cases),
    ],
  };
}

function listOf(
  request: CombinationRequest,
  context: CombinationContext,
): CombinationList {
  switch (request.kind) {
    case 'named-set':
      return namedCombinations(request, context);
    case 'custom':
      return {
        combinations: [customCombination(request)],
        notes: [],
        untaken: [],
        problems: checkCustom(request, context.cases),
      };
  }
}

// A mark names one sum throughout the package: results are told apart by it.
function markProblems(
  all: readonly Combination[],
  cases: readonly CombinationCase[],
): readonly CombinationProblem[] {
  const own = all.filter((entry) => isOwn(entry));
  const taken = (entry: Combination, message: string): CombinationProblem => ({
    kind: 'mark-taken',
    subject: entry.mark,
    message,
  });
  return own.flatMap((entry) => {
    const namesake = all.find((other) => other !== entry && other.mark === entry.mark);
    if (namesake !== undefined && !isOwn(namesake)) {
      const source = namesake.clauses.join(', ');
      return [
        taken(entry, `the mark ${entry.mark} is that of a combination by ${source}`),
      ];
    }
    if (namesake !== undefined && own.indexOf(namesake) < own.indexOf(entry)) {
      return [taken(entry, `two combinations are marked ${entry.mark}`)];
    }
    const alone = [{ case: entry.mark, factor: 1 }];
    const isCase = cases.some((other) => other.mark === entry.mark);
    return isCase && !sameTerms(entry.factors, alone)
      ? [taken(entry, `the mark ${entry.mark} is that of a load case`)]
      : [];
  });
}

function isOwn(entry: Combination): boolean {
  return entry.clauses.includes('project');
}

// A combination of the project's own whose mark went under in a merger is told of.
function lostMarks(
  all: readonly Combination[],
  merged: readonly Combination[],
): readonly SetNote[] {
  return all
    .filter((entry) => isOwn(entry))
    .flatMap((entry) => {
      const kept = merged.find(
        (other) => other.for === entry.for && sameTerms(other.factors, entry.factors),
      );
      if (kept === undefined || kept.mark === entry.mark) return [];
      const text = `The project's combination ${entry.mark} has the terms of ${kept.mark} and stands under that mark.`;
      return [{ kind: 'caution', text } as const];
    });
}

function untakenOf(
  definition: CombinationDefinition,
  lists: readonly CombinationList[],
): readonly UntakenCase[] {
  if (definition.combinations.length === 0) return [];
  const taken = new Set(
    lists
      .flatMap((list) => list.combinations)
      .flatMap((entry) => entry.factors)
      .map((term) => term.case),
  );
  const reasons = lists.flatMap((list) => list.untaken);
  return definition.cases
    .filter((entry) => !taken.has(entry.mark))
    .map((entry) => {
      const whys = reasons.filter((reason) => reason.case === entry.mark);
      const text = [...new Set(whys.map((reason) => reason.why))].join(' ');
      const why = text === '' ? `No combination names case ${entry.mark}.` : text;
      return { case: entry.mark, why };
    });
}

function unique<T>(list: readonly T[], key: (item: T) => string): readonly T[] {
  return list.filter(
    (item, index) => list.findIndex((other) => key(other) === key(item)) === index,
  );
}
