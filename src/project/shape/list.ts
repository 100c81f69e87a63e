import { reportTornItems } from './comma-slips.ts';
import type { Shape } from './shape.ts';
import { reportMisfit } from './misfit.ts';

/** How many items a list may hold; default any number. */
export interface ListBounds {
  readonly atLeast?: number;
  readonly atMost?: number;
}

/**
 * A list of one shape. Items that do not fit are reported and left out, so that the rest is still
 * checked; a list too short or too long does not fit. Nothing at all reads as an empty list.
 */
export function listOf<T>(
  item: Shape<T>,
  bounds: ListBounds = {},
): Shape<readonly T[]> {
  const expects = `a list, each item ${item.expects}`;
  const { atLeast = 0, atMost = Infinity } = bounds;
  return {
    expects,
    schema: {
      type: 'array',
      items: item.schema,
      ...(atLeast > 0 ? { minItems: atLeast } : {}),
      ...(atMost < Infinity ? { maxItems: atMost } : {}),
    },
    read: (tree, reading) => {
      if (tree.kind === 'empty' && atLeast === 0) return [];
      if (tree.kind !== 'list') {
        reportMisfit(tree, expects, reading, [
          'put the items in [ ], or each on a line that begins with `- `',
        ]);
        return undefined;
      }
      if (reportTornItems(tree, reading)) return undefined;
      if (tree.items.length < atLeast || tree.items.length > atMost) {
        const count = atLeast === atMost ? `${atLeast}` : `${atLeast} or more`;
        reading.report({
          code: 'wrong-count',
          message: `${count} items belong in this list, not ${tree.items.length}`,
          span: tree.span,
        });
        return undefined;
      }
      const read = tree.items.map((one) => item.read(one, reading));
      // A list of fixed length means something item by item: it is whole or it is nothing.
      if (atLeast > 0 && read.includes(undefined)) return undefined;
      return read.filter((value): value is Awaited<T> & T => value !== undefined);
    },
  };
}

/** One item by itself, or a list of them. */
export function oneOrMore<T>(item: Shape<T>): Shape<readonly T[]> {
  const list = listOf(item, { atLeast: 1 });
  return {
    expects: `${item.expects}, or a list of them`,
    schema: { anyOf: [item.schema, list.schema] },
    read: (tree, reading) => {
      if (tree.kind === 'list') return list.read(tree, reading);
      const value = item.read(tree, reading);
      return value === undefined ? undefined : [value];
    },
  };
}
