import type { Diagnostic } from '../../diagnostics/index.ts';
import type { World } from '../../world/index.ts';
import type { DefinitionFile } from '../definitions.ts';
import { recordOf } from '../shape/map-of.ts';
import { present } from '../shape/present.ts';
import { folderError } from './folder-finding.ts';
import { naturalOrder } from './natural-order.ts';
import { joined, readBytes, readText } from './read-text.ts';
import { remarkOnUnread } from './remark-on-unread.ts';

/** The files of a project folder, read and not yet understood. */
export interface Folder {
  readonly project?: DefinitionFile;
  readonly loads?: DefinitionFile;
  readonly theme?: DefinitionFile;
  /** In natural order of their names. */
  readonly members: readonly DefinitionFile[];
  readonly templates: Readonly<Record<string, string>>;
  readonly images: Readonly<Record<string, Uint8Array>>;
  /** Files of worked steps in natural order, or why one could not be read. */
  readonly worked: readonly (
    | { readonly kind: 'read'; readonly file: DefinitionFile }
    | { readonly kind: 'refused'; readonly path: string; readonly fault: Diagnostic }
  )[];
  /** Texts of `sheets/*.yaml`, which may name pictures. */
  readonly sheets: readonly string[];
}

/** The definition files of a folder in reading order: the project's, then its members'. */
export function filesOf(folder: Folder): readonly DefinitionFile[] {
  const { project, loads, theme, members } = folder;
  return [project, loads, theme, ...members].filter((file) => file !== undefined);
}

/** A folder being read, and where findings go. */
interface Visit {
  readonly world: World;
  readonly folder: string;
  readonly found: Diagnostic[];
}

/** Reads the files of a project folder; what is missing or cannot be read goes into `found`. Undefined for what is no project folder. */
export function gatherFolder(
  world: World,
  folder: string,
  found: Diagnostic[],
): Folder | undefined {
  const names = world.list(folder);
  const fault = names === undefined ? noFolder(folder) : noProject(folder, names);
  if (names === undefined || fault !== undefined) {
    if (fault !== undefined) found.push(fault);
    return undefined;
  }
  const visit: Visit = { world, folder, found };
  const own = (name: string): DefinitionFile | undefined =>
    names.includes(name) ? textOf(name, visit) : undefined;
  const members = namesIn('members', visit).filter((name) => name.endsWith('.yaml'));
  if (members.length === 0) found.push(noMembers(folder));
  remarkOnUnread(names, namesIn('members', visit), found);
  return present<Folder>({
    project: own('project.yaml'),
    loads: own('loads.yaml'),
    theme: own('theme.yaml'),
    members: [...members]
      .sort(naturalOrder)
      .flatMap((name) => textOf(`members/${name}`, visit) ?? []),
    worked: readWorkedTexts(visit),
    templates: readTemplates(visit),
    images: readImages(visit),
    sheets: namesIn('sheets', visit)
      .filter((name) => name.endsWith('.yaml'))
      .flatMap((name) => textOf(`sheets/${name}`, { ...visit, found: [] })?.text ?? []),
  });
}

// What somebody wrote is never the project's mistake: a fault stays with its file.
function readWorkedTexts({ world, folder, found }: Visit): Folder['worked'] {
  const names = namesIn('worked', { world, folder, found });
  return [...names]
    .filter((name) => name.endsWith('.yaml'))
    .sort(naturalOrder)
    .flatMap((name): Folder['worked'] => {
      const path = `worked/${name}`;
      const answer = readText(world, folder, path);
      if (answer.kind === 'read') return [answer];
      return answer.kind === 'refused'
        ? [{ kind: 'refused', path, fault: answer.diagnostic }]
        : [];
    });
}

function noFolder(folder: string): Diagnostic {
  const hint = 'name the folder that holds project.yaml';
  return folderError('not-a-folder', `there is no folder ${folder}`, hint);
}

function noProject(folder: string, names: readonly string[]): Diagnostic | undefined {
  if (names.includes('project.yaml')) return undefined;
  const hint = names.includes('project.yml')
    ? 'rename project.yml to project.yaml'
    : 'name the folder that holds project.yaml';
  return folderError(
    'no-project-file',
    `the folder ${folder} holds no project.yaml`,
    hint,
  );
}

function noMembers(folder: string): Diagnostic {
  const message = `the folder ${folder} holds no members/*.yaml`;
  return folderError(
    'no-members',
    message,
    'write one file a member, such as members/b1.yaml',
  );
}

// Hidden files (editors' and systems') are nobody's definitions.
function namesIn(inside: string, { world, folder }: Visit): readonly string[] {
  const names = world.list(joined(folder, inside)) ?? [];
  return names.filter((name) => !name.startsWith('.'));
}

function textOf(
  path: string,
  { world, folder, found }: Visit,
): DefinitionFile | undefined {
  const answer = readText(world, folder, path);
  if (answer.kind === 'read') return answer.file;
  found.push(
    answer.kind === 'refused'
      ? answer.diagnostic
      : folderError(
          'file-unreadable',
          `${path} leads to no file`,
          'mend the link, or take it away',
        ),
  );
  return undefined;
}

function readTemplates(visit: Visit): Folder['templates'] {
  const names = namesIn('report-templates', visit).filter(
    (name) => !name.endsWith('/'),
  );
  const read = names.map(
    (name) => [name, textOf(`report-templates/${name}`, visit)] as const,
  );
  return recordOf(
    read.flatMap(([name, file]) =>
      file === undefined ? [] : [[name, file.text] as const],
    ),
  );
}

function readImages(visit: Visit): Folder['images'] {
  const names = namesIn('images', visit).filter((name) => !name.endsWith('/'));
  return recordOf(
    names.flatMap((name) => {
      const path = `images/${name}`;
      const answer = readBytes(visit.world, visit.folder, path);
      if (answer.kind === 'refused') visit.found.push(answer.diagnostic);
      return answer.kind === 'read' ? [[path, answer.file] as const] : [];
    }),
  );
}
