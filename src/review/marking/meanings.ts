import type { MarkingContext } from '../marking-context.ts';
import type { Meaning, Meanings } from '../reading/linear-form.ts';
import { impliedMeaning, type Worker } from './worker.ts';

/**
 * What each symbol means in a line of this worker: declared, concluded before, or plainly a
 * reaction of this member. `also` stands for symbols of the step itself.
 */
export function meaningsFor(
  context: MarkingContext,
  worker: Worker,
  also: ReadonlyMap<string, Meaning> = new Map(),
): Meanings {
  return (name) => {
    const own = also.get(name);
    if (own !== undefined) return own;
    const declared = worker.names.get(name);
    if (declared !== undefined && typeof declared !== 'string') return declared;
    const value = worker.values.get(name);
    if (value !== undefined) return { kind: 'known', ...value };
    return declared === undefined ? impliedMeaning(context, name) : undefined;
  };
}

/** Every symbol that a line of this worker may hold, for taking it apart. */
export function symbolsOf(
  worker: Worker,
  also: Iterable<string> = [],
): readonly string[] {
  return [...worker.names.keys(), ...worker.values.keys(), ...also];
}
