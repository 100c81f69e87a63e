import type { CaseKind, CombinationCase } from '../combination-case.ts';
import type { Combination } from '../combination.ts';
import { collectCombinations } from './collect.ts';
import { compatibleTerms, excludesIn } from './compatible-terms.ts';
import { en1990Actions, type En1990Actions } from './en1990-actions.ts';
import { sumsOf, type Expression } from './en1990-sums.ts';
import { checkNational, en1990Values, type En1990Values } from './en1990-values.ts';
import { writeMark } from './factored-case.ts';
import type {
  CombinationContext,
  CombinationList,
  NamedSet,
  NamedSetRequest,
  SetNote,
  UntakenCase,
} from './named-set.ts';

/** A set of EN 1990 as its expressions and its notes. */
export interface En1990Set {
  readonly name: 'en1990-uls' | 'en1990-sls';
  readonly for: 'strength' | 'service';
  readonly expressions: (
    values: En1990Values,
    request: NamedSetRequest,
    actions: En1990Actions,
  ) => readonly Expression[];
  /** Notes of the set's own. */
  readonly notes: (actions: En1990Actions) => readonly SetNote[];
}

/** The named set that works such expressions out for a project. */
export function en1990NamedSet(set: En1990Set): NamedSet {
  return {
    name: set.name,
    for: set.for,
    list: (request, context) => listEn1990(set, request, context),
  };
}

function listEn1990(
  set: En1990Set,
  request: NamedSetRequest,
  context: CombinationContext,
): CombinationList {
  const problems = checkNational(request);
  if (problems.length > 0) {
    return { combinations: [], notes: [], untaken: [], problems };
  }
  const values = en1990Values(request);
  const actions = en1990Actions(context.cases, values);
  const expressions = set.expressions(values, request, actions);
  return {
    ...collectCombinations(entriesOf(set, expressions, { actions, context }), set.name),
    notes: [...sharedNotes(request, actions, context), ...set.notes(actions)],
    untaken: context.cases.flatMap((entry) => untakenCase(entry)),
  };
}

function* entriesOf(
  set: En1990Set,
  expressions: readonly Expression[],
  from: { readonly actions: En1990Actions; readonly context: CombinationContext },
): Generator<Combination> {
  const excludes = excludesIn(from.context);
  for (const expression of expressions) {
    for (const sum of sumsOf(expression, from.actions)) {
      for (const factors of compatibleTerms(sum.terms, excludes)) {
        const leading = sum.leading.filter((mark) =>
          factors.some((term) => term.case === mark),
        );
        // Where exclusion has thrown the leading action out, a smaller choice says the same.
        if (leading.length === 0 && sum.leading.length > 0) continue;
        const clause = clauseText(expression.clause, leading);
        yield { mark: writeMark(factors), factors, for: set.for, clauses: [clause] };
      }
    }
  }
}

function clauseText(clause: string, leading: readonly string[]): string {
  return leading.length === 0 ? clause : `${clause}, ${leading.join(' and ')} leading`;
}

function sharedNotes(
  request: NamedSetRequest,
  actions: En1990Actions,
  context: CombinationContext,
): readonly SetNote[] {
  const has = (kind: string): boolean =>
    context.cases.some((entry) => entry.kind === kind);
  const national = Object.entries(request.national ?? {});
  const given = national.map(([name, value]) => `${name} = ${value}`).join(', ');
  const notes: readonly (readonly [boolean, SetNote['kind'], string])[] = [
    [
      true,
      'caution',
      'The factors of EN 1990:2002+A1 Annex A1 were written down from memory of the standard; compare them with it and with the national annex before use.',
    ],
    [
      national.length > 0,
      'assumption',
      `In place of recommended values the project gives ${given}.`,
    ],
    [
      has('snow') && !national.some(([name]) => /^psi\d_snow$/.test(name)),
      'assumption',
      'Snow has the psi factors of a site up to 1000 m above the sea outside Finland, Iceland, Norway and Sweden (EN 1990 Table A1.1).',
    ],
    [
      has('earth'),
      'assumption',
      'Earth loads are permanent actions of a source of their own (EN 1990 Table A1.2(B)).',
    ],
    [
      actions.withoutCategory.length > 0,
      'assumption',
      `No category of EN 1990 Table A1.1 is known for ${actions.withoutCategory.join(', ')}; psi0 is taken as 1.0, the greatest value of the table.`,
    ],
  ];
  return notes.filter(([applies]) => applies).map(([, kind, text]) => ({ kind, text }));
}

const ownList = "needs a list of the project's own";

// Kinds that Annex A1 does not combine with the rest, and why.
const leftOut: Readonly<Partial<Record<CaseKind, string>>> = {
  seismic: `A seismic case is combined by EN 1990 6.4.3.4, which ${ownList}.`,
  rain: `EN 1990 Table A1.1 has no row for a rain case, which ${ownList}.`,
  fluid: `EN 1990 Table A1.1 has no row for a fluid case, which ${ownList}.`,
  settlement: `The partial factor of a settlement depends on the material standard; the case ${ownList}.`,
};

function untakenCase(entry: CombinationCase): readonly UntakenCase[] {
  const why =
    entry.kind === undefined ? `Case ${entry.mark} has no kind.` : leftOut[entry.kind];
  return why === undefined ? [] : [{ case: entry.mark, why }];
}
