import { loadsFile } from '../loads-file/loads-file.ts';
import { projectFile } from '../project-file/project-file.ts';
import type { Shape } from '../shape/shape.ts';
import { themeFile } from '../theme-file.ts';
import { beamFile } from './beam/beam-file.ts';
import { workedFile } from './worked/worked-file.ts';

/** Kinds of definition files. */
export type FileKindName =
  'project' | 'loads' | 'theme' | 'beam' | 'truss' | 'frame' | 'written' | 'worked';

/** A kind of definition file: where such files lie, and their shape; without one the kind is not supported yet. */
export interface FileKind {
  /** Path in the project folder, `*` for any name. */
  readonly path: string;
  /** What such a file holds, a phrase. */
  readonly about: string;
  readonly shape?: Shape<unknown>;
}

/** Every kind of definition file, in reading order. A new kind is a new file and one line here. */
export const fileKinds: Readonly<Record<FileKindName, FileKind>> = {
  project: {
    path: 'project.yaml',
    about: 'who, what, which conventions and criteria',
    shape: projectFile,
  },
  loads: {
    path: 'loads.yaml',
    about: 'load cases, area loads and combinations',
    shape: loadsFile,
  },
  theme: {
    path: 'theme.yaml',
    about: 'sizes, weights and colours in place of the default ones',
    shape: themeFile,
  },
  beam: { path: 'members/*.yaml', about: 'a beam', shape: beamFile },
  truss: { path: 'members/*.yaml', about: 'a truss' },
  frame: { path: 'members/*.yaml', about: 'a frame' },
  written: { path: 'sheets/*.yaml', about: 'a calculation that belongs to no member' },
  worked: {
    path: 'worked/*.yaml',
    about: "somebody's hand-worked steps",
    shape: workedFile,
  },
};
