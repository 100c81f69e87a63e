import type { Diagnostic } from '../diagnostics/index.ts';
import type { DefinitionFile } from './definitions.ts';
import type { Folder } from './folder/gather.ts';
import { loadsFile, type LoadsFile } from './loads-file/loads-file.ts';
import { markOf, openMember, type MemberFile } from './members/read-member.ts';
import { projectFile, type ProjectFile } from './project-file/project-file.ts';
import { openReading, type Finding, type OpenFile } from './reading.ts';
import type { ObjectShape } from './shape/object.ts';
import { themeFile } from './theme-file.ts';
import { readYaml } from './yaml/read-yaml.ts';

/** The files of a folder, each read so far as it needs no other; absent where there is none or none that can be parsed. */
export interface OpenFolder {
  readonly project: OpenFile<ProjectFile> | undefined;
  readonly loads: OpenFile<LoadsFile> | undefined;
  readonly theme: OpenFile<Readonly<Record<string, unknown>>> | undefined;
  readonly members: readonly MemberFile[];
}

/** Where findings go, and the project's units where they are known. */
interface Matter {
  readonly into: Diagnostic[];
  readonly units?: 'us' | 'si';
}

/** First reading of every file: its form. project.yaml comes first, because a bare 0 takes its unit from the project's. */
export function openFolder(folder: Folder, into: Diagnostic[]): OpenFolder {
  const project = openFile(folder.project, projectFile, { into });
  const units = project?.parts.units;
  const matter: Matter = units === undefined ? { into } : { into, units };
  return {
    project,
    loads: openFile(folder.loads, loadsFile, matter),
    theme: openFile(folder.theme, themeFile, matter),
    members: folder.members.flatMap((file) => openMemberFile(file, matter) ?? []),
  };
}

function openFile<T>(
  file: DefinitionFile | undefined,
  shape: ObjectShape<T>,
  matter: Matter,
): OpenFile<T> | undefined {
  if (file === undefined) return undefined;
  const reading = openReading(file, matter.into, matter);
  const tree = readYaml(reading);
  const parts = tree === undefined ? undefined : shape.readParts(tree, reading);
  return parts === undefined ? undefined : { parts, reading };
}

// A file that cannot be parsed is the project's mistake; all others in it are the member's.
function openMemberFile(file: DefinitionFile, matter: Matter): MemberFile | undefined {
  const early: Finding[] = [];
  const blank = openReading(file, [], matter);
  const tree = readYaml({ ...blank, report: (finding) => early.push(finding) });
  const about = tree === undefined ? {} : { member: markOf(tree, file.path) };
  const reading = openReading(file, matter.into, { ...matter, ...about });
  for (const finding of early) reading.report(finding);
  return tree === undefined ? undefined : openMember(tree, reading);
}
