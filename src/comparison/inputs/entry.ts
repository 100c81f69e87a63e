import type { InputPart } from '../comparison.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { Value } from './value.ts';

/** Something that a folder says: a case, a support, an assumption, with what is said of it. */
export interface Entry {
  readonly part: InputPart;
  readonly member?: string;
  /** What makes it the same thing on both sides, in the names of the later side. */
  readonly key: string;
  /** A phrase that stands alone: `case L`, `support at B of B1`. */
  readonly what: string;
  /** Its sort; where it differs the whole has changed and no single field. */
  readonly sort?: string;
  /** The whole in words, for what was added, removed or turned into another sort. */
  readonly whole?: string;
  readonly fields: readonly Field[];
  /** What becomes of it where all fields stay and the key does not; default `renamed`. */
  readonly rekeyed?: {
    readonly kind: 'renamed' | 'moved';
    readonly name: string;
    readonly what?: string;
  };
}

/** One thing that is said of an entry; without a value it is not said. */
export interface Field {
  /** A phrase that stands alone: `title of case L`. */
  readonly what: string;
  readonly value?: Value;
}

/** A field of text. */
export function textField(what: string, text: string | undefined): Field {
  return text === undefined ? { what } : { what, value: { kind: 'text', text } };
}

/** A field of a plain number. */
export function numberField(what: string, value: number | undefined): Field {
  return value === undefined ? { what } : { what, value: { kind: 'number', value } };
}

/** A field that holds or does not. */
export function claimField(what: string, holds: boolean): Field {
  return { what, value: { kind: 'claim', holds } };
}

/** A field of names in any order; not said where there are none. */
export function setField(what: string, items: readonly string[]): Field {
  return items.length === 0 ? { what } : { what, value: { kind: 'set', items } };
}

/** A field of one quantity. */
export function quantityField(what: string, of: GivenQuantity | undefined): Field {
  return of === undefined
    ? { what }
    : { what, value: { kind: 'quantities', of: [of], joined: 'to' } };
}
