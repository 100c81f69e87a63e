import type { CaseKind, CombinationCase } from '../combination-case.ts';
import { compatibleTerms, type Excludes } from './compatible-terms.ts';
import { writeMark, type FactoredCase } from './factored-case.ts';

/** What one kind of load is multiplied by in a clause. */
export interface KindFactor {
  readonly kind: CaseKind;
  readonly factor: number;
}

/** One summand of a clause: a single kind, or several joined by the clause's "or". */
export interface ClauseTerm {
  readonly oneOf: readonly KindFactor[];
  /** True for a load that may relieve: the clause then stands with it and without it. */
  readonly orLeftOut?: boolean;
}

/** One combination clause of a standard, as data: its number and its summands in their order. */
export interface Clause {
  readonly number: string;
  readonly terms: readonly ClauseTerm[];
}

/** A clause worked out for real cases. */
export interface ClauseEntry {
  readonly mark: string;
  readonly factors: readonly FactoredCase[];
}

/** One kind with its factor, as a summand of a clause. */
export function take(kind: CaseKind, factor: number): ClauseTerm {
  return { oneOf: [{ kind, factor }] };
}

/**
 * A clause worked out for the cases that exist. Each "or" gives entries of its own; a kind
 * without cases drops out, and an "or" without any is no summand; several cases of one kind
 * stand side by side; cases that exclude one another are spread over entries. A clause of
 * which nothing is left gives none.
 */
export function* expandClause(
  clause: Clause,
  cases: readonly CombinationCase[],
  excludes: Excludes,
): Generator<ClauseEntry> {
  for (const choice of choices(clause.terms, cases)) {
    const terms = choice.flatMap((picked) => casesOf(picked, cases));
    if (terms.length === 0) continue;
    for (const factors of compatibleTerms(terms, excludes)) {
      yield { mark: writeMark(factors), factors };
    }
  }
}

function casesOf(
  picked: KindFactor,
  cases: readonly CombinationCase[],
): readonly FactoredCase[] {
  return cases
    .filter((entry) => entry.kind === picked.kind)
    .map((entry) => ({ case: entry.mark, factor: picked.factor }));
}

// Every way to choose at each "or", the first summand's choices varying slowest.
function choices(
  terms: readonly ClauseTerm[],
  cases: readonly CombinationCase[],
): readonly (readonly KindFactor[])[] {
  return terms.reduce<readonly (readonly KindFactor[])[]>(
    (sofar, term) => {
      const real = term.oneOf.filter((option) => casesOf(option, cases).length > 0);
      if (real.length === 0) return sofar;
      const options = real.map((option) => [option]);
      const ways = term.orLeftOut === true ? [...options, []] : options;
      return sofar.flatMap((chosen) => ways.map((way) => [...chosen, ...way]));
    },
    [[]],
  );
}
