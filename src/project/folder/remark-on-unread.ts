import type { Diagnostic } from '../../diagnostics/index.ts';
import { folderRemark } from './folder-finding.ts';

/** Folders that hold definitions which this version leaves aside. */
const leftAside: Readonly<Record<string, string>> = {
  'sheets/': 'written sheets are not laid out yet, so sheets/ is left aside',
};

const read: readonly string[] = ['project.yaml', 'loads.yaml', 'theme.yaml'];

/** Remarks on what lies in the folder as if it were a definition and is not read. */
export function remarkOnUnread(
  names: readonly string[],
  members: readonly string[],
  found: Diagnostic[],
): void {
  for (const [name, message] of Object.entries(leftAside))
    if (names.includes(name)) found.push(folderRemark('not-worked-yet', message));
  for (const name of names)
    if (/\.ya?ml$/i.test(name) && !read.includes(name))
      found.push(
        folderRemark(
          'file-not-read',
          `${name} is not read`,
          'members go into members/; beside it only project.yaml, loads.yaml and theme.yaml are read',
        ),
      );
  for (const name of members)
    if (!name.endsWith('.yaml'))
      found.push(
        folderRemark('file-not-read', `members/${name} is not read`, renamed(name)),
      );
}

function renamed(name: string): string {
  return /\.yml$/i.test(name)
    ? `rename it to ${name.replace(/\.yml$/i, '.yaml')}`
    : 'write one file a member, its name ending in .yaml, straight into members/';
}
