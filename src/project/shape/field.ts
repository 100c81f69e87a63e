import type { Stated } from '../definitions.ts';
import type { Shape } from './shape.ts';

/** A key of an object: its shape, what it means (a phrase for hints and editors), and what stands for it when left out. */
export interface Field<T> {
  readonly presence: 'required' | 'optional';
  readonly doc: string;
  readonly shape: Shape<unknown>;
  /** The value of a key that is left out; undefined for none. */
  readonly absent: T | undefined;
  /** The default as the schema shows it. */
  readonly shown?: unknown;
}

/** The fields of an object, one for each key of the value that it reads into. */
export type FieldsOf<T> = { readonly [K in keyof T]-?: Field<NonNullable<T[K]>> };

/** A key that must be there. */
export function required<T>(shape: Shape<T>, doc: string): Field<T> {
  return { presence: 'required', doc, shape, absent: undefined };
}

/** A key that may be left out. */
export function optional<T>(shape: Shape<T>, doc: string): Field<T> {
  return { presence: 'optional', doc, shape, absent: undefined };
}

/** A key that may be left out, with the value that then stands for it. */
export function optionalOr<T>(shape: Shape<T>, value: T, doc: string): Field<T> {
  return { presence: 'optional', doc, shape, absent: value, shown: value };
}

/** A key with a default; the value remembers whether it was given. */
export function defaulted<T>(shape: Shape<T>, value: T, doc: string): Field<Stated<T>> {
  const stated: Shape<Stated<T>> = {
    ...shape,
    read: (tree, reading) => {
      const given = shape.read(tree, reading);
      return given === undefined
        ? undefined
        : { value: given, origin: 'given', span: tree.span };
    },
  };
  const absent: Stated<T> = { value, origin: 'default' };
  return { presence: 'optional', doc, shape: stated, absent, shown: value };
}
