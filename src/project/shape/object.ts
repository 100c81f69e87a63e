import { nearest } from '../../diagnostics/index.ts';
import type { Reading } from '../reading.ts';
import type { MapEntry, MapTree, Tree } from '../yaml/tree.ts';
import { tornEntries } from './comma-slips.ts';
import type { Field, FieldsOf } from './field.ts';
import { firstLine, reportMisfit } from './misfit.ts';
import type { JsonSchema, Shape } from './shape.ts';

/** The shape of a map with known keys. */
export interface ObjectShape<T> extends Shape<T> {
  /** Like `read`, but what could be read is kept where a part does not fit; undefined only for no map at all. */
  readonly readParts: (tree: Tree, reading: Reading) => Partial<T> | undefined;
}

type Fields = readonly (readonly [key: string, field: Field<unknown>])[];

/** A map with known keys; unknown ones are errors that suggest the nearest known. `expects` as in Shape. */
export function objectOf<T extends object>(
  expects: string,
  fields: FieldsOf<T>,
): ObjectShape<T> {
  const list = Object.entries(fields as Readonly<Record<string, Field<unknown>>>);
  const read = (tree: Tree, reading: Reading): ReadObject | undefined => {
    if (tree.kind === 'map') return readFields(tree, list, reading);
    reportMisfit(tree, expects, reading);
    return undefined;
  };
  return {
    expects,
    schema: objectSchema(list),
    readParts: (tree, reading) => read(tree, reading)?.parts,
    read: (tree, reading) => {
      const found = read(tree, reading);
      return found?.whole === true ? (found.parts as T) : undefined;
    },
  };
}

interface ReadObject {
  readonly parts: object;
  /** True where every key is known and every value fits. */
  readonly whole: boolean;
}

function readFields(tree: MapTree, fields: Fields, reading: Reading): ReadObject {
  const { torn } = tornEntries(tree, reading);
  const sound = { ...tree, entries: tree.entries.filter((entry) => !torn.has(entry)) };
  const tornKeys = tree.entries
    .filter((entry) => torn.has(entry))
    .map((entry) => entry.key.text);
  const meant = reportUnknownKeys(sound, fields, reading);
  const entries = new Map(sound.entries.map((entry) => [entry.key.text, entry]));
  let whole = torn.size === 0 && meant.length === 0;
  const parts: [string, unknown][] = [];
  for (const [key, field] of fields) {
    const entry = entries.get(key);
    const value = entry === undefined ? field.absent : readEntry(entry, field, reading);
    // A key that is torn or misspelt has been reported; that it is missing follows from it.
    const isKnown = tornKeys.includes(key) || meant.includes(key);
    if (entry === undefined && field.presence === 'required' && !isKnown)
      reportMissing(key, field, { tree, reading });
    if (value !== undefined) parts.push([key, value]);
    else if (entry !== undefined || field.presence === 'required') whole = false;
  }
  return { parts: Object.fromEntries(parts), whole };
}

function readEntry(entry: MapEntry, field: Field<unknown>, reading: Reading): unknown {
  const { key, value } = entry;
  // An empty value is reported at its key: the value itself has no place to point at.
  const at = value.kind === 'empty' ? { ...value, span: key.span } : value;
  return field.shape.read(at, reading);
}

function reportMissing(
  key: string,
  field: Field<unknown>,
  { tree, reading }: { readonly tree: MapTree; readonly reading: Reading },
): void {
  reading.report({
    code: 'missing-key',
    message: `\`${key}\` is missing: ${field.doc}`,
    span: firstLine(tree.span, reading.text),
    hints: [`add \`${key}\`, ${field.shape.expects}`],
  });
}

/** Reports keys that are not known; the names that they were probably meant to be, or the keys themselves. */
function reportUnknownKeys(
  tree: MapTree,
  fields: Fields,
  reading: Reading,
): readonly string[] {
  const names = fields.map(([name]) => name);
  const given = new Set(tree.entries.map((entry) => entry.key.text));
  const free = names.filter((name) => !given.has(name));
  return tree.entries
    .map((entry) => entry.key)
    .filter((key) => !names.includes(key.text))
    .map((key) => {
      const near = nearest(key.text, free) ?? nearest(key.text, names);
      reading.report({
        code: 'unknown-key',
        message: `no key \`${key.text}\` is known here`,
        span: key.span,
        hints: [
          near === undefined ? `known here: ${names.join(', ')}` : `write \`${near}\``,
        ],
      });
      return near ?? key.text;
    });
}

function objectSchema(fields: Fields): JsonSchema {
  const needed = fields
    .filter(([, field]) => field.presence === 'required')
    .map(([name]) => name);
  return {
    type: 'object',
    properties: Object.fromEntries(
      fields.map(([name, field]) => [name, fieldSchema(field)]),
    ),
    ...(needed.length === 0 ? {} : { required: needed }),
    additionalProperties: false,
  };
}

function fieldSchema({ shape, doc, shown }: Field<unknown>): JsonSchema {
  const schema = { ...shape.schema, description: doc };
  return shown === undefined ? schema : { ...schema, default: shown };
}
