import type { MarkingContext } from '../marking-context.ts';
import type { Meaning, Meanings } from '../reading/linear-form.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import { impliedMeaning, type Worker } from './worker.ts';

/**
 * What each symbol truly means in a line of this worker: declared, concluded before, or plainly a
 * reaction of this member. `also` stands for symbols of the step itself.
 */
export function meaningsFor(
  context: MarkingContext,
  worker: Worker,
  also: ReadonlyMap<string, NameMeaning> = new Map(),
): Meanings {
  return (name) => {
    const own = also.get(name);
    if (own !== undefined) return own;
    const declared = worker.names.get(name);
    if (typeof declared === 'string') return { kind: 'unclear', problem: declared };
    if (declared !== undefined) return declared;
    const said = worker.said.get(name);
    if (said !== undefined) return said;
    const value = worker.values.get(name);
    if (value === undefined) return impliedMeaning(context, name);
    return { kind: 'known', si: value.truth, dimension: value.dimension };
  };
}

/** The same with the worker's own figures for symbols that the worker has come to a value of. */
export function ownMeaningsFor(
  context: MarkingContext,
  worker: Worker,
  also: ReadonlyMap<string, NameMeaning> = new Map(),
): Meanings {
  const truly = meaningsFor(context, worker, also);
  return (name) => {
    const meaning = truly(name);
    const value = worker.values.get(name);
    if (value === undefined || also.has(name) || meaning?.kind !== 'known')
      return meaning;
    return { kind: 'known', si: value.own, dimension: value.dimension };
  };
}

/** Meanings with a number put in for every unknown of which `value` knows one, in the unknown's own sense. */
export function withValues(
  meanings: Meanings,
  value: (key: string) => number | undefined,
): Meanings {
  return (name): Meaning | undefined => {
    const meaning = meanings(name);
    if (meaning?.kind !== 'unknown') return meaning;
    const si = value(meaning.key);
    return si === undefined
      ? meaning
      : { kind: 'known', si: si * meaning.share, dimension: meaning.dimension };
  };
}

/** Every symbol that a line of this worker may hold, for taking it apart. */
export function symbolsOf(
  worker: Worker,
  also: Iterable<string> = [],
): readonly string[] {
  return [
    ...worker.names.keys(),
    ...worker.values.keys(),
    ...worker.said.keys(),
    ...also,
  ];
}
