import type { Placed, Shape } from './shape.ts';
import { reportMisfit } from './misfit.ts';

/** One entry of a map whose keys are the user's own names; `value` is undefined where it did not fit, which has been reported. */
export interface Named<T> {
  readonly name: Placed<string>;
  readonly value: T | undefined;
  /** The place of the value. */
  readonly at: Placed<string>['span'];
}

/**
 * A map whose keys are names that the user chooses, in file order. A value that does not fit
 * leaves its name in the list, so that what refers to the name is not reported as well.
 * `expects` as in Shape.
 */
export function mapOf<T>(
  key: Shape<string>,
  value: Shape<T>,
  expects: string,
): Shape<readonly Named<T>[]> {
  const { pattern } = key.schema;
  return {
    expects,
    schema: {
      type: 'object',
      ...(pattern === undefined ? {} : { propertyNames: { pattern } }),
      additionalProperties: value.schema,
    },
    read: (tree, reading) => {
      if (tree.kind === 'empty') return [];
      if (tree.kind !== 'map') {
        reportMisfit(tree, expects, reading);
        return undefined;
      }
      return tree.entries.flatMap((entry) => {
        const name = key.read(entry.key, reading);
        const read = value.read(entry.value, reading);
        if (name === undefined) return [];
        return [
          {
            name: { value: name, span: entry.key.span },
            value: read,
            at: entry.value.span,
          },
        ];
      });
    },
  };
}

/** The values of a map by name, as a plain object without inherited names (`constructor`, `__proto__`). */
export function recordOf<T>(
  entries: readonly (readonly [string, T])[],
): Readonly<Record<string, T>> {
  const record = Object.create(null) as Record<string, T>;
  for (const [name, value] of entries) record[name] = value;
  return record;
}

/** The values of a map that could be read, by name. */
export function valuesByName<T>(
  entries: readonly Named<T>[],
): Readonly<Record<string, T>> {
  return recordOf(
    entries.flatMap(({ name, value }) =>
      value === undefined ? [] : [[name.value, value] as const],
    ),
  );
}
