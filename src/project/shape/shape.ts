import type { Span } from '../../diagnostics/index.ts';
import type { Reading } from '../reading.ts';
import type { Tree } from '../yaml/tree.ts';

/** A JSON Schema (draft 2020-12) as a plain value. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * What a place in a definition file must hold. One description serves both readers of the format:
 * `read` turns a tree into a value and reports what does not fit, `schema` tells an editor the same.
 */
export interface Shape<T> {
  /** What belongs here with its article, as messages say it: `a length`. */
  readonly expects: string;
  /** The value; undefined where the tree does not fit, which has then been reported. */
  readonly read: (tree: Tree, reading: Reading) => T | undefined;
  readonly schema: JsonSchema;
}

/** A value with its place in the file. */
export interface Placed<T> {
  readonly value: T;
  readonly span: Span;
}

/** The same shape, its value with the place. */
export function placed<T>(shape: Shape<T>): Shape<Placed<T>> {
  return {
    ...shape,
    read: (tree, reading) => {
      const value = shape.read(tree, reading);
      return value === undefined ? undefined : { value, span: tree.span };
    },
  };
}

/** The same shape, its value turned into another; `turn` may report and answer undefined. */
export function turned<T, U>(
  shape: Shape<T>,
  turn: (value: T, tree: Tree, reading: Reading) => U | undefined,
): Shape<U> {
  return {
    ...shape,
    read: (tree, reading) => {
      const value = shape.read(tree, reading);
      return value === undefined ? undefined : turn(value, tree, reading);
    },
  };
}
