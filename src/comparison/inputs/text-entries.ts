import type { InputChange, InputPart } from '../comparison.ts';

/** From this share of words in common on, one text is the other, rewritten. */
const alike = 0.4;

/**
 * What differs between two lists of texts that have no names of their own, in any order: a text that
 * shares most of its words with one that is gone was changed.
 */
export function diffTexts(
  earlier: readonly string[],
  later: readonly string[],
  stand: { readonly part: InputPart; readonly member?: string; readonly what: string },
): readonly InputChange[] {
  const gone = without(earlier, later);
  const come = [...without(later, earlier)];
  const changes = gone.map((from): InputChange => {
    const [nearest] = come
      .map((to) => ({ to, likeness: likenessOf(from, to) }))
      .filter(({ likeness }) => likeness >= alike)
      .sort((one, other) => other.likeness - one.likeness);
    if (nearest === undefined) return { kind: 'removed', ...stand, from };
    come.splice(come.indexOf(nearest.to), 1);
    return { kind: 'changed', ...stand, from, to: nearest.to };
  });
  return [
    ...changes,
    ...come.map((to): InputChange => ({ kind: 'added', ...stand, to })),
  ];
}

/** Texts of one list that the other does not hold, each as often as it stands there more. */
function without(list: readonly string[], other: readonly string[]): readonly string[] {
  const left = other.map(settled);
  return list.map(settled).filter((text) => {
    const place = left.indexOf(text);
    if (place < 0) return true;
    left.splice(place, 1);
    return false;
  });
}

/** Words that two texts have in common, as a share of all their words. */
function likenessOf(one: string, other: string): number {
  const words = (text: string): ReadonlySet<string> =>
    new Set(text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []);
  const [mine, yours] = [words(one), words(other)];
  const shared = [...mine].filter((word) => yours.has(word)).length;
  const all = new Set([...mine, ...yours]).size;
  return all === 0 ? 1 : shared / all;
}

const settled = (text: string): string => text.trim().replace(/\s+/gu, ' ');
