import type { Field } from './entry.ts';
import type { Place } from './places.ts';
import type { Value } from './value.ts';

/**
 * One load of a member in the form in which loads are matched, its names those of the later side: a
 * load of one case, an area load with all its cases, a temperature, a train or a carried reaction.
 */
export interface LoadItem {
  readonly kind:
    'point' | 'distributed' | 'couple' | 'area' | 'temperature' | 'axles' | 'carried';
  /** The case, the area load, or the carried reaction as `B2.C`. */
  readonly subject: string;
  /** One place, both ends of a stretch, or none for what rolls along. */
  readonly places: readonly Place[];
  /** Its size: force, intensity, width, difference of temperature, axles, factor of a reaction. */
  readonly value: Value;
  /** What else makes it the load that it is: direction, turn, factor. */
  readonly traits: readonly Trait[];
  /** What is said about it. */
  readonly about: readonly Trait[];
}

/** A field of a load before it is known how the load is called. */
export interface Trait {
  /** A word, to be followed by the name of the load: `direction of`. */
  readonly word: string;
  readonly value?: Value;
}

/** What a load is called where something on it changed. */
export interface LoadNames {
  /** `load L on B1 at B`. */
  readonly full: string;
  /** Without its place: `load L of 8.4 kip on B1`. */
  readonly placeless: string;
  /** Without its case or source: `load on B1 at B`. */
  readonly nameless: string;
  /** What its value is called: the load itself, or its `width of …`. */
  readonly value: string;
  /** What its subject is called: `case of …`. */
  readonly subject: string;
}

/** A trait as a field of a load of that name. */
export function fieldOf({ word, value }: Trait, name: string): Field {
  const what = `${word} ${name}`;
  return value === undefined ? { what } : { what, value };
}
