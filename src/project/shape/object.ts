import { nearest } from '../../diagnostics/index.ts';
import type { Stated } from '../definitions.ts';
import type { Reading } from '../reading.ts';
import { commaSlipHint } from '../yaml/slips.ts';
import type { MapEntry, MapTree, Tree } from '../yaml/tree.ts';
import { firstLine, reportMisfit } from './misfit.ts';
import type { JsonSchema, Shape } from './shape.ts';

/** A key of an object: its shape, what it means (a phrase for hints and editors), and what stands for it when left out. */
export interface Field<T> {
  readonly presence: 'required' | 'optional' | 'defaulted';
  readonly doc: string;
  readonly shape: Shape<unknown>;
  /** The value of a key that is left out; undefined for none. */
  readonly absent: T | undefined;
  /** The default as the schema shows it. */
  readonly shown?: unknown;
  /** Never set: ties the field to the type of its value. */
  readonly of?: (value: T) => void;
}

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
  return {
    presence: 'defaulted',
    doc,
    shape: stated,
    absent: { value, origin: 'default' },
    shown: value,
  };
}

/** The fields of an object, one for each key of the value that it reads into. */
export type FieldsOf<T> = { readonly [K in keyof T]-?: Field<NonNullable<T[K]>> };

/** The shape of a map with known keys. */
export interface ObjectShape<T> extends Shape<T> {
  /** Like `read`, but what could be read is kept where a part does not fit; undefined only for no map at all. */
  readonly readParts: (tree: Tree, reading: Reading) => Partial<T> | undefined;
}

/** A map with known keys; unknown ones are errors that suggest the nearest known. `expects` as in Shape. */
export function objectOf<T extends object>(
  expects: string,
  fields: FieldsOf<T>,
): ObjectShape<T> {
  const list = Object.entries(fields as Readonly<Record<string, Field<unknown>>>);
  const readParts = (
    tree: Tree,
    reading: Reading,
  ): { parts: Partial<T>; whole: boolean } | undefined => {
    if (tree.kind !== 'map') {
      reportMisfit(tree, expects, reading);
      return undefined;
    }
    const slips = commaSlips(tree);
    for (const slip of slips) reportCommaSlip(slip, reading);
    const known = reportUnknownKeys(tree, { fields: list, slips }, reading);
    const cutOff = slips.map((slip) => slip.before);
    const found = list.map(([key, field]) => {
      const entry = tree.entries.find((one) => one.key.text === key);
      if (entry !== undefined && cutOff.includes(entry))
        return { key, value: undefined, fits: false };
      return { key, ...readField(key, field, { entry, tree }, reading) };
    });
    const kept = found.filter(({ value }) => value !== undefined);
    return {
      parts: Object.fromEntries(
        kept.map(({ key, value }) => [key, value]),
      ) as Partial<T>,
      whole: known && slips.length === 0 && found.every(({ fits }) => fits),
    };
  };
  return {
    expects,
    schema: objectSchema(list),
    readParts: (tree, reading) => readParts(tree, reading)?.parts,
    read: (tree, reading) => {
      const read = readParts(tree, reading);
      return read?.whole === true ? (read.parts as T) : undefined;
    },
  };
}

function readField(
  key: string,
  field: Field<unknown>,
  place: { readonly entry: MapEntry | undefined; readonly tree: MapTree },
  reading: Reading,
): { readonly value: unknown; readonly fits: boolean } {
  const { entry, tree } = place;
  if (entry !== undefined) {
    // An empty value is reported at its key: the value itself has no place to point at.
    const at =
      entry.value.kind === 'empty'
        ? { ...entry.value, span: entry.key.span }
        : entry.value;
    const value = field.shape.read(at, reading);
    return { value, fits: value !== undefined };
  }
  if (field.presence !== 'required') return { value: field.absent, fits: true };
  reading.report({
    code: 'missing-key',
    message: `\`${key}\` is missing: ${field.doc}`,
    span: firstLine(tree.span, reading.text),
    hints: [`add \`${key}\`, ${field.shape.expects}`],
  });
  return { value: undefined, fits: false };
}

interface CommaSlip {
  readonly before: MapEntry;
  readonly after: MapEntry;
  readonly head: string;
  readonly hint: string;
}

function commaSlips(tree: MapTree): readonly CommaSlip[] {
  return tree.entries.flatMap((after, index) => {
    const before = tree.entries[index - 1];
    if (
      before?.value.kind !== 'text' ||
      before.value.quoted ||
      after.value.kind !== 'empty'
    )
      return [];
    const hint = commaSlipHint(before.value.text, after.key.text);
    return hint === undefined ? [] : [{ before, after, head: before.value.text, hint }];
  });
}

function reportCommaSlip(slip: CommaSlip, reading: Reading): void {
  reading.report({
    code: 'comma-in-number',
    message: `the comma ends the entry: this reads as \`${slip.head}\` and \`${slip.after.key.text}\``,
    span: { ...slip.before.value.span, end: slip.after.key.span.end },
    hints: [slip.hint],
  });
}

function reportUnknownKeys(
  tree: MapTree,
  known: {
    readonly fields: readonly (readonly [string, unknown])[];
    readonly slips: readonly CommaSlip[];
  },
  reading: Reading,
): boolean {
  const names = known.fields.map(([name]) => name);
  const given = new Set(tree.entries.map((entry) => entry.key.text));
  const slipped = known.slips.map((slip) => slip.after);
  const unknown = tree.entries.filter(
    (entry) => !names.includes(entry.key.text) && !slipped.includes(entry),
  );
  for (const { key } of unknown) {
    const free = names.filter((name) => !given.has(name));
    const near = nearest(key.text, free) ?? nearest(key.text, names);
    reading.report({
      code: 'unknown-key',
      message: `no key \`${key.text}\` is known here`,
      span: key.span,
      hints: [
        near === undefined ? `known here: ${names.join(', ')}` : `write \`${near}\``,
      ],
    });
  }
  return unknown.length === 0;
}

function objectSchema(
  fields: readonly (readonly [string, Field<unknown>])[],
): JsonSchema {
  const needed = fields
    .filter(([, field]) => field.presence === 'required')
    .map(([name]) => name);
  return {
    type: 'object',
    properties: Object.fromEntries(
      fields.map(([name, field]) => [
        name,
        {
          ...field.shape.schema,
          description: field.doc,
          ...(field.shown === undefined ? {} : { default: field.shown }),
        },
      ]),
    ),
    ...(needed.length === 0 ? {} : { required: needed }),
    additionalProperties: false,
  };
}
