import {
  hasErrors,
  sortDiagnostics,
  type Diagnostic,
  type Outcome,
} from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';
import type { Project, ProjectDefinition } from './definitions.ts';
import { filesOf, gatherFolder, type Folder } from './folder/gather.ts';
import { readLimits } from './limits.ts';
import { readLoads } from './loads-file/check-loads.ts';
import { checkMembers } from './members/check-members.ts';
import type { OpenMember } from './members/open-member.ts';
import { faultyEntry, readMember } from './members/read-member.ts';
import { remarkOn } from './remarks/remark-on.ts';
import { inSheetOrder } from './members/sheet-order.ts';
import { openFolder, type OpenFolder } from './open-folder.ts';
import { gatherPremises } from './gather-premises.ts';
import { faulty, readWorked } from './kinds/worked/read-worked.ts';
import type { Premises } from './premises.ts';
import { checkLogo } from './project-file/check-logo.ts';
import { checkProject } from './project-file/check-project.ts';
import { defineProject } from './project-file/define-project.ts';
import type { ProjectFile } from './project-file/project-file.ts';

/**
 * Reads a project folder: every file, every mistake. A mistake inside a member's file is that
 * member's alone, and the others stand; any other leaves the outcome without a value. Never throws
 * for what a folder holds.
 */
export function readProject(world: World, folder: string): Outcome<Project> {
  const found: Diagnostic[] = [];
  const gathered = gatherFolder(world, folder, found);
  if (gathered === undefined) return { diagnostics: found };
  const project = readGathered(gathered, folder, found);
  const diagnostics = sortDiagnostics(
    found,
    filesOf(gathered).map((file) => file.path),
  );
  const isProjects = diagnostics.filter((one) => one.member === undefined);
  return project === undefined || hasErrors(isProjects)
    ? { diagnostics }
    : { value: project, diagnostics };
}

function readGathered(
  gathered: Folder,
  folder: string,
  found: Diagnostic[],
): Project | undefined {
  const open = openFolder(gathered, found);
  const loads = readLoads(gathered.loads, open);
  const premises = gatherPremises(open, loads);
  const definition = readDefinition(open, premises, gathered);
  const read = open.members.map((file) => ({
    file,
    definition: readMember(file, premises),
  }));
  checkMembers(read);
  const members = inOrder(read, open);
  if (
    definition === undefined ||
    loads === undefined ||
    open.loads?.reading.hasFailed() === true
  )
    return undefined;
  remarkOn({ definition, loads: loads.definition, members, folder: gathered }, open);
  return {
    folder,
    definition,
    loads: loads.definition,
    members: members.flatMap(({ definition: sound, file }) =>
      sound === undefined || file.reading.hasFailed() ? [] : [sound],
    ),
    faulty: members
      .filter(({ file }) => file.reading.hasFailed())
      .map(({ file }) => faultyEntry(file)),
    worked: gathered.worked.map((one) =>
      one.kind === 'read'
        ? readWorked(one.file, definition.units)
        : faulty({ file: one.path, text: '' }, one.fault),
    ),
    files: filesOf(gathered),
    templates: gathered.templates,
    images: gathered.images,
    theme: open.theme?.parts ?? {},
  };
}

/** The definition of project.yaml; undefined where it holds an error. */
function readDefinition(
  { project }: OpenFolder,
  premises: Premises,
  gathered: Folder,
): ProjectDefinition | undefined {
  if (project === undefined) return undefined;
  const { parts, reading } = project;
  checkProject(parts, reading);
  checkLogo(parts.project?.logo, gathered.images, reading);
  const limits = readLimits(parts.criteria?.deflection_limits ?? [], premises, reading);
  if (reading.hasFailed()) return undefined;
  // Nothing failed, so every key that must be there is.
  return defineProject(parts as ProjectFile, limits);
}

function inOrder(
  members: readonly OpenMember[],
  { project }: OpenFolder,
): readonly OpenMember[] {
  if (project === undefined) return members;
  return inSheetOrder(members, project.parts.sheet_order ?? [], project.reading);
}
