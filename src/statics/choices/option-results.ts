import type { BeamOutcome, BeamResult, Unsolved } from '../solution.ts';
import type { BeamStructure, LoadChoice } from '../structure.ts';
import { checkChoices } from './check-choices.ts';
import { optionMark, separateOptions } from './settle-choices.ts';

/** Solves a structure without choices and trains, every case of it. */
export type SolveStates = (structure: BeamStructure) => BeamOutcome;

/** One choice with what each of its options gives alone. */
export interface ChoiceResults {
  readonly choice: LoadChoice;
  readonly options: readonly { readonly name: string; readonly result: BeamResult }[];
}

/** A case taken apart: what always stands, settlements and temperature included, and every choice. */
export interface OptionResults {
  readonly mark: string;
  readonly fixed: BeamResult;
  readonly choices: readonly ChoiceResults[];
}

/** The cases with choices or trains taken apart, or why the beam has no results. */
export type OptionOutcome =
  | { readonly kind: 'options'; readonly cases: readonly OptionResults[] }
  | { readonly kind: 'unsolved'; readonly unsolved: Unsolved };

/**
 * Takes apart every case that has choices or trains: its fixed loads alone, and each option of each
 * choice alone. Everything is linear, so any arrangement is the sum of what it takes of each.
 *
 * @throws RangeError where the choices are none: see `checkChoices`.
 */
export function optionResults(
  structure: BeamStructure,
  solve: SolveStates,
): OptionOutcome {
  checkChoices(structure);
  const marks = marksWithoutState(structure);
  if (marks.length === 0) return { kind: 'options', cases: [] };
  const outcome = solve(separateOptions(structure));
  if (outcome.kind === 'unsolved') return outcome;
  const results = new Map(outcome.results.map((result) => [result.mark, result]));
  const resultOf = (mark: string): BeamResult => {
    const result = results.get(mark);
    if (result === undefined) throw new RangeError(`no result ${mark}`);
    return result;
  };
  const choices = structure.choices ?? [];
  return {
    kind: 'options',
    cases: marks.map((mark) => ({
      mark,
      fixed: resultOf(mark),
      choices: choices
        .filter((choice) => choice.case === mark)
        .map((choice) => ({
          choice,
          options: choice.options.map(({ name }) => ({
            name,
            result: resultOf(optionMark(choice, name)),
          })),
        })),
    })),
  };
}

/** The cases whose loads may stand in several ways, in the structure's order. */
export function marksWithoutState({
  cases,
  choices = [],
  trains = [],
}: BeamStructure): readonly string[] {
  const without = new Set([...choices, ...trains].map((one) => one.case));
  return cases.filter((mark) => without.has(mark));
}
