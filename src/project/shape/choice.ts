import { nearest } from '../../diagnostics/index.ts';
import type { Reading } from '../reading.ts';
import { entryOf, type MapTree } from '../yaml/tree.ts';
import { firstLine, reportMisfit } from './misfit.ts';
import type { ObjectShape } from './object.ts';
import type { Shape } from './shape.ts';
import { oneOf } from './text.ts';

/** Shapes told apart by how the place is written: a text, a list or a map; forms left out do not fit. */
export interface Forms<T> {
  readonly text?: Shape<T>;
  readonly list?: Shape<T>;
  readonly map?: Shape<T>;
}

/** A value that may be written in more than one form. */
export function byForm<T>(forms: Forms<T>): Shape<T> {
  const shapes = [forms.text, forms.list, forms.map].filter(
    (shape) => shape !== undefined,
  );
  const expects = shapes.map((shape) => shape.expects).join(', or ');
  return {
    expects,
    schema: { anyOf: shapes.map((shape) => shape.schema) },
    read: (tree, reading) => {
      const shape = tree.kind === 'empty' ? undefined : forms[tree.kind];
      if (shape !== undefined) return shape.read(tree, reading);
      reportMisfit(tree, expects, reading);
      return undefined;
    },
  };
}

/** Objects told apart by the word under one key: supports by `type`. */
export function byWord<T>(
  expects: string,
  key: string,
  shapes: Readonly<Record<string, ObjectShape<T>>>,
): Shape<T> {
  const words = Object.keys(shapes);
  const word = oneOf(...words);
  return {
    expects,
    schema: { anyOf: Object.values(shapes).map((shape) => shape.schema) },
    read: (tree, reading) => {
      if (tree.kind !== 'map') {
        reportMisfit(tree, expects, reading);
        return undefined;
      }
      const named = entryOf(tree, key);
      if (named === undefined) {
        reading.report({
          code: 'missing-key',
          message: `\`${key}\` is missing, which says what this is`,
          span: firstLine(tree.span, reading.text),
          hints: [`add \`${key}\`, ${word.expects}`],
        });
        return undefined;
      }
      const found = word.read(named, reading);
      return found === undefined ? undefined : shapes[found]?.read(tree, reading);
    },
  };
}

/** Objects told apart by which key they hold: a load line by `point`, `uniform`, `couple` … Exactly one of the keys must be there. */
export function byKey<T>(
  expects: string,
  shapes: Readonly<Record<string, Shape<T>>>,
): Shape<T> {
  const keys = Object.keys(shapes);
  return {
    expects,
    schema: { anyOf: keys.map((key) => shapes[key]?.schema) },
    read: (tree, reading) => {
      if (tree.kind !== 'map') {
        reportMisfit(tree, expects, reading);
        return undefined;
      }
      const [found, second] = tree.entries.filter((entry) =>
        keys.includes(entry.key.text),
      );
      if (found === undefined) {
        reportNoKey(tree, keys, { expects, reading });
        return undefined;
      }
      if (second === undefined) return shapes[found.key.text]?.read(tree, reading);
      reading.report({
        code: 'keys-together',
        message: `\`${found.key.text}\` and \`${second.key.text}\` cannot stand together`,
        span: second.key.span,
        hints: ['write two entries, one for each'],
      });
      return undefined;
    },
  };
}

function reportNoKey(
  tree: MapTree,
  keys: readonly string[],
  at: { readonly expects: string; readonly reading: Reading },
): void {
  const { expects, reading } = at;
  const near = tree.entries
    .map((entry) => ({ written: entry.key, key: nearest(entry.key.text, keys) }))
    .find(({ key }) => key !== undefined);
  reading.report({
    code: near === undefined ? 'missing-key' : 'unknown-key',
    message:
      near === undefined
        ? `nothing here says what this is; ${expects} belongs here`
        : `no key \`${near.written.text}\` is known here`,
    span: near?.written.span ?? firstLine(tree.span, reading.text),
    hints: [
      near?.key === undefined
        ? `give one of ${keys.join(', ')}`
        : `write \`${near.key}\``,
    ],
  });
  return undefined;
}
