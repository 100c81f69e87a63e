import type { Diagnostic } from '../../diagnostics/index.ts';
import type { World } from '../../world/index.ts';
import type { DefinitionFile } from '../definitions.ts';
import { recordOf } from '../shape/map-of.ts';
import { naturalOrder } from './natural-order.ts';
import { joined, readBytes, readText } from './read-text.ts';

/** The files of a project folder, read and not yet understood. */
export interface Folder {
  readonly project?: DefinitionFile;
  readonly loads?: DefinitionFile;
  readonly theme?: DefinitionFile;
  /** In natural order of their names. */
  readonly members: readonly DefinitionFile[];
  readonly templates: Readonly<Record<string, string>>;
  readonly images: Readonly<Record<string, Uint8Array>>;
  /** Texts of `sheets/*.yaml`, which may name pictures. */
  readonly sheets: readonly string[];
}

/** Reads the files of a project folder; what is missing or cannot be read goes into `diagnostics`. */
export function gatherFolder(
  world: World,
  folder: string,
  diagnostics: Diagnostic[],
): Folder | undefined {
  const names = world.list(folder);
  if (names === undefined) {
    diagnostics.push(
      outside(
        'not-a-folder',
        `there is no folder ${folder}`,
        'name the folder that holds project.yaml',
      ),
    );
    return undefined;
  }
  if (!names.includes('project.yaml')) {
    diagnostics.push(
      outside(
        'no-project-file',
        `the folder ${folder} holds no project.yaml`,
        names.includes('project.yml')
          ? 'rename project.yml to project.yaml'
          : 'name the folder that holds project.yaml',
      ),
    );
    return undefined;
  }
  const text = (path: string): DefinitionFile | undefined =>
    textOf(world, folder, path, diagnostics);
  const own = (name: string): DefinitionFile | undefined =>
    names.includes(name) ? text(name) : undefined;
  const members = yamlNames(world, folder, 'members', diagnostics);
  if (members.length === 0)
    diagnostics.push(
      outside(
        'no-members',
        `the folder ${folder} holds no members/*.yaml`,
        'write one file a member, such as members/b1.yaml',
      ),
    );
  const [project, loads, theme] = [
    own('project.yaml'),
    own('loads.yaml'),
    own('theme.yaml'),
  ];
  remarkOnUnread(names, diagnostics);
  return {
    ...(project === undefined ? {} : { project }),
    ...(loads === undefined ? {} : { loads }),
    ...(theme === undefined ? {} : { theme }),
    members: members.flatMap((name) => text(`members/${name}`) ?? []),
    templates: recordOf(
      (world.list(joined(folder, 'report-templates')) ?? [])
        .filter((name) => !name.endsWith('/'))
        .flatMap((name) => {
          const file = text(`report-templates/${name}`);
          return file === undefined ? [] : [[name, file.text] as const];
        }),
    ),
    images: readImages(world, folder, diagnostics),
    sheets: yamlNames(world, folder, 'sheets', []).flatMap(
      (name) => textOf(world, folder, `sheets/${name}`, [])?.text ?? [],
    ),
  };
}

function textOf(
  world: World,
  folder: string,
  path: string,
  diagnostics: Diagnostic[],
): DefinitionFile | undefined {
  const answer = readText(world, folder, path);
  if (answer.kind === 'read') return answer.file;
  if (answer.kind === 'refused') diagnostics.push(answer.diagnostic);
  else
    diagnostics.push(
      outside('file-unreadable', `${path} is gone`, 'read the folder again'),
    );
  return undefined;
}

/** Names of the `.yaml` files of a folder in natural order; others get a remark each. */
function yamlNames(
  world: World,
  folder: string,
  inside: string,
  diagnostics: Diagnostic[],
): readonly string[] {
  const names = (world.list(joined(folder, inside)) ?? []).filter(
    (name) => !name.startsWith('.'),
  );
  const others = names.filter((name) => !name.endsWith('.yaml'));
  for (const name of others)
    diagnostics.push(
      remark(
        'file-not-read',
        `${inside}/${name} is not read`,
        name.endsWith('.yml')
          ? `rename it to ${name.replace(/\.yml$/, '.yaml')}`
          : 'files here end in .yaml',
      ),
    );
  return names.filter((name) => name.endsWith('.yaml')).sort(naturalOrder);
}

function readImages(
  world: World,
  folder: string,
  diagnostics: Diagnostic[],
): Readonly<Record<string, Uint8Array>> {
  const names = (world.list(joined(folder, 'images')) ?? []).filter(
    (name) => !/^\.|\/$/.test(name),
  );
  return recordOf(
    names.flatMap((name) => {
      const path = `images/${name}`;
      const answer = readBytes(world, folder, path);
      if (answer.kind === 'refused') diagnostics.push(answer.diagnostic);
      return answer.kind === 'read' ? [[path, answer.file] as const] : [];
    }),
  );
}

/** Folders that later versions will work; each gets one remark. */
const notYet: Readonly<Record<string, string>> = {
  'worked/': 'worked steps are not checked yet, so worked/ is left aside',
  'sheets/': 'written sheets are not laid out yet, so sheets/ is left aside',
};

function remarkOnUnread(names: readonly string[], diagnostics: Diagnostic[]): void {
  for (const [name, message] of Object.entries(notYet))
    if (names.includes(name)) diagnostics.push(remark('not-worked-yet', message));
  const known = ['project.yaml', 'loads.yaml', 'theme.yaml'];
  for (const name of names.filter(
    (one) => /\.ya?ml$/i.test(one) && !known.includes(one),
  ))
    diagnostics.push(
      remark(
        'file-not-read',
        `${name} is not read`,
        'members go into members/; beside it only project.yaml, loads.yaml and theme.yaml are read',
      ),
    );
}

function outside(code: Diagnostic['code'], message: string, hint: string): Diagnostic {
  return { severity: 'error', code, message, hints: [hint] };
}

function remark(code: Diagnostic['code'], message: string, hint?: string): Diagnostic {
  return { severity: 'remark', code, message, hints: hint === undefined ? [] : [hint] };
}
