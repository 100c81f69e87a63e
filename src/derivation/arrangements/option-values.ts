import {
  optionResults,
  rangeOfOptions,
  solveStates,
  type BeamResult,
  type LoadChoice,
  type OptionResults,
  type RangeResult,
} from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { carriedText, spanText, type ChoiceName } from './choice-names.ts';
import type { Quantity } from './quantities.ts';

/** An option as the sheet numbers it; an empty span has no number. */
export interface NumberedOption {
  readonly number?: number;
  readonly name: string;
  readonly result: BeamResult;
}

/** A choice with what each of its options gives alone. */
export interface NumberedChoice {
  readonly name: ChoiceName;
  readonly text: string;
  readonly choice: LoadChoice;
  readonly options: readonly NumberedOption[];
}

/** What always stands, and the choices in the order of the sheet. */
export interface TakenApart {
  readonly fixed: BeamResult;
  readonly choices: readonly NumberedChoice[];
  /** What they come to, trains left aside. */
  readonly range: RangeResult;
}

/**
 * A case taken apart, each part solved alone.
 *
 * @throws RangeError where the case was not solved before: then there is nothing to narrate.
 */
export function takeApart(
  { arranged, choiceNames }: MemberContext,
  mark: string,
): TakenApart {
  const outcome = optionResults(arranged, solveStates);
  const found: OptionResults | undefined =
    outcome.kind === 'unsolved'
      ? undefined
      : outcome.cases.find((one) => one.mark === mark);
  if (found === undefined) throw new RangeError(`case ${mark} was not taken apart`);
  let count = 0;
  return {
    fixed: found.fixed,
    range: rangeOfOptions(found),
    choices: found.choices.map(({ choice, options }): NumberedChoice => {
      const name = choiceNames.get(choice.id);
      if (name === undefined) throw new RangeError(`choice ${choice.id} has no name`);
      const text = name.kind === 'span' ? spanText(name) : carriedText(name);
      const numbered = options.map((option): NumberedOption => {
        // An empty span gives nothing of anything.
        if (name.kind === 'span' && option.name === 'off') return option;
        count += 1;
        return { ...option, number: count };
      });
      return { name, text, choice, options: numbered };
    }),
  };
}

/** One part of a greatest or least: what always stands, or what is taken of a choice. */
export interface TakenPart {
  readonly si: number;
  /** Its number on the sheet; absent for what always stands, and for an empty span. */
  readonly number?: number;
  /** False where the options of the choice all give the same, so that it does not matter which is taken. */
  readonly matters: boolean;
}

/**
 * What a quantity is made of at its greatest or least: what always stands, and of every choice the
 * option that gives most (least) of it. Options that agree to rounding leave the first: a span that adds nothing is left empty.
 */
export function partsOf(
  { fixed, choices }: TakenApart,
  { read, ends }: Quantity,
  sense: 'max' | 'min',
): readonly TakenPart[] {
  const size = Math.max(Math.abs(ends.max), Math.abs(ends.min));
  const sign = sense === 'max' ? 1 : -1;
  const taken = choices.map((choice): TakenPart => {
    const values = choice.options.map(({ number, result }) => ({
      number,
      si: read(result),
    }));
    const best = Math.max(...values.map(({ si }) => sign * si));
    const first = values.find(({ si }) => sign * si >= best - 1e-9 * size);
    const worst = Math.min(...values.map(({ si }) => sign * si));
    const matters = best - worst > 1e-9 * size;
    const { si = 0, number } = first ?? {};
    return { si, matters, ...(number === undefined ? {} : { number }) };
  });
  return [{ si: read(fixed), matters: true }, ...taken];
}
