import type { En1990Actions, VariableCase } from './en1990-actions.ts';
import { tidyFactor, type FactoredCase } from './factored-case.ts';

/** One expression of EN 1990, as what it multiplies each action by. */
export interface Expression {
  /** The clause as printed: `EN 1990:2002+A1 6.4.3.2 (6.10)`. */
  readonly clause: string;
  /** Factors that a permanent group may have, the unfavourable one first. */
  readonly permanent: readonly number[];
  /** Factor of the leading variable action; absent where the expression has none. */
  readonly leading?: (action: VariableCase) => number;
  readonly accompanying: (action: VariableCase) => number;
}

/** A sum, with the cases of the action that leads it: none where the expression has no leading action. */
export interface En1990Sum {
  readonly terms: readonly FactoredCase[];
  readonly leading: readonly string[];
}

/**
 * Every sum that an expression asks for: each permanent group high and low, each choice of
 * variable actions (one that relieves is left out: its factor is 0), each of those leading in
 * turn. A choice whose factors come out 0 for a whole action is passed over, because the choice
 * without that action says the same.
 */
export function* sumsOf(
  expression: Expression,
  actions: En1990Actions,
): Generator<En1990Sum> {
  for (const permanent of permanentTerms(expression, actions)) {
    for (const chosen of subsets(actions.variable)) {
      for (const arranged of arrangements(expression, chosen)) {
        if (arranged.some((group) => group.terms.every((term) => term.factor === 0))) {
          continue;
        }
        const variable = arranged.flatMap((group) => group.terms);
        const terms = [...permanent, ...variable].filter((term) => term.factor !== 0);
        const leading = arranged
          .filter((group) => group.leads)
          .flatMap((group) => group.terms.map((term) => term.case));
        if (terms.length > 0) yield { terms, leading };
      }
    }
  }
}

function permanentTerms(
  expression: Expression,
  actions: En1990Actions,
): readonly (readonly FactoredCase[])[] {
  return actions.permanent.reduce<readonly (readonly FactoredCase[])[]>(
    (sofar, group) =>
      expression.permanent.flatMap((factor) =>
        sofar.map((terms) => [
          ...terms,
          ...group.map((mark) => ({ case: mark, factor })),
        ]),
      ),
    [[]],
  );
}

// The choices of actions, fewer before more, in the order of the actions.
function subsets<T>(of: readonly T[]): readonly (readonly T[])[] {
  const all = of.reduce<readonly (readonly T[])[]>(
    (sofar, item) => [...sofar, ...sofar.map((set) => [...set, item])],
    [[]],
  );
  return all.toSorted((a, b) => a.length - b.length);
}

interface ArrangedGroup {
  readonly terms: readonly FactoredCase[];
  readonly leads: boolean;
}

// The ways to arrange the chosen actions: each leading in turn and standing first, or none leading.
function arrangements(
  expression: Expression,
  chosen: readonly (readonly VariableCase[])[],
): readonly (readonly ArrangedGroup[])[] {
  const { leading, accompanying } = expression;
  const beside = (group: readonly VariableCase[]): ArrangedGroup => ({
    terms: factored(group, accompanying),
    leads: false,
  });
  if (leading === undefined || chosen.length === 0) {
    return [chosen.map((group) => beside(group))];
  }
  return chosen.map((leader) => [
    { terms: factored(leader, leading), leads: true },
    ...chosen.filter((group) => group !== leader).map((group) => beside(group)),
  ]);
}

function factored(
  group: readonly VariableCase[],
  factor: (action: VariableCase) => number,
): readonly FactoredCase[] {
  return group.map((action) => ({
    case: action.mark,
    factor: tidyFactor(factor(action)),
  }));
}
