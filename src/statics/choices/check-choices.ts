import type { BeamStructure } from '../structure.ts';

/**
 * Refuses choices that no reader of definitions would build.
 *
 * @throws RangeError where two choices share an id, one has no option or two of one name, or is of no case listed.
 */
export function checkChoices({ choices = [], cases }: BeamStructure): void {
  const seen = new Set<string>();
  for (const { id, case: mark, options } of choices) {
    if (seen.has(id)) throw new RangeError(`two choices are called ${id}`);
    seen.add(id);
    if (!cases.includes(mark))
      throw new RangeError(`choice ${id} is of no case listed`);
    const names = new Set(options.map(({ name }) => name));
    if (names.size === 0) throw new RangeError(`choice ${id} has no option`);
    if (names.size < options.length)
      throw new RangeError(`choice ${id} has two options of one name`);
  }
}
