import type { CombinationCase } from '../combination-case.ts';
import { psiRowOf, type En1990Values, type Psi } from './en1990-values.ts';

/** A case as a variable action, with its psi factors. */
export interface VariableCase {
  readonly mark: string;
  readonly psi: Psi;
}

/**
 * The actions of a project as EN 1990 counts them. All imposed floor loads together are one
 * action (EN 1991-1-1 3.3.1(2)P, from memory), so that each group here leads or accompanies
 * as a whole; permanent loads of one source share one factor (Table A1.2(B) note 3, from memory).
 */
export interface En1990Actions {
  /** Groups of permanent cases: dead loads, and earth loads. */
  readonly permanent: readonly (readonly string[])[];
  readonly variable: readonly (readonly VariableCase[])[];
  /** Marks of imposed cases without a known category, whose psi0 is taken as 1. */
  readonly withoutCategory: readonly string[];
}

const permanentKinds = ['dead', 'earth'] as const;
const variableKinds = ['live', 'roof-live', 'snow', 'wind', 'temperature'] as const;

/** Groups a project's cases into permanent and variable actions. */
export function en1990Actions(
  cases: readonly CombinationCase[],
  values: En1990Values,
): En1990Actions {
  const ofKind = (kind: string): readonly CombinationCase[] =>
    cases.filter((entry) => entry.kind === kind);
  const variable = variableKinds.map((kind) => ofKind(kind));
  return {
    permanent: permanentKinds
      .map((kind) => ofKind(kind).map((entry) => entry.mark))
      .filter((group) => group.length > 0),
    variable: variable
      .map((group) => group.map((entry) => variableCase(entry, values)))
      .filter((group) => group.length > 0),
    withoutCategory: variable
      .flat()
      .filter((entry) => psiRowOf(entry) === undefined)
      .map((entry) => entry.mark),
  };
}

// No category: 1 is the greatest psi0 of Table A1.1, so that nothing is reduced that should not be.
function variableCase(entry: CombinationCase, values: En1990Values): VariableCase {
  const row = psiRowOf(entry);
  const psi = row === undefined ? { psi0: 1, psi1: 1, psi2: 1 } : values.psi[row];
  return { mark: entry.mark, psi };
}
