import type { CodeEntry } from './code-entry.ts';
import { archiveCodes, type ArchiveCode } from './codes/archive.ts';
import { bagCodes, type BagCode } from './codes/bag.ts';
import { beamCodes, type BeamCode } from './codes/beam.ts';
import { carriedCodes, type CarriedCode } from './codes/carried.ts';
import { folderCodes, type FolderCode } from './codes/folder.ts';
import { formCodes, type FormCode } from './codes/form.ts';
import { loadCodes, type LoadCode } from './codes/loads.ts';
import { programCodes, type ProgramCode } from './codes/program.ts';
import { projectCodes, type ProjectCode } from './codes/project.ts';
import { remarkCodes, type RemarkCode } from './codes/remarks.ts';
import { staticsCodes, type StaticsCode } from './codes/statics.ts';
import { yamlCodes, type YamlCode } from './codes/yaml.ts';

/** The name of a diagnostic: kebab-case words, stable from version to version. */
export type Code =
  | FolderCode
  | YamlCode
  | FormCode
  | ProjectCode
  | BeamCode
  | LoadCode
  | CarriedCode
  | StaticsCode
  | RemarkCode
  | ProgramCode
  | ArchiveCode
  | BagCode;

/** Every code that the program can report, by its name; grouped by what the mistake is about. */
export const codes: Readonly<Record<Code, CodeEntry>> = {
  ...folderCodes,
  ...yamlCodes,
  ...formCodes,
  ...projectCodes,
  ...beamCodes,
  ...loadCodes,
  ...carriedCodes,
  ...staticsCodes,
  ...remarkCodes,
  ...programCodes,
  ...bagCodes,
  ...archiveCodes,
};
