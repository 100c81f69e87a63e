import type { Combination } from '../combination.ts';
import type { CombinationCase } from '../combination-case.ts';
import type { CombinationProblem } from './named-set.ts';

/** A combination of the project's own, as asked for. */
export interface CustomRequest {
  readonly mark: string;
  readonly factors: Readonly<Record<string, number>>;
  readonly for: 'strength' | 'service';
}

/** The combination that a project's own list asks for; its clause is `project`. */
export function customCombination(request: CustomRequest): Combination {
  const factors = Object.entries(request.factors).map(([mark, factor]) => ({
    case: mark,
    factor,
  }));
  return { mark: request.mark, factors, for: request.for, clauses: ['project'] };
}

/** Cases that such a combination names and the project does not have. */
export function checkCustom(
  request: CustomRequest,
  cases: readonly CombinationCase[],
): readonly CombinationProblem[] {
  const known = new Set(cases.map((entry) => entry.mark));
  return Object.keys(request.factors)
    .filter((mark) => !known.has(mark))
    .map((mark) => ({
      kind: 'unknown-case',
      subject: request.mark,
      message: `combination ${request.mark} names case ${mark}, which the project does not have`,
    }));
}
