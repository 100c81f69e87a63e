import { fileKinds, type FileKindName } from './kinds/file-kinds.ts';
import type { JsonSchema } from './shape/shape.ts';

/**
 * The JSON Schema (draft 2020-12) of a kind of definition file, for editors; undefined for a kind
 * that is not supported yet. It knows the form of every key; names that must exist elsewhere in
 * the folder only the reader can check.
 */
export function schemaFor(kind: FileKindName): JsonSchema | undefined {
  const { path, about, shape } = fileKinds[kind];
  if (shape === undefined) return undefined;
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: path,
    description: about,
    ...shape.schema,
  };
}
