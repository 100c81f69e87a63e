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

/** A choice as the sheet numbers it, with what each of its options gives alone. */
export interface NumberedChoice {
  readonly number: number;
  readonly name: ChoiceName;
  readonly text: string;
  readonly choice: LoadChoice;
  readonly options: readonly { readonly name: string; readonly result: BeamResult }[];
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
  return {
    fixed: found.fixed,
    range: rangeOfOptions(found),
    choices: found.choices.map(({ choice, options }, index) => {
      const name = choiceNames.get(choice.id);
      if (name === undefined) throw new RangeError(`choice ${choice.id} has no name`);
      const text = name.kind === 'span' ? spanText(name) : carriedText(name);
      return { number: index + 1, name, text, choice, options };
    }),
  };
}

/** One part of a greatest or least: what always stands, or what is taken of a choice. */
export interface TakenPart {
  readonly si: number;
  /** Absent for what always stands. */
  readonly choice?: NumberedChoice;
  readonly option?: string;
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
    const values = choice.options.map(({ name, result }) => ({
      option: name,
      si: read(result),
    }));
    const best = Math.max(...values.map(({ si }) => sign * si));
    const first = values.find(({ si }) => sign * si >= best - 1e-9 * size);
    const worst = Math.min(...values.map(({ si }) => sign * si));
    const matters = best - worst > 1e-9 * size;
    return { si: first?.si ?? 0, choice, option: first?.option ?? '', matters };
  });
  return [{ si: read(fixed), matters: true }, ...taken];
}
