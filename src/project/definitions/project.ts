import type { BeamDefinition } from './beam-definition.ts';
import type { LoadsDefinition } from './loads-definition.ts';
import type { ProjectDefinition } from './project-definition.ts';
import type { WorkedDefinition } from './worked-definition.ts';

/** A project folder, read and checked. Members in sheet order. */
export interface Project {
  readonly folder: string;
  readonly definition: ProjectDefinition;
  readonly loads: LoadsDefinition;
  readonly members: readonly MemberDefinition[];
  /** Members whose own file holds an error: their mark (the file's name where it has none) and title, with the diagnostics in the outcome. */
  readonly faulty: readonly {
    readonly mark: string;
    readonly kind: string;
    readonly title?: string;
    readonly file: string;
  }[];
  /** Files of hand-worked steps in natural order of their names, faulty ones too. */
  readonly worked: readonly WorkedDefinition[];
  readonly files: readonly DefinitionFile[];
  /** Templates of the project's own, by file name. */
  readonly templates: Readonly<Record<string, string>>;
  /** Pictures that sheets may place, by path. */
  readonly images: Readonly<Record<string, Uint8Array>>;
  /** theme.yaml, as plain values to lay over the default theme; checked against its shape. */
  readonly theme: Readonly<Record<string, unknown>>;
}

/** A checked member of any kind. */
export type MemberDefinition = BeamDefinition;

/** A definition file as it was read, for the input echo. */
export interface DefinitionFile {
  readonly path: string;
  readonly text: string;
  /** SHA-256 of the bytes. */
  readonly sha256: string;
}
