import {
  hasErrors,
  sortDiagnostics,
  type Diagnostic,
  type Outcome,
} from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';
import {
  checkCarried,
  checkCircles,
  checkMarks,
  type OpenMember,
} from './check-members.ts';
import { checkLoads, withoutLoads, type CheckedLoads } from './check-loads.ts';
import { checkLogo } from './check-logo.ts';
import { checkProject, ownMaterials, ownSections } from './check-project.ts';
import type { DefinitionFile, Project } from './definitions.ts';
import { gatherFolder, type Folder } from './folder/gather.ts';
import { readLimits, type ReadLimits } from './limits.ts';
import { loadsFile, type LoadsFile } from './loads-file.ts';
import { namedCases } from './named-cases.ts';
import type { Premises } from './premises.ts';
import { projectFile, type ProjectFile } from './project-file.ts';
import {
  faultyEntry,
  markOf,
  openMember,
  readMember,
  type MemberFile,
} from './read-member.ts';
import { openReading, type OpenFile } from './reading.ts';
import { remarkOnUnused } from './remark-on-unused.ts';
import type { ObjectShape } from './shape/object.ts';
import { inSheetOrder } from './sheet-order.ts';
import { themeFile } from './theme-file.ts';
import { readYaml } from './yaml/read-yaml.ts';

/**
 * Reads a project folder: every file, every mistake. A mistake inside a member's file is that
 * member's alone, and the others stand; any other leaves the outcome without a value. Never throws
 * for what a folder holds.
 */
export function readProject(world: World, folder: string): Outcome<Project> {
  const diagnostics: Diagnostic[] = [];
  const gathered = gatherFolder(world, folder, diagnostics);
  if (gathered?.project === undefined) return { diagnostics };
  const project = readAll(gathered, folder, diagnostics);
  const files = definitionFiles(gathered).map((file) => file.path);
  const sorted = sortDiagnostics(diagnostics, files);
  const isProjects = sorted.filter((diagnostic) => diagnostic.member === undefined);
  return project === undefined || hasErrors(isProjects)
    ? { diagnostics: sorted }
    : { value: project, diagnostics: sorted };
}

function readAll(
  gathered: Folder,
  folder: string,
  diagnostics: Diagnostic[],
): Project | undefined {
  const project = openFile(gathered.project, projectFile, { into: diagnostics });
  const about = {
    into: diagnostics,
    ...(project?.parts.units === undefined ? {} : { units: project.parts.units }),
  };
  const loads = openFile(gathered.loads, loadsFile, about);
  const theme = openFile(gathered.theme, themeFile, about);
  const files = gathered.members.flatMap((file) => openMemberFile(file, about) ?? []);
  const checked = readLoads(gathered, { loads, project, files });
  const premises = premisesOf(project?.parts, checked);
  const limits = readProjectLimits(project, premises);
  const definition = project && checkProject(project.parts, limits, project.reading);
  const members = readMembers(files, premises);
  const ordered = inOrder(members, project);
  if (project === undefined || definition === undefined || checked === undefined)
    return undefined;
  checkLogo(
    { definition, images: gathered.images, written: project.parts.project?.logo },
    project.reading,
  );
  const read = {
    definition,
    loads: checked.definition,
    members: ordered,
    folder: gathered,
  };
  remarkOnUnused(read, { project, loads });
  return {
    folder,
    definition,
    loads: checked.definition,
    members: ordered.flatMap(({ definition: sound, file }) =>
      sound === undefined || file.reading.hasFailed() ? [] : [sound],
    ),
    faulty: ordered
      .filter(({ file }) => file.reading.hasFailed())
      .map(({ file }) => faultyEntry(file)),
    files: definitionFiles(gathered),
    templates: gathered.templates,
    images: gathered.images,
    theme: theme?.parts ?? {},
  };
}

/** Where findings go, and the project's units where they are known. */
interface ReadingMatter {
  readonly into: Diagnostic[];
  readonly units?: 'us' | 'si';
}

function definitionFiles(gathered: Folder): readonly DefinitionFile[] {
  const { project, loads, theme, members } = gathered;
  return [project, loads, theme, ...members].filter((file) => file !== undefined);
}

function openFile<T>(
  file: DefinitionFile | undefined,
  shape: ObjectShape<T>,
  about: ReadingMatter,
): OpenFile<T> | undefined {
  if (file === undefined) return undefined;
  const reading = openReading(file, about.into, about);
  const tree = readYaml(reading);
  const parts = tree === undefined ? undefined : shape.readParts(tree, reading);
  return parts === undefined ? undefined : { parts, reading };
}

// A file that cannot be parsed is the project's mistake; all others in it are the member's.
function openMemberFile(
  file: DefinitionFile,
  about: ReadingMatter,
): MemberFile | undefined {
  const tree = readYaml(openReading(file, about.into, about));
  if (tree === undefined) return undefined;
  return openMember(
    tree,
    openReading(file, about.into, { ...about, member: markOf(tree, file.path) }),
  );
}

/** The project's cases, areas and combinations; undefined where loads.yaml is there and cannot be read. */
function readLoads(
  gathered: Folder,
  open: {
    readonly loads: OpenFile<LoadsFile> | undefined;
    readonly project: OpenFile<ProjectFile> | undefined;
    readonly files: readonly MemberFile[];
  },
): CheckedLoads | undefined {
  const named = namedCases(open.files.flatMap((file) => file.beam ?? []));
  if (gathered.loads === undefined) return withoutLoads(named);
  if (open.loads === undefined) return undefined;
  const standards = open.project?.parts.criteria?.standards ?? [];
  return checkLoads(open.loads.parts, { named, standards }, open.loads.reading);
}

function premisesOf(
  project: Partial<ProjectFile> | undefined,
  loads: CheckedLoads | undefined,
): Premises {
  const ids = [...(project?.assumptions ?? []), ...(project?.references ?? [])].map(
    ({ value }) => value.id,
  );
  return {
    units: project?.units ?? 'us',
    ...(loads === undefined
      ? {}
      : {
          cases: loads.definition.cases,
          areas: new Map(Object.entries(loads.definition.areas)),
        }),
    ...(project === undefined ? {} : { ids }),
    combinations: loads?.combinations ?? [],
    sections: new Map(ownSections(project?.sections ?? [])),
    materials: new Map(ownMaterials(project?.materials ?? [])),
  };
}

function readProjectLimits(
  project: OpenFile<ProjectFile> | undefined,
  premises: Premises,
): ReadLimits {
  const entries = project?.parts.criteria?.deflection_limits;
  if (project === undefined || entries === undefined)
    return { limits: [], cantilevers: undefined };
  return readLimits(entries, premises, project.reading);
}

function readMembers(
  files: readonly MemberFile[],
  premises: Premises,
): readonly OpenMember[] {
  checkMarks(files);
  const members = files.map((file) => ({
    file,
    definition: readMember(file, premises),
  }));
  checkCarried(members);
  checkCircles(members);
  return members;
}

function inOrder(
  members: readonly OpenMember[],
  project: OpenFile<ProjectFile> | undefined,
): readonly OpenMember[] {
  if (project === undefined) return members;
  return inSheetOrder(members, project.parts.sheet_order ?? [], project.reading);
}
