import type { Arrangement, BeamStructure, LoadChoice } from '../../statics/index.ts';
import type { BeamDefinition } from '../../project/index.ts';
import { pointAt } from '../point-at.ts';

/** What a choice stands for: the loads of one case on a span (or at one support), or a carried reaction. */
export type ChoiceName =
  | {
      readonly kind: 'span';
      readonly case: string;
      readonly from: string;
      readonly to: string;
    }
  | {
      readonly kind: 'carried';
      readonly case: string;
      readonly member: string;
      readonly point: string;
      readonly component: 'x' | 'y' | 'moment';
    };

/** Names of choices by their ids. */
export type ChoiceNames = ReadonlyMap<string, ChoiceName>;

/** Names what every choice of a member stands for. */
export function choiceNames(
  definition: Pick<BeamDefinition, 'carried'>,
  arranged: BeamStructure,
): ChoiceNames {
  return new Map(
    (arranged.choices ?? []).map((choice) => [
      choice.id,
      nameOf(definition, arranged, choice),
    ]),
  );
}

function nameOf(
  { carried }: Pick<BeamDefinition, 'carried'>,
  arranged: BeamStructure,
  { id, case: mark, span }: LoadChoice,
): ChoiceName {
  if (span !== undefined) {
    const at = (x: number): string => pointAt(arranged, x) ?? '';
    return { kind: 'span', case: mark, from: at(span.from), to: at(span.to) };
  }
  for (const component of ['y', 'x', 'moment'] as const) {
    const from = carried.find((one) => id === `${one.id}:${mark}:${component}`);
    if (from === undefined) continue;
    const { member, point } = from;
    return { kind: 'carried', case: mark, member, point, component };
  }
  throw new RangeError(`choice ${id} stands for nothing in the definition`);
}

/** A span by its ends, `A–B`, or the support that loads stand at, `at B`. */
export function spanText({ from, to }: Extract<ChoiceName, { kind: 'span' }>): string {
  return from === to ? `at ${from}` : `${from}–${to}`;
}

/** A carried reaction, `B2.C`; its other components than the vertical are told apart. */
export function carriedText({
  member,
  point,
  component,
}: Extract<ChoiceName, { kind: 'carried' }>): string {
  const base = `${member}.${point}`;
  if (component === 'y') return base;
  return `${base} ${component === 'x' ? 'along x' : 'moment'}`;
}

/** How the loads stand, in few words: `L on A–B, C–D; L of B2.C least`. Empty where there is nothing to choose. */
export function arrangementText(names: ChoiceNames, { choices }: Arrangement): string {
  const all = choices.flatMap(({ id, option }) => {
    const name = names.get(id);
    return name === undefined ? [] : [{ name, option }];
  });
  const cases = [...new Set(all.map(({ name }) => name.case))];
  return cases
    .flatMap((mark) => {
      const own = all.filter(({ name }) => name.case === mark);
      const spans = own.flatMap(({ name, option }) =>
        name.kind === 'span' ? [{ text: spanText(name), isOn: option !== 'off' }] : [],
      );
      const on = spans.filter(({ isOn }) => isOn).map(({ text }) => text);
      const carried = own.flatMap(({ name, option }) =>
        name.kind === 'carried' ? [`${mark} of ${carriedText(name)} ${option}`] : [],
      );
      if (spans.length === 0) return carried;
      return [`${mark} on ${on.length === 0 ? 'no span' : on.join(', ')}`, ...carried];
    })
    .join('; ');
}
