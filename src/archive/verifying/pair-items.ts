import { namedItems } from './name-figure.ts';
import type { Json } from './json.ts';

/** An item of one list beside that of the same meaning in another; undefined on the side that has none. */
export interface ItemPair {
  readonly name: string;
  readonly archived: Json | undefined;
  readonly computed: Json | undefined;
}

/** The items of two lists under one key side by side, in the order of the first; those of the second alone stand behind. */
export function pairItems(
  key: string,
  archived: Json | undefined,
  computed: Json | undefined,
): readonly ItemPair[] {
  const [ours, theirs] = [namedItems(key, archived), namedItems(key, computed)];
  const known = new Set(ours.map(({ name }) => name));
  const others = new Map(theirs.map(({ name, item }) => [name, item]));
  return [
    ...ours.map(({ name, item }) => ({
      name,
      archived: item,
      computed: others.get(name),
    })),
    ...theirs
      .filter(({ name }) => !known.has(name))
      .map(({ name, item }) => ({ name, archived: undefined, computed: item })),
  ];
}
