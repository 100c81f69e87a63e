import type { BeamStructure, StiffnessStretch } from '../../statics/index.ts';

/** A stretch of one stiffness among those that differ. */
export interface StiffnessPart extends StiffnessStretch {
  /** Counted from 1 along the member; its E I and its ratio carry the number where there are several. */
  readonly number: number;
}

/** The stiffness along a member, neighbours of one stiffness joined; none where E or I is not known. */
export function stiffnessParts({
  stiffness = [],
}: BeamStructure): readonly StiffnessPart[] {
  const joined: StiffnessStretch[] = [];
  for (const stretch of stiffness) {
    const before = joined.at(-1);
    if (before?.EI === stretch.EI)
      joined[joined.length - 1] = { ...before, to: stretch.to };
    else joined.push(stretch);
  }
  return joined.map((stretch, index) => ({ ...stretch, number: index + 1 }));
}

/** The part just right of a station; at the member's end the last. */
export function partRightOf(parts: readonly StiffnessPart[], x: number): StiffnessPart {
  const found = parts.find(({ to }) => x < to) ?? parts.at(-1);
  if (found === undefined) throw new RangeError('the member has no stiffness');
  return found;
}

/** The parts that a stretch of the member reaches into. */
export function partsWithin(
  parts: readonly StiffnessPart[],
  { from, to }: { readonly from: number; readonly to: number },
): readonly StiffnessPart[] {
  return parts.filter((part) => part.to > from && part.from < to);
}
