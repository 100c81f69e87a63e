import type { BeamStructure, Load, LoadChoice } from '../structure.ts';

/** Mark under which one option of a choice is solved alone; marks of cases hold no space, so it is never one of theirs. */
export function optionMark(choice: LoadChoice, option: string): string {
  return `${choice.id} ${option}`;
}

/** The option that stands for a choice on the sheet: a span loaded, a carried range at its greatest. */
export function statedOption(choice: LoadChoice): LoadChoice['options'][number] {
  const named = choice.options.find(({ name }) => name === 'on' || name === 'greatest');
  const option = named ?? choice.options.at(-1);
  if (option === undefined) throw new RangeError(`choice ${choice.id} has no option`);
  return option;
}

/** The structure with every choice settled as it stands on the sheet: no choices are left, all loads are loads. */
export function settleChoices({ choices = [], ...rest }: BeamStructure): BeamStructure {
  const chosen = choices.flatMap((choice) => statedOption(choice).loads);
  return { ...rest, loads: inOrder([...rest.loads, ...chosen]) };
}

/** The structure with every option as a case of its own beside the fixed loads of each case; neither choices nor trains are left. */
export function separateOptions({
  choices = [],
  ...rest
}: BeamStructure): BeamStructure {
  const each = choices.flatMap((choice) =>
    choice.options.map(({ name, loads }) => {
      const mark = optionMark(choice, name);
      return { mark, loads: loads.map((load) => ({ ...load, case: mark })) };
    }),
  );
  return {
    ...rest,
    trains: [],
    loads: [...rest.loads, ...each.flatMap(({ loads }) => loads)],
    cases: [...rest.cases, ...each.map(({ mark }) => mark)],
  };
}

/** Loads in the order of their ids, which is that of the terms of a sum. */
function inOrder(loads: readonly Load[]): readonly Load[] {
  return [...loads].sort((one, other) =>
    one.id < other.id ? -1 : one.id > other.id ? 1 : 0,
  );
}
